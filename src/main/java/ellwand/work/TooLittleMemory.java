package ellwand.work;

/** Memory ran out while something was made of which it is known how much it takes. */
public final class TooLittleMemory extends OutOfMemoryError {

  private static final long serialVersionUID = 1;

  private final long neededBytes;

  /**
   * @param what takes so much, in the plural: shapes to be laid
   * @param neededBytes about how much it takes in all
   */
  public TooLittleMemory(String what, long neededBytes, OutOfMemoryError cause) {
    super(what);
    this.neededBytes = neededBytes;
    initCause(cause);
  }

  /** About how much what ran out would take in all. */
  public long neededBytes() {
    return neededBytes;
  }
}
