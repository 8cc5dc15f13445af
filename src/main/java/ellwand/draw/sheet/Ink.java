package ellwand.draw.sheet;

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
public record Ink(
    Optional<Colour> fill, Optional<Colour> line, double widthMm, List<Double> dashesMm) {

  public Ink {
    dashesMm = List.copyOf(dashesMm);
  }

  public static Ink line(Colour colour, double widthMm, Double... dashesMm) {
    return new Ink(Optional.empty(), Optional.of(colour), widthMm, List.of(dashesMm));
  }

  public static Ink area(Colour colour) {
    return new Ink(Optional.of(colour), Optional.empty(), 0, List.of());
  }

  public Ink filled(Colour colour) {
    return new Ink(Optional.of(colour), line, widthMm, dashesMm);
  }
}
