package ellwand.many;

import java.util.concurrent.CompletableFuture;

/** A task that was handed in. */
public interface Errand {

  /**
   * What came of it, once. Fails with {@link TaskFailed} if it cannot be done, and is cancelled if
   * it was withdrawn.
   */
  CompletableFuture<byte[]> done();

  /** Asks for the best that there is by now; one that was not begun is begun and ended as soon. */
  void hurry();

  /**
   * What came of it is none: the same is asked for anew, and whoever brought that gets nothing more
   * to do.
   *
   * @param why in words
   * @throws TaskFailed if it would come to the same again
   */
  Errand refuse(String why);

  /** Nobody wants it any more. */
  void withdraw();
}
