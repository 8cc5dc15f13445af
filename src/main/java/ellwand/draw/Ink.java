package ellwand.draw;

import java.util.List;
import java.util.Optional;

/**
 * How lines and areas look.
 *
 * @param fill colour inside, if any
 * @param line colour of the line, if any
 * @param widthMm of the line
 * @param dashesMm drawn and left out in turn; empty for a full line
 */
record Ink(Optional<Colour> fill, Optional<Colour> line, double widthMm, List<Double> dashesMm) {

  Ink {
    dashesMm = List.copyOf(dashesMm);
  }

  static Ink line(Colour colour, double widthMm, Double... dashesMm) {
    return new Ink(Optional.empty(), Optional.of(colour), widthMm, List.of(dashesMm));
  }

  static Ink area(Colour colour) {
    return new Ink(Optional.of(colour), Optional.empty(), 0, List.of());
  }

  Ink filled(Colour colour) {
    return new Ink(Optional.of(colour), line, widthMm, dashesMm);
  }
}
