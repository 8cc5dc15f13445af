package ellwand.trace;

import ellwand.geometry.Point;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.ddogleg.optimization.functions.FunctionNtoM;
import org.ejml.data.DMatrixRMaj;

/**
 * Photos, lenses and sheets brought into one frame by least squares over all corners that were
 * measured (bundle adjustment). What may be off besides (the lens, paper that does not lie flat) is
 * sought with them, held by how much of it is usual; so what the corners leave open is known.
 *
 * <p>The first sheet lies at the origin, not turned.
 */
final class Survey {

  /** Expected of a corner, pixels, before the corners themselves tell. */
  private static final double CORNER_PX = 0.1;

  /** Corners are never taken to be better than that, pixels. */
  private static final double BEST_CORNER_PX = 0.04;

  private static final double BAD_CORNER = 5;

  /**
   * How far each of a lens's numbers usually is from what it starts with: the logarithm of the
   * focal length where the file does not say it, and where it does; the axis, shares of the focal
   * length; k1 and k2 (common practice: telephones put most of it right, wide lenses have 0.1).
   */
  private static final double FOCAL_UNSAID = 0.35;

  private static final double FOCAL_SAID = 0.08;

  private static final double[] LENS = {FOCAL_UNSAID, 0.015, 0.015, 0.1, 0.05};

  /** How far printed paper on a table usually lifts, mm. */
  private static final double[] LIFT = {0.15, 0.15, 0.5, 0.5, 0.3};

  private static final int LENS_NUMBERS = LENS.length;
  private static final int POSE_NUMBERS = 6;

  /**
   * A photo with the sheets in it.
   *
   * @param lens index of its lens
   */
  record Shot(PhotoFile photo, List<SeenSheet> sheets, int lens) {}

  /** One measured corner. */
  private record Corner(int shot, int sheet, Point paper, Point pixel) {}

  private final List<Shot> shots;
  private final int lenses;
  private final Camera[] cameras;
  private final List<LaidSheet> laid;
  private final Map<ReferenceSheet, Integer> sheetIndex = new HashMap<>();
  private List<Corner> corners = new ArrayList<>();
  private double cornerPx = CORNER_PX;
  private DMatrixRMaj covariance;

  /** What each lens's numbers have changed by in rounds that are over. */
  private final double[] changedLens;

  private Survey(List<Shot> shots, RoughPlaces places) {
    this.shots = shots;
    lenses = 1 + shots.stream().mapToInt(Shot::lens).max().orElse(0);
    cameras = places.cameras();
    laid = new ArrayList<>(places.laid());
    laid.forEach(sheet -> sheetIndex.put(sheet.sheet(), sheetIndex.size()));
    changedLens = new double[lenses * LENS_NUMBERS];
  }

  /**
   * Of photos that each show a sheet.
   *
   * @throws RoughPlaces.NotJoined if the photos have no sheets in common
   */
  static Survey of(List<PhotoFile> photos, List<List<SeenSheet>> seen)
      throws RoughPlaces.NotJoined {
    Map<String, Integer> lensOf = new HashMap<>();
    List<Shot> shots = new ArrayList<>();
    for (int i = 0; i < photos.size(); i++) {
      int lens = lensOf.computeIfAbsent(photos.get(i).camera(), c -> lensOf.size());
      shots.add(new Shot(photos.get(i), seen.get(i), lens));
    }
    Survey survey = new Survey(shots, RoughPlaces.of(photos, seen));
    survey.gather();
    survey.solve();
    if (survey.dropBad()) {
      survey.solve();
    }
    survey.judge();
    return survey;
  }

  private void gather() {
    for (int i = 0; i < shots.size(); i++) {
      for (SeenSheet seen : shots.get(i).sheets) {
        List<Point> all = seen.sheet().corners();
        for (Map.Entry<Integer, Point> corner : seen.corners().entrySet()) {
          corners.add(
              new Corner(
                  i, sheetIndex.get(seen.sheet()), all.get(corner.getKey()), corner.getValue()));
        }
      }
    }
  }

  private int poseAt(int shot) {
    return lenses * LENS_NUMBERS + shot * POSE_NUMBERS;
  }

  private int liftAt(int sheet) {
    return poseAt(shots.size()) + sheet * LaidSheet.LIFTS;
  }

  /** Of a sheet other than the first. */
  private int placeAt(int sheet) {
    return liftAt(laid.size()) + (sheet - 1) * 3;
  }

  private int numbers() {
    return placeAt(laid.size());
  }

  /** What a photo's camera depends on: its lens, then its pose. */
  private int[] numbersOf(int shot) {
    int[] numbers = new int[LENS_NUMBERS + POSE_NUMBERS];
    for (int i = 0; i < numbers.length; i++) {
      numbers[i] =
          i < LENS_NUMBERS
              ? shots.get(shot).lens * LENS_NUMBERS + i
              : poseAt(shot) + i - LENS_NUMBERS;
    }
    return numbers;
  }

  private Camera camera(int shot, double[] changes) {
    int[] numbers = numbersOf(shot);
    double[] by = new double[numbers.length];
    for (int i = 0; i < by.length; i++) {
      by[i] = changes[numbers[i]];
    }
    return cameras[shot].changed(by);
  }

  private LaidSheet laid(int sheet, double[] changes) {
    LaidSheet from = laid.get(sheet);
    double[] lift = from.lift().clone();
    for (int i = 0; i < lift.length; i++) {
      lift[i] += changes[liftAt(sheet) + i];
    }
    if (sheet == 0) {
      return new LaidSheet(from.sheet(), 0, 0, 0, lift);
    }
    int at = placeAt(sheet);
    return new LaidSheet(
        from.sheet(),
        from.x() + 1000 * changes[at],
        from.y() + 1000 * changes[at + 1],
        from.turn() + changes[at + 2],
        lift);
  }

  /** What is minimised: how far corners are off, and all that is usual, in standard deviations. */
  private final class Off implements FunctionNtoM {

    @Override
    public int getNumOfInputsN() {
      return numbers();
    }

    @Override
    public int getNumOfOutputsM() {
      return 2 * corners.size() + lenses * LENS_NUMBERS + laid.size() * LaidSheet.LIFTS;
    }

    @Override
    public void process(double[] changes, double[] off) {
      Camera[] now = new Camera[cameras.length];
      Arrays.setAll(now, i -> camera(i, changes));
      LaidSheet[] sheets = new LaidSheet[laid.size()];
      Arrays.setAll(sheets, i -> laid(i, changes));
      int at = 0;
      for (Corner corner : corners) {
        Point seen = seen(corner, now[corner.shot], sheets[corner.sheet]);
        off[at++] = (seen.x() - corner.pixel.x()) / cornerPx;
        off[at++] = (seen.y() - corner.pixel.y()) / cornerPx;
      }
      for (int lens = 0; lens < lenses; lens++) {
        boolean said = focalSaid(lens);
        for (int i = 0; i < LENS_NUMBERS; i++) {
          double usual = i == Camera.FOCAL && said ? FOCAL_SAID : LENS[i];
          int number = lens * LENS_NUMBERS + i;
          off[at++] = (changedLens[number] + changes[number]) / usual;
        }
      }
      for (LaidSheet sheet : sheets) {
        for (int i = 0; i < LaidSheet.LIFTS; i++) {
          off[at++] = sheet.lift()[i] / LIFT[i];
        }
      }
    }
  }

  private boolean focalSaid(int lens) {
    return shots.stream().anyMatch(s -> s.lens == lens && s.photo.focalShare().isPresent());
  }

  private static Point seen(Corner corner, Camera camera, LaidSheet sheet) {
    Point mm = sheet.onPlane(corner.paper);
    return camera.pixelAt(mm.x(), mm.y(), sheet.height(corner.paper));
  }

  private void solve() {
    take(LeastSquares.solved(new Off()));
  }

  private void take(double[] changes) {
    for (int i = 0; i < cameras.length; i++) {
      cameras[i] = camera(i, changes);
    }
    for (int i = 0; i < laid.size(); i++) {
      laid.set(i, laid(i, changes));
    }
    for (int i = 0; i < changedLens.length; i++) {
      changedLens[i] += changes[i];
    }
  }

  private Point off(Corner corner) {
    return seen(corner, cameras[corner.shot], laid.get(corner.sheet)).minus(corner.pixel);
  }

  private double offPx(Corner corner) {
    return off(corner).norm();
  }

  /** Leaves out corners that are far off, such as one that a finger covers. */
  private boolean dropBad() {
    double[] offs = corners.stream().mapToDouble(this::offPx).sorted().toArray();
    double usual = Math.max(CORNER_PX, offs[offs.length / 2]);
    List<Corner> good = corners.stream().filter(c -> offPx(c) <= BAD_CORNER * usual).toList();
    boolean any = good.size() < corners.size();
    corners = good;
    return any;
  }

  /** What the corners leave open. */
  private void judge() {
    double squares = corners.stream().mapToDouble(c -> offPx(c) * offPx(c)).sum();
    int free = Math.max(1, 2 * corners.size() - numbers());
    cornerPx = Math.max(BEST_CORNER_PX, Math.sqrt(squares / free));
    covariance = LeastSquares.open(new Off());
  }

  /** Whether the sheets tell how a photo's lens bends, or only what is usual does. */
  boolean tellsLens(int shot) {
    int k1 = shots.get(shot).lens * LENS_NUMBERS + Camera.K1;
    return Math.sqrt(covariance.get(k1, k1)) < LENS[Camera.K1] / 2;
  }

  List<LaidSheet> sheets() {
    return List.copyOf(laid);
  }

  Camera camera(int shot) {
    return cameras[shot];
  }

  /** The same as a mapping that knows how far it can be trusted. */
  CameraMapping mapping(int shot) {
    return new CameraMapping(cameras[shot], LeastSquares.part(covariance, numbersOf(shot)));
  }

  LaidSheet laid(ReferenceSheet sheet) {
    return laid.get(sheetIndex.get(sheet));
  }

  /** How far corners of one sheet are off in one photo, if it is seen there, pixels. */
  OptionalDouble offPx(int shot, ReferenceSheet sheet) {
    int index = sheetIndex.get(sheet);
    OptionalDouble mean =
        corners.stream()
            .filter(c -> c.shot == shot && c.sheet == index)
            .mapToDouble(c -> offPx(c) * offPx(c))
            .average();
    return mean.isPresent() ? OptionalDouble.of(Math.sqrt(mean.getAsDouble())) : mean;
  }

  /**
   * By how much neighbouring corners of a sheet are off the same way in a photo: about 0 where they
   * were measured badly, up to 1 where the sheet lies otherwise than is sought.
   */
  double offTogether(int shot, ReferenceSheet sheet) {
    int index = sheetIndex.get(sheet);
    List<Corner> seen = corners.stream().filter(c -> c.shot == shot && c.sheet == index).toList();
    double together = 0;
    int pairs = 0;
    double squares = 0;
    for (Corner one : seen) {
      Point off = off(one);
      squares += off.dot(off);
      for (Corner other : seen) {
        if (other != one && other.paper.distance(one.paper) < 1.1 * ReferenceSheet.SQUARE_MM) {
          together += off.dot(off(other));
          pairs++;
        }
      }
    }
    return pairs == 0 ? 0 : together / pairs / (squares / seen.size());
  }
}
