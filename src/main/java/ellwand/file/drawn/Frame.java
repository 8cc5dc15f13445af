package ellwand.file.drawn;

import ellwand.geometry.Motion;
import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.geometry.Segment;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Turns a piece on the page so that its grain lies along x, its top towards +x. */
final class Frame {

  /** A line that leans less from a quarter turn lies along it, degrees: 2 µm in a metre. */
  private static final double ROUNDING_DEGREES = 1e-4;

  private static final double WORTH_SAYING_DEGREES = 0.05;
  private static final double FOLD_LEAN_DEGREES = 2;

  private Frame() {}

  /**
   * How the piece comes from the page into its own frame.
   *
   * @param fold its fold edge on the page
   * @param usualDegrees how the grain runs where no line says so
   * @param said takes what was guessed
   */
  static Motion of(Parts parts, Optional<Stretch> fold, double usualDegrees, List<String> said) {
    double degrees = degrees(parts, fold.map(Stretch::path), usualDegrees, said);
    Motion turned = new Motion(false, -degrees, 0, 0);
    Optional<Point> origin = parts.first(Role.ORIGIN).map(l -> turned.apply(l.path().start()));
    if (origin.isPresent()) {
      return turned.shifted(-origin.get().x(), -origin.get().y());
    }
    Ring ring = new Ring(parts.outline().path().moved(turned));
    return turned.shifted(-ring.box().minX(), -ring.box().minY());
  }

  private static double degrees(
      Parts parts, Optional<Path> fold, double usualDegrees, List<String> said) {
    Optional<Double> top = parts.first(Role.TOP).map(l -> angle(longest(l.path())));
    if (top.isPresent()) {
      return snapped(top.get());
    }
    Optional<Double> grain =
        parts.inner(Role.GRAIN).stream()
            .map(l -> longest(l.path()))
            .max(Comparator.comparingDouble(Point::norm))
            .map(along -> angle(upward(along)));
    Optional<Double> folded = fold.map(f -> angle(upward(f.end().minus(f.start()))));
    if (grain.isPresent() && folded.isPresent()) {
      double lean = Math.IEEEremainder(grain.get() - folded.get(), 180);
      if (Math.abs(lean) > WORTH_SAYING_DEGREES && Math.abs(lean) <= FOLD_LEAN_DEGREES) {
        said.add(
            String.format(
                Locale.ROOT,
                "its grain line leans by %.2f degrees from its fold edge, which was taken",
                Math.abs(lean)));
      }
      return Math.abs(lean) <= FOLD_LEAN_DEGREES ? snapped(folded.get()) : snapped(grain.get());
    }
    if (grain.isPresent()) {
      return snapped(grain.get());
    }
    if (folded.isPresent()) {
      said.add("it has no grain line: its grain is taken to run along its fold edge");
      return snapped(folded.get());
    }
    said.add(
        "it has no grain line: its grain is taken to run "
            + (usualDegrees == 0 ? "along the drawing's x axis" : "up the page"));
    return usualDegrees;
  }

  /** The longest straight stretch, from its start to its end, or from end to end of a curve. */
  private static Point longest(Path path) {
    return path.segments().stream()
        .filter(Segment.Line.class::isInstance)
        .map(s -> s.end().minus(s.start()))
        .max(Comparator.comparingDouble(Point::norm))
        .orElseGet(() -> path.end().minus(path.start()));
  }

  /** An arrow may point either way; it counts as pointing up, or to the right if it lies level. */
  private static Point upward(Point along) {
    boolean level = Math.abs(along.y()) < Math.abs(along.x());
    return (level ? along.x() : along.y()) < 0 ? along.times(-1) : along;
  }

  private static double angle(Point along) {
    return Math.toDegrees(Math.atan2(along.y(), along.x()));
  }

  private static double snapped(double degrees) {
    double quarter = Math.rint(degrees / 90) * 90;
    return Math.abs(degrees - quarter) <= ROUNDING_DEGREES ? quarter : degrees;
  }
}
