package ellwand.file.svg;

import java.util.Optional;
import java.util.Set;

/** What of an element is seen; groups hand it on to what is in them. */
record Paint(boolean visible, boolean filled, boolean stroked) {

  /** Of a page: areas are filled and lines are not drawn unless something says otherwise. */
  static final Paint INITIAL = new Paint(true, true, false);

  private static final Set<String> NONE = Set.of("none", "transparent");

  /** That of an element in what is painted so. */
  Paint of(SvgElement element) {
    Optional<String> visibility = element.property("visibility").filter(v -> !v.equals("inherit"));
    return new Paint(
        visibility.map(v -> v.equals("visible")).orElse(visible),
        painted(element, "fill").orElse(filled),
        painted(element, "stroke").orElse(stroked));
  }

  private static Optional<Boolean> painted(SvgElement element, String property) {
    return element.property(property).filter(v -> !v.equals("inherit")).map(v -> !NONE.contains(v));
  }

  /** Whether an element is taken out of the drawing with all that is in it. */
  static boolean leavesOut(SvgElement element) {
    return element.property("display").filter("none"::equals).isPresent()
        || element.property("opacity").filter(o -> o.matches("0*\\.?0+%?")).isPresent();
  }
}
