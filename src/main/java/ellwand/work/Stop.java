package ellwand.work;

/** A wish to stop, set by one thread (Ctrl-C, a closed page) and polled by those that search. */
public final class Stop {

  private volatile boolean wanted;

  public void request() {
    wanted = true;
  }

  public boolean wanted() {
    return wanted;
  }
}
