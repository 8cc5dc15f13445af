package ellwand.work;

import java.util.concurrent.CompletionException;
import java.util.concurrent.ExecutionException;

/** What failed in another thread. */
public final class Elsewhere {

  private Elsewhere() {}

  /**
   * What was thrown there, to be thrown here as it is.
   *
   * @return wrapped where it was neither a {@link RuntimeException} nor an {@link Error}
   * @throws Error where that was thrown there
   */
  public static RuntimeException thrown(ExecutionException e) {
    if (e.getCause() instanceof Error error) {
      throw error;
    }
    return e.getCause() instanceof RuntimeException known ? known : new CompletionException(e);
  }
}
