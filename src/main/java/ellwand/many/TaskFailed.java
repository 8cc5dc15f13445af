package ellwand.many;

/** A task that cannot be done, whoever tries; why is told in words, from wherever that was. */
public final class TaskFailed extends RuntimeException {

  private static final long serialVersionUID = 1;

  public TaskFailed(String why) {
    super(why);
  }

  public TaskFailed(String why, Throwable cause) {
    super(why, cause);
  }
}
