package ellwand.file.svg;

import ellwand.file.drawn.Affine;
import ellwand.problem.InputException;
import ellwand.units.Unit;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How large a drawing is on paper.
 *
 * @param dotsPerInch what a length without unit, or in px, is counted in; 96 unless the user says
 */
record Scale(double dotsPerInch) {

  private static final Pattern LENGTH =
      Pattern.compile(
          "([+-]?(?:[0-9]+(?:\\.[0-9]*)?|\\.[0-9]+)(?:[eE][+-]?[0-9]{1,3})?)\\s*([a-zA-Z%]*)");

  /** Sides that differ by less are drawn to one scale. */
  private static final double SAME = 1e-3;

  /** A length in mm; empty for a percentage or none. */
  Optional<Double> mm(Optional<String> text) {
    Matcher matcher = LENGTH.matcher(text.orElse(""));
    if (!matcher.matches()) {
      return Optional.empty();
    }
    double number = Double.parseDouble(matcher.group(1));
    return switch (matcher.group(2)) {
      case "", "px" -> Optional.of(number * Unit.INCH.mm() / dotsPerInch);
      case "mm" -> Optional.of(number);
      case "cm" -> Optional.of(number * 10);
      case "Q" -> Optional.of(number / 4);
      case "in" -> Optional.of(number * Unit.INCH.mm());
      case "pt" -> Optional.of(number * Unit.INCH.mm() / 72);
      case "pc" -> Optional.of(number * Unit.INCH.mm() / 6);
      default -> Optional.empty();
    };
  }

  /** Whether a length says how large it is on paper. */
  static boolean isPhysical(Optional<String> text) {
    return text.filter(t -> t.matches(".*(mm|cm|in|pt|pc|Q)")).isPresent();
  }

  /**
   * From the units in a root element to mm.
   *
   * @throws InputException if its sides cannot be meant
   */
  Affine toMm(SvgElement root) {
    double px = Unit.INCH.mm() / dotsPerInch;
    Optional<Double> width = mm(root.get("width"));
    Optional<Double> height = mm(root.get("height"));
    if (root.get("viewBox").isEmpty()) {
      return Affine.scaled(px, px);
    }
    List<Double> box = Numbers.list(root.get("viewBox").get());
    if (box.size() != 4 || !(box.get(2) > 0 && box.get(3) > 0)) {
      throw InputException.of(
          "its viewBox is no place, width and height", "Save the drawing again as plain SVG");
    }
    double x = width.map(w -> w / box.get(2)).orElse(height.map(h -> h / box.get(3)).orElse(px));
    double y = height.map(h -> h / box.get(3)).orElse(x);
    if (!(x > 0 && y > 0)) {
      throw InputException.of("its width or height is 0", "Give the drawing's page its true size");
    }
    boolean stretched = root.get("preserveAspectRatio", "").startsWith("none");
    if (!stretched && Math.abs(x / y - 1) > SAME) {
      x = Math.min(x, y);
      y = x;
    }
    return Affine.scaled(x, stretched ? y : x).after(Affine.shifted(-box.get(0), -box.get(1)));
  }
}
