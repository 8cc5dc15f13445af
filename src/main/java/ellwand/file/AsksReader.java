package ellwand.file;

import ellwand.pattern.Asks;
import java.util.Optional;

/** Reads what a piece asks of its cloth besides its grain. */
final class AsksReader {

  private AsksReader() {}

  static Asks read(Spot piece) {
    Spot value = piece.get("value");
    return new Asks(value.present() ? Optional.of(value.node().asDouble()) : Optional.empty());
  }
}
