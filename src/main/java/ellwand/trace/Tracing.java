package ellwand.trace;

import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import ellwand.problem.InputException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/** Finds the paper pieces in a straightened picture and traces them. */
public final class Tracing {

  /** A piece whose places may be farther off is refused, mm. */
  public static final double MOST_ERROR_MM = 2;

  /** How near the border of what is seen a piece may come, mm. */
  private static final double CUT_OFF_MM = 3;

  /** How near to a sheet, mm, beyond what is left out round it. */
  private static final double TOUCHING_MM = 3;

  /** A border of less contrast, or in doubt, is passed over only where it is shorter, mm. */
  private static final double SHORT_MM = 12;

  /** So much like paper it is beside the border inside, and so little outside. */
  private static final double PAPER = 0.7;

  private static final double GROUND = 0.3;

  /** No traced place lies farther from the lines and curves, mm; corners are rounded by less. */
  private static final double MOST_ASTRAY_MM = 1;

  /** As far off is what no line goes round, mm. */
  private static final double FAR_MM = 1000;

  /** So near to a nick they may, mm. */
  private static final double NICK_MM = 20;

  /** A border of fewer goes round nothing. */
  private static final int LEAST_PLACES = 40;

  /** Paper going over into ground over more than this is blurred too much, mm. */
  private static final double BLURRED_MM = 4;

  /** How far off blur may put a border, as a share of the blur: what simulated photos showed. */
  private static final double BLUR_SHARE = 0.15;

  private final Straightened straight;
  private final Cells cells;

  private Tracing(Straightened straight) {
    this.straight = straight;
    this.cells = Cells.of(straight);
  }

  /**
   * What may be paper pieces, the largest first.
   *
   * @throws InputException if there is none
   */
  public static List<TracedPaper> of(Straightened straight) {
    Tracing tracing = new Tracing(straight);
    List<Patch> patches = PaperFinder.patches(tracing.cells);
    List<TracedPaper> found = new ArrayList<>();
    for (Patch patch : patches) {
      RimTracer.Border border = RimTracer.border(straight, tracing.cells, patch);
      if (border.places().size() >= LEAST_PLACES) {
        found.add(tracing.traced(found.size() + 1, patch, border));
      }
    }
    if (found.isEmpty()) {
      throw InputException.of(
          "no paper piece can be told from what it lies on",
          "Lay it on a ground of another colour, all of it in the picture, with ground to be seen"
              + " on all sides");
    }
    return found;
  }

  private TracedPaper traced(int number, Patch patch, RimTracer.Border border) {
    Rim rim = new Rim(border.places());
    List<TracedPaper.Doubt> doubts = new ArrayList<>();
    cutOff(patch, doubts);
    underSheet(patch, doubts);
    weak(border, doubts);
    RimEdges edges = RimFit.of(rim, straight::errorMm);
    double apart = apart(rim, edges, doubts);
    double most = 0;
    Point worst = rim.at(0);
    double[] widths = border.widthsMm().clone();
    Arrays.sort(widths);
    double usual = widths[widths.length / 2];
    for (Point p : rim.even(10).points()) {
      double error = Math.hypot(straight.errorMm(p), Math.hypot(BLUR_SHARE * usual, apart));
      if (error > most) {
        most = error;
        worst = p;
      }
    }
    if (most > MOST_ERROR_MM) {
      doubts.add(
          new TracedPaper.Doubt(
              String.format(
                  Locale.ROOT,
                  "a place of it may be %.1f mm off: %s",
                  most,
                  straight.reason(worst)),
              worst,
              straight.remedy()));
    }
    if (usual > BLURRED_MM) {
      doubts.add(
          new TracedPaper.Doubt(
              String.format(
                  Locale.ROOT,
                  "it is blurred: its border goes over into the ground over %.0f mm",
                  usual),
              worst,
              "Hold the camera still, in more light"));
    }
    Optional<DrawnArrow> arrow = ArrowFinder.arrow(straight, cells, patch);
    return new TracedPaper(number, rim, edges, arrow, most, worst, doubts);
  }

  /**
   * Holds the lines and curves against what was traced, but for nicks.
   *
   * @return by how much 95 of 100 traced places lie off them at most, mm
   */
  private static double apart(Rim rim, RimEdges edges, List<TracedPaper.Doubt> doubts) {
    List<Point> line = new ArrayList<>();
    edges.edges().forEach(e -> line.addAll(e.flattened(0.05)));
    Optional<Outline> drawn = Outline.around(line);
    List<Point> places =
        rim.even(2).points().stream()
            .filter(p -> edges.nicks().stream().noneMatch(n -> n.mouth().distance(p) < NICK_MM))
            .toList();
    double[] off =
        places.stream().mapToDouble(p -> drawn.map(d -> d.distance(p)).orElse(FAR_MM)).toArray();
    IntStream.range(0, off.length)
        .filter(i -> !(off[i] <= MOST_ASTRAY_MM))
        .findFirst()
        .ifPresent(
            i ->
                doubts.add(
                    new TracedPaper.Doubt(
                        "its border is too ragged to be drawn in lines and curves",
                        places.get(i),
                        "Smooth what is creased or torn there, or trim it")));
    Arrays.sort(off);
    return off.length == 0 ? 0 : off[off.length * 95 / 100];
  }

  private void cutOff(Patch patch, List<TracedPaper.Doubt> doubts) {
    boolean[] unseen = new boolean[cells.size()];
    for (int i = 0; i < unseen.length; i++) {
      unseen[i] = !cells.seen()[i];
    }
    int[] off = Distances.to(cells.width(), unseen, true);
    double x = 0;
    double y = 0;
    int count = 0;
    for (int i = 0; i < off.length; i++) {
      if (patch.has()[i] && off[i] * cells.cellMm() <= CUT_OFF_MM) {
        x += i % cells.width();
        y += i / cells.width();
        count++;
      }
    }
    if (count > 0) {
      Point at = cells.mm(x / count, y / count);
      doubts.add(
          new TracedPaper.Doubt(
              "it runs out of the picture " + side(patch, x / count, y / count),
              at,
              "Take a photo or scan with all of it and some ground round it, or several that"
                  + " overlap"));
    }
  }

  /** On which side of a patch a cell lies. */
  private static String side(Patch patch, double x, double y) {
    double across = (x - (patch.left() + patch.right()) / 2.0) / (patch.right() - patch.left() + 1);
    double up = ((patch.top() + patch.bottom()) / 2.0 - y) / (patch.bottom() - patch.top() + 1);
    if (Math.abs(across) > Math.abs(up)) {
      return across > 0 ? "on the right" : "on the left";
    }
    return up > 0 ? "at the top" : "at the bottom";
  }

  private void underSheet(Patch patch, List<TracedPaper.Doubt> doubts) {
    int[] off = Distances.to(cells.width(), cells.sheet(), false);
    int count = 0;
    double x = 0;
    double y = 0;
    for (int i = 0; i < off.length; i++) {
      if (patch.has()[i] && off[i] * cells.cellMm() <= TOUCHING_MM) {
        count++;
        x += i % cells.width();
        y += i / cells.width();
      }
    }
    if (count > 0) {
      doubts.add(
          new TracedPaper.Doubt(
              "a reference sheet lies on it, or touches it",
              cells.mm(x / count, y / count),
              "Lay the sheets beside it, a finger's breadth off"));
    }
  }

  /** Stretches along which paper and ground hardly differ, or the border may lie elsewhere. */
  private void weak(RimTracer.Border border, List<TracedPaper.Doubt> doubts) {
    at(border, i -> border.contrasts()[i] < RimTracer.LEAST_CONTRAST)
        .or(() -> at(border, i -> border.inside()[i] < PAPER || border.outside()[i] > GROUND))
        .ifPresent(
            at ->
                doubts.add(
                    new TracedPaper.Doubt(
                        "its border cannot be told surely from what it lies on",
                        at,
                        "Lay it flat on an even ground of another colour, in light that throws no"
                            + " hard shadows")));
  }

  /** Where such a stretch is, if one is long enough to count. */
  private static Optional<Point> at(RimTracer.Border border, IntPredicate weak) {
    List<Point> places = border.places();
    double length = 0;
    for (int i = 1; i < places.size(); i++) {
      length = weak.test(i) ? length + places.get(i).distance(places.get(i - 1)) : 0;
      if (length > SHORT_MM) {
        return Optional.of(places.get(i));
      }
    }
    return Optional.empty();
  }
}
