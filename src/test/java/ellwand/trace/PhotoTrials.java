package ellwand.trace;

import ellwand.geometry.Outline;
import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.problem.InputException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/** Simulated photos straightened and traced, each held against the piece that was laid down. */
public final class PhotoTrials {

  /**
   * A piece on a table, and how it is photographed.
   *
   * @param share of 12 megapixels' width
   */
  private record Trial(
      String shape,
      List<Path> path,
      Scene.Paper paper,
      Scene.Ground ground,
      double share,
      double tiltDegrees,
      double blurPx,
      double k1) {

    Outline outline() {
      return Outline.of(PaperShapes.round(path).flattened(0.01));
    }

    /** One beside a small piece, two beside a larger one, four round a long one. */
    List<Scene.LaidSheet> sheets() {
      double right = outline().box().maxX() + 25;
      return switch (shape) {
        case "pocket" -> List.of(Scene.LaidSheet.a4(1, -240, -40, 3));
        case "front" ->
            List.of(Scene.LaidSheet.a4(1, -245, 30, 2), Scene.LaidSheet.a4(2, right, 60, -3));
        default ->
            List.of(
                Scene.LaidSheet.a4(1, -245, 60, 2),
                Scene.LaidSheet.a4(2, right, 100, -3),
                Scene.LaidSheet.a4(3, -250, 520, -2),
                Scene.LaidSheet.a4(4, right, 560, 4));
      };
    }

    Scene scene() {
      return new Scene(
          ground,
          sheets(),
          List.of(new Scene.PaperPiece(outline(), paper, true)),
          new Scene.Flaws(blurPx, 0.01, 0.3, 85, 1));
    }

    /** Three along a long piece, one of any other. */
    List<SimulatedCamera> cameras() {
      Point middle = outline().box().centre();
      boolean along = shape.equals("leg");
      double distance = shape.equals("pocket") ? 550 : along ? 850 : 750;
      Point aim = shape.equals("pocket") ? middle.plus(new Point(-100, 0)) : middle;
      int photos = along ? 3 : 1;
      return IntStream.range(0, photos)
          .mapToObj(i -> aim.plus(new Point(0, along ? (i - 1) * 260 : 0)))
          .map(
              at ->
                  SimulatedCamera.phone(at, distance)
                      .tilted(tiltDegrees, 70)
                      .lens(k1, -k1 / 3, 0.005)
                      .scaled(share))
          .toList();
    }

    @Override
    public String toString() {
      return String.format(
          Locale.ROOT,
          "%s, %s on %s, %.0f megapixels, tilt %.0f, blur %.1f px, k1 %.2f",
          shape,
          paper.toString().toLowerCase(Locale.ROOT),
          ground.toString().toLowerCase(Locale.ROOT).replace('_', ' '),
          12 * share * share,
          tiltDegrees,
          blurPx,
          k1);
    }
  }

  /** So many are enough of a border that was followed astray. */
  private static final int MOST_PLACES = 6000;

  private PhotoTrials() {}

  /**
   * Prints a line for each trial: of the first so many, or with {@code random FROM TO} of photos at
   * random, by their numbers, with {@code scans FROM TO} of scans that are joined.
   */
  public static void main(String[] args) {
    if (args.length == 3 && args[0].equals("scans")) {
      System.out.println("|scans|joined by|off|expected|");
      System.out.println("|---|---|---|---|");
      for (int i = Integer.parseInt(args[1]); i <= Integer.parseInt(args[2]); i++) {
        RandomScans scans = RandomScans.of(i);
        System.out.println("|" + scans.said() + "|" + scans.joined());
      }
      return;
    }
    System.out.println("|photo|95 % within|all within|length off|expected|seconds|");
    System.out.println("|---|---|---|---|---|---|");
    if (args.length == 3) {
      for (int i = Integer.parseInt(args[1]); i <= Integer.parseInt(args[2]); i++) {
        RandomPhotos photos = RandomPhotos.of(i);
        run(photos.said(), photos.truth(), photos.scene(), photos.cameras());
      }
      return;
    }
    List<Trial> trials = trials();
    int most = args.length > 0 ? Integer.parseInt(args[0]) : trials.size();
    trials.stream()
        .limit(most)
        .forEach(t -> run(t.toString(), t.outline(), t.scene(), t.cameras()));
  }

  private static List<Trial> trials() {
    List<Trial> trials = new ArrayList<>();
    Scene.Paper[] papers = Scene.Paper.values();
    Scene.Ground[] grounds = Scene.Ground.values();
    double[] tilts = {20, 35, 0, 10};
    int n = 0;
    for (double share : new double[] {0.5, 1}) {
      for (Scene.Paper paper : papers) {
        for (String shape : List.of("front", "leg", "pocket")) {
          List<Path> path =
              switch (shape) {
                case "pocket" -> PaperShapes.pocket();
                case "front" -> PaperShapes.front();
                default -> PaperShapes.leg();
              };
          trials.add(
              new Trial(
                  shape,
                  path,
                  paper,
                  grounds[n % grounds.length],
                  share,
                  tilts[n % tilts.length],
                  n % 3 == 2 ? 1.5 : 0.8,
                  n % 2 == 0 ? -0.06 : 0.04));
          n++;
        }
      }
    }
    return trials;
  }

  private static void run(String said, Outline truth, Scene scene, List<SimulatedCamera> cameras) {
    List<byte[]> files = cameras.stream().map(scene::photo).toList();
    List<String> names = IntStream.range(0, files.size()).mapToObj(i -> "photo " + i).toList();
    long start = System.nanoTime();
    String found;
    try {
      Straightened straight = Photos.straighten(names, files);
      List<TracedPaper> all = Tracing.of(straight);
      TracedPaper traced = all.get(0);
      found = found(truth, traced, scene);
    } catch (InputException e) {
      found = "refused: " + e.getMessage() + "||||";
    }
    double seconds = (System.nanoTime() - start) / 1e9;
    System.out.printf(Locale.ROOT, "|%s|%s%.1f|%n", said, found, seconds);
  }

  private static String found(Outline truth, TracedPaper traced, Scene scene) {
    // What becomes the piece: the edges that were drawn of the border, with their corners.
    List<Point> drawn = new ArrayList<>();
    traced.edges().edges().forEach(edge -> drawn.addAll(edge.flattened(0.02)));
    Rim round = new Rim(List.copyOf(drawn));
    drawn.addAll(round.even(Math.max(0.5, round.lengthMm() / MOST_PLACES)).points());
    // The arrow's ends go with them to the table; two of thousands do not move the rest.
    traced.arrow().ifPresent(arrow -> drawn.addAll(List.of(arrow.from(), arrow.to())));
    List<Point> laid = laidOn(truth, drawn, scene);
    int border = laid.size() - (traced.arrow().isPresent() ? 2 : 0);
    List<Point> rim = laid.subList(0, border);
    double[] off = rim.stream().mapToDouble(truth::distance).sorted().toArray();
    double worst = off[off.length - 1];
    double length = farthest(rim) / farthest(truth.points()) - 1;
    String doubts =
        traced.doubts().isEmpty()
            ? worst > 2 || Math.abs(length) > 0.003 ? " SILENT" : ""
            : " refused: " + traced.doubts().get(0).what();
    return String.format(
        Locale.ROOT,
        "%.2f mm|%.2f mm|%+.2f %%|%.2f mm%s%s|",
        off[off.length * 95 / 100],
        worst,
        100 * length,
        traced.errorMm(),
        doubts,
        arrow(scene, traced, laid.subList(border, laid.size())));
  }

  /** By how much the arrow that was found is turned from the one that was drawn. */
  private static String arrow(Scene scene, TracedPaper traced, List<Point> found) {
    List<Scene.Arrow> drawn = scene.pieces().get(0).arrows();
    if (found.isEmpty()) {
      return drawn.isEmpty() ? "" : ", arrow missed";
    }
    if (drawn.isEmpty()) {
      return traced.arrow().orElseThrow().sure() ? ", WRONG ARROW" : ", an arrow in doubt";
    }
    Point truth = drawn.get(0).to().minus(drawn.get(0).from());
    Point way = found.get(1).minus(found.get(0));
    double degrees = Math.toDegrees(Math.atan2(truth.cross(way), truth.dot(way)));
    if (drawn.get(0).both() && Math.abs(degrees) > 90) {
      degrees -= Math.copySign(180, degrees);
    }
    return String.format(
        Locale.ROOT,
        ", arrow %.2f degrees off%s",
        Math.abs(degrees),
        traced.arrow().orElseThrow().sure() ? "" : ", in doubt");
  }

  /**
   * Brought from the frame of whichever sheet it is, then turned and shifted until it lies best.
   */
  private static List<Point> laidOn(Outline truth, List<Point> rim, Scene scene) {
    List<Point> best = List.of();
    double least = Double.POSITIVE_INFINITY;
    for (Scene.LaidSheet sheet : scene.sheets()) {
      List<Point> placed = rim.stream().map(sheet.where()::apply).toList();
      double off = placed.stream().mapToDouble(truth::distance).average().orElseThrow();
      if (off < least) {
        least = off;
        best = placed;
      }
    }
    List<Point> dense = new Rim(truth.points()).even(0.5).points();
    for (int round = 0; round < 5; round++) {
      List<Point> nearest = best.stream().map(p -> nearest(dense, p)).toList();
      best = Fitted.onto(nearest, best);
    }
    return best;
  }

  private static Point nearest(List<Point> points, Point p) {
    Point nearest = points.get(0);
    for (Point q : points) {
      nearest = q.distance(p) < nearest.distance(p) ? q : nearest;
    }
    return nearest;
  }

  private static double farthest(List<Point> points) {
    return points.stream()
        .flatMapToDouble(p -> Arrays.stream(points.stream().mapToDouble(p::distance).toArray()))
        .max()
        .orElse(0);
  }
}
