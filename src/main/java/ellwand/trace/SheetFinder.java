package ellwand.trace;

import boofcv.abst.fiducial.SquareHamming_to_FiducialDetector;
import boofcv.alg.fiducial.square.FoundFiducial;
import boofcv.factory.fiducial.ConfigFiducialHammingDetector;
import boofcv.factory.fiducial.FactoryFiducial;
import boofcv.struct.image.GrayU8;
import ellwand.geometry.Box;
import ellwand.geometry.Point;
import ellwand.problem.InputException;
import georegression.struct.point.Point2D_F64;
import georegression.struct.shapes.Quadrilateral_F64;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Finds reference sheets in photos: coded squares tell which and where, corners are measured. */
final class SheetFinder {

  /** Fewer coded squares are no sheet: something covers it, or it is out of the picture. */
  private static final int LEAST_CODES = 3;

  /** Fewer corners leave too much open. */
  private static final int LEAST_CORNERS = 8;

  /** How far from a corner nothing but the four squares is printed, mm: codes begin at 4. */
  private static final double CLEAR_MM = 3.5;

  /** What the window of a corner is at least and at most, pixels each way. */
  private static final double LEAST_REACH = 3;

  private static final double MOST_REACH = 14;

  /** Least difference of black and white, of 255. */
  private static final double LEAST_CONTRAST = 25;

  /** So that the same photos give the same numbers. */
  private static final Comparator<ReferenceSheet> BY_CODE =
      Comparator.comparingInt(sheet -> sheet.codes().get(0).id());

  private final SquareHamming_to_FiducialDetector<GrayU8> detector =
      FactoryFiducial.squareHamming(
          CodeFamily.description(), new ConfigFiducialHammingDetector(), GrayU8.class);

  /**
   * Every sheet in a picture of which enough is seen.
   *
   * @throws InputException if one sheet lies there twice
   */
  List<SeenSheet> find(Grey grey) {
    detector.detect(grey.image());
    Map<ReferenceSheet, Map<Integer, Quadrilateral_F64>> codes = new TreeMap<>(BY_CODE);
    for (FoundFiducial found : detector.getAlgorithm().getFound().toList()) {
      Optional<ReferenceSheet> sheet = ReferenceSheet.withCode((int) found.id);
      if (sheet.isPresent()) {
        Quadrilateral_F64 before =
            codes
                .computeIfAbsent(sheet.get(), s -> new TreeMap<>())
                .put((int) found.id, found.distortedPixels);
        InputException.unless(
            before == null,
            sheet.get() + " lies in the photo twice",
            "Print sheets with different numbers (--sheets), and use each once");
      }
    }
    List<SeenSheet> sheets = new ArrayList<>();
    codes.forEach((sheet, quads) -> measured(sheet, quads, grey).ifPresent(sheets::add));
    sheets.sort((a, b) -> Integer.compare(b.corners().size(), a.corners().size()));
    return sheets;
  }

  private static Optional<SeenSheet> measured(
      ReferenceSheet sheet, Map<Integer, Quadrilateral_F64> quads, Grey grey) {
    if (quads.size() < LEAST_CODES) {
      return Optional.empty();
    }
    List<Point> mm = new ArrayList<>();
    List<Point> pixels = new ArrayList<>();
    for (ReferenceSheet.Code code : sheet.codes()) {
      Quadrilateral_F64 quad = quads.get(code.id());
      if (quad != null) {
        // The library begins at the printed square's lower right corner and goes clockwise.
        Box box = code.box();
        mm.add(new Point(box.maxX(), box.minY()));
        mm.add(new Point(box.minX(), box.minY()));
        mm.add(new Point(box.minX(), box.maxY()));
        mm.add(new Point(box.maxX(), box.maxY()));
        for (Point2D_F64 p : List.of(quad.a, quad.b, quad.c, quad.d)) {
          pixels.add(new Point(p.x, p.y));
        }
      }
    }
    // A second time from the corners themselves, which lie closer than a lens lets codes tell.
    Map<Integer, Point> found = corners(sheet, Homography.between(mm, pixels), grey);
    if (found.size() >= LEAST_CORNERS) {
      List<Point> all = sheet.corners();
      Homography better =
          Homography.between(
              found.keySet().stream().map(all::get).toList(), List.copyOf(found.values()));
      found = corners(sheet, better, grey);
    }
    return found.size() >= LEAST_CORNERS
        ? Optional.of(new SeenSheet(sheet, found))
        : Optional.empty();
  }

  private static Map<Integer, Point> corners(ReferenceSheet sheet, Homography to, Grey grey) {
    Map<Integer, Point> found = new TreeMap<>();
    List<Point> corners = sheet.corners();
    for (int i = 0; i < corners.size(); i++) {
      Point mm = corners.get(i);
      Point start = to.apply(mm);
      double right = to.apply(mm.plus(new Point(CLEAR_MM, 0))).distance(start);
      double up = to.apply(mm.plus(new Point(0, CLEAR_MM))).distance(start);
      double reach = Math.min(MOST_REACH, Math.min(right, up));
      if (reach >= LEAST_REACH) {
        Optional<Point> at = grey.corner(start, reach);
        if (at.isPresent() && chequered(mm, at.get().minus(start), to, grey)) {
          found.put(i, at.get());
        }
      }
    }
    return found;
  }

  /** Whether black and white meet at a corner as they are printed, and nothing lies on it. */
  private static boolean chequered(Point mm, Point off, Homography to, Grey grey) {
    double d = CLEAR_MM * 0.7;
    double[] seen = new double[4];
    for (int i = 0; i < 4; i++) {
      Point way = new Point(i == 0 || i == 3 ? d : -d, i < 2 ? d : -d);
      seen[i] = grey.at(to.apply(mm.plus(way)).plus(off));
    }
    double difference = Math.abs(seen[0] + seen[2] - seen[1] - seen[3]) / 2;
    double within = Math.max(Math.abs(seen[0] - seen[2]), Math.abs(seen[1] - seen[3]));
    return difference >= LEAST_CONTRAST && within < difference * 0.5;
  }
}
