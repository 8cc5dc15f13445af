package ellwand.file.svg;

import ellwand.file.drawn.Affine;
import ellwand.problem.InputException;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads {@code transform} attributes. */
final class Transforms {

  private static final Pattern ONE = Pattern.compile("\\s*,?\\s*(\\w+)\\s*\\(([^()]*)\\)\\s*");

  private Transforms() {}

  /** Units that CSS has and attributes have not. */
  private static final Pattern CSS_UNIT = Pattern.compile("(?<=[\\d.])(px|deg)\\b");

  /**
   * That of an element, by its attribute or as CSS says it.
   *
   * @throws InputException if it cannot be read
   */
  static Affine of(SvgElement element) {
    String text = element.property("transform").map(Transforms::plain).orElse("none");
    if (text.equals("none")) {
      return Affine.NONE;
    }
    Affine all = of(text);
    String origin = element.property("transform-origin").map(Transforms::plain).orElse("0 0");
    if (origin.matches("(0[ ,]*)+")) {
      return all;
    }
    if (!origin.matches("[-+.\\d]+[ ,]+[-+.\\d]+")) {
      throw unreadable(origin);
    }
    List<Double> at = Numbers.list(origin);
    return Affine.shifted(at.get(0), at.get(1))
        .after(all)
        .after(Affine.shifted(-at.get(0), -at.get(1)));
  }

  private static String plain(String text) {
    return CSS_UNIT.matcher(text).replaceAll("").strip();
  }

  /**
   * All of a list, put together.
   *
   * @throws InputException if it cannot be read
   */
  static Affine of(String text) {
    Affine all = Affine.NONE;
    Matcher matcher = ONE.matcher(text);
    int at = 0;
    while (at < text.length()) {
      if (!matcher.find(at) || matcher.start() != at) {
        if (text.substring(at).isBlank()) {
          break;
        }
        throw unreadable(text);
      }
      all = all.after(one(matcher.group(1), Numbers.list(matcher.group(2)), text));
      at = matcher.end();
    }
    return all;
  }

  private static Affine one(String kind, List<Double> n, String text) {
    return switch (kind + n.size()) {
      case "matrix6" -> new Affine(n.get(0), n.get(1), n.get(2), n.get(3), n.get(4), n.get(5));
      case "translate1" -> Affine.shifted(n.get(0), 0);
      case "translate2" -> Affine.shifted(n.get(0), n.get(1));
      case "scale1" -> Affine.scaled(n.get(0), n.get(0));
      case "scale2" -> Affine.scaled(n.get(0), n.get(1));
      case "rotate1" -> Affine.turned(n.get(0));
      case "rotate3" ->
          Affine.shifted(n.get(1), n.get(2))
              .after(Affine.turned(n.get(0)))
              .after(Affine.shifted(-n.get(1), -n.get(2)));
      case "skewX1" -> new Affine(1, 0, Math.tan(Math.toRadians(n.get(0))), 1, 0, 0);
      case "skewY1" -> new Affine(1, Math.tan(Math.toRadians(n.get(0))), 0, 1, 0, 0);
      default -> throw unreadable(text);
    };
  }

  private static InputException unreadable(String text) {
    String shown = text.length() > 40 ? text.substring(0, 40) + "..." : text;
    return InputException.of(
        "its transform '" + shown + "' cannot be read", "Save the drawing again as plain SVG");
  }
}
