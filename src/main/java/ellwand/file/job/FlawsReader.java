package ellwand.file.job;

import ellwand.cloth.Flaw;
import ellwand.file.source.Spot;
import ellwand.geometry.Box;
import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import ellwand.geometry.Region;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads {@code flaws:} and {@code cut-end:} of a cloth or a remnant. */
final class FlawsReader {

  private FlawsReader() {}

  /**
   * Those that are right, a cut end first.
   *
   * @param tubular whether the cloth is a tube, whose back goes on beyond its width
   */
  static List<Flaw> read(Spot cloth, boolean tubular) {
    Optional<Double> across = cloth.get("width").length().map(mm -> tubular ? 2 * mm : mm);
    List<Flaw> flaws = new ArrayList<>();
    List<Point> end = points(cloth.get("cut-end"));
    if (end.size() > 1
        && cloth
            .get("cut-end")
            .holds(
                end.get(0).y() != end.get(end.size() - 1).y(),
                "the cut end does not reach across the cloth",
                "Give its places in order from edge to edge, each as [along, across]")) {
      flaws.add(Flaw.cutEnd(end));
    }
    for (Spot spot : cloth.get("flaws").items()) {
      flaw(spot, "flaw " + (flaws.size() + 1))
          .filter(flaw -> across.isEmpty() || lies(flaw.outline().box(), across.get(), spot))
          .ifPresent(flaws::add);
    }
    return flaws;
  }

  private static boolean lies(Box flaw, double acrossMm, Spot spot) {
    return spot.holds(
        flaw.maxY() > 0 && flaw.minY() < acrossMm,
        "the flaw lies beside the cloth",
        "Measure it along the cloth first, then across it from one edge");
  }

  private static Optional<Flaw> flaw(Spot spot, String usual) {
    String name = spot.get("name").text().orElse(usual);
    if (spot.get("outline").present()) {
      return outline(spot.get("outline")).map(outline -> new Flaw(name, outline));
    }
    Optional<Point> at = point(spot.get("at"));
    if (at.isEmpty()) {
      spot.holds(
          spot.get("at").present(),
          "it is not said where the flaw is",
          "Give at: [along, across], or outline: with its corners");
      return Optional.empty();
    }
    if (spot.get("radius").present()) {
      return spot.get("radius").lengthAbove0().map(r -> Flaw.round(name, at.get(), r));
    }
    Optional<Double> length = spot.get("length").lengthAbove0();
    Optional<Double> width = spot.get("width").lengthAbove0();
    spot.holds(
        spot.get("length").present() && spot.get("width").present(),
        "it is not said how large the flaw is",
        "Give radius:, or length: along the cloth and width: across it");
    if (length.isEmpty() || width.isEmpty()) {
      return Optional.empty();
    }
    Point a = at.get();
    return Optional.of(
        new Flaw(
            name,
            Outline.of(
                List.of(
                    a,
                    a.plus(new Point(length.get(), 0)),
                    a.plus(new Point(length.get(), width.get())),
                    a.plus(new Point(0, width.get()))))));
  }

  /** A closed line of corners that does not cross itself. */
  static Optional<Outline> outline(Spot spot) {
    List<Point> corners = points(spot);
    if (corners.size() < spot.items().size()
        || !spot.holds(
            Region.crossing(corners).isEmpty(),
            "the line crosses or touches itself",
            "Put its corners in order round it")) {
      return Optional.empty();
    }
    Optional<Outline> outline = Outline.around(corners);
    spot.holds(outline.isPresent(), "the line encloses nothing", "Give it three corners or more");
    return outline;
  }

  private static List<Point> points(Spot list) {
    return list.items().stream().flatMap(spot -> point(spot).stream()).toList();
  }

  private static Optional<Point> point(Spot spot) {
    List<Spot> xy = spot.items();
    if (xy.size() != 2) {
      return Optional.empty();
    }
    Optional<Double> x = xy.get(0).length();
    Optional<Double> y = xy.get(1).length();
    return x.isPresent() && y.isPresent()
        ? Optional.of(new Point(x.get(), y.get()))
        : Optional.empty();
  }
}
