package ellwand.trace;

import ellwand.geometry.Box;
import ellwand.geometry.Point;
import ellwand.problem.InputException;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/**
 * From scans as files to what they show on one plane: that of the first, its lower left at 0, 0.
 */
public final class Scans {

  /** A hundredth of a mm or so is lost where a scanner's carriage is not quite even. */
  private static final double CARRIAGE = 0.001;

  private Scans() {}

  /**
   * Scans of one piece from straight above; several are joined by crosses drawn on it, each of
   * which two of them show.
   *
   * @param files their names as the user gave them
   * @param bytes of each
   * @param dotsPerInch that they were made with
   * @throws InputException if one is no picture, or a tiny or huge one; if it is not clear how they
   *     are to be joined
   */
  public static Straightened read(List<String> files, List<byte[]> bytes, double dotsPerInch) {
    List<PhotoFile> scans = Photos.decoded(files, bytes);
    List<View> alone = scans.stream().map(scan -> alone(scan, dotsPerInch)).toList();
    if (alone.size() == 1) {
      return new Straightened(alone.get(0), alone, List.of(), List.of(), List.of());
    }
    Joining joining = Joining.of(alone);
    List<View> views = joining.views();
    List<Point> corners = new ArrayList<>();
    views.forEach(view -> corners.addAll(view.corners()));
    double perMm = dotsPerInch / scans.get(0).side() / Unit.INCH.mm();
    List<SharedCross> crosses = joining.shared();
    String note =
        String.format(
            Locale.ROOT,
            "%d scans are joined by crosses drawn on the piece, %d in all, which meet to %.1f mm or"
                + " better.",
            scans.size(),
            crosses.size(),
            Math.ceil(10 * crosses.stream().mapToDouble(SharedCross::offMm).max().orElse(0)) / 10);
    return new Straightened(
        Straightening.picture(
            views,
            IntStream.range(0, views.size()).mapToObj(i -> new double[] {1, 1, 1}).toList(),
            Box.around(corners),
            perMm),
        views,
        List.of(),
        crosses,
        List.of(note));
  }

  private static View alone(PhotoFile scan, double dotsPerInch) {
    double perMm = dotsPerInch / scan.side() / Unit.INCH.mm();
    int height = scan.picture().getHeight();
    double longest = Math.max(scan.picture().getWidth(), height) / perMm;
    Point corner = new Point(0, (height - 1) / perMm);
    return new View(
        scan.file(), scan.picture(), new FlatMapping(corner, perMm, longest * CARRIAGE));
  }
}
