package ellwand.app;

import java.util.function.Supplier;

/**
 * A file that can be had of a run; it is made when it is asked for.
 *
 * @param name without a folder
 */
public record Output(String name, Supplier<byte[]> maker) {

  /** What the file holds. */
  public byte[] bytes() {
    return maker.get();
  }
}
