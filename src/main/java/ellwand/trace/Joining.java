package ellwand.trace;

import ellwand.geometry.Motion;
import ellwand.geometry.Point;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.ddogleg.optimization.functions.FunctionNtoM;
import org.ejml.data.DMatrixRMaj;

/** Brings scans of one piece into the frame of the first, by crosses that they share. */
final class Joining {

  /** Crosses that are farther apart when scans are joined were not scanned flat, mm. */
  private static final double MOST_OFF_MM = 0.5;

  /** Expected of a cross in two scans, mm; more where they say so. */
  private static final double USUAL_OFF_MM = 0.1;

  /** Crosses are never drawn so near to each other, mm. */
  private static final double ONE_MM = 3;

  /** More things like crosses in a scan are print. */
  private static final int MOST_CROSSES = 25;

  private static final String DRAW =
      "Draw two crosses or three on the paper where both scans show them, with a fine pen, each two"
          + " strokes of 1 to 5 cm, far apart and a finger's breadth from any line and border; then"
          + " scan anew";

  private final List<Joint.Scan> scans;
  private final List<Link> links = new ArrayList<>();
  private final Motion[] laid;
  private DMatrixRMaj open;

  /** Which scans a joint joins, by their numbers. */
  private record Link(int one, int other, Joint joint) {}

  private Joining(List<View> views) {
    scans =
        views.stream()
            .map(view -> new Joint.Scan(view, Crosses.in(view), Contours.of(view)))
            .toList();
    laid = new Motion[scans.size()];
  }

  /**
   * Joins scans.
   *
   * @param views each with the mapping of its own
   * @throws InputException if it is not clear how they lie
   */
  static Joining of(List<View> views) {
    Joining joining = new Joining(views);
    joining.checkCrosses();
    joining.findLinks();
    joining.lay();
    joining.settle();
    return joining;
  }

  private void checkCrosses() {
    for (Joint.Scan scan : scans) {
      if (scan.crosses().size() > MOST_CROSSES) {
        throw at(
            scan,
            scan.crosses().size() + " things in the scan look like crosses, too many to tell apart",
            "Photograph the piece with reference sheets instead");
      }
    }
  }

  private void findLinks() {
    for (int i = 0; i < scans.size(); i++) {
      for (int j = i + 1; j < scans.size(); j++) {
        Joint.Scan one = scans.get(i);
        Joint.Scan other = scans.get(j);
        List<Joint> ways =
            Joint.between(one, other).stream().filter(w -> w.agrees(one, other)).toList();
        if (!ways.isEmpty()) {
          if (!ways.stream().allMatch(w -> w.like(ways.get(0), other))) {
            throw at(
                other,
                "it can be joined to " + one.view().file() + " in more than one way",
                "Draw one more cross that both show, at other distances from the rest, and scan"
                    + " anew");
          }
          checkOff(one, other, ways.get(0).offMm());
          links.add(new Link(i, j, ways.get(0)));
        }
      }
    }
  }

  private static void checkOff(Joint.Scan one, Joint.Scan other, double offMm) {
    if (offMm > MOST_OFF_MM) {
      throw at(
          other,
          String.format(
              Locale.ROOT,
              "crosses that it shares with %s are %.1f mm apart when the scans are joined",
              one.view().file(),
              offMm),
          "Press the paper flat on the glass, let nothing move, scan all with the same dpi");
    }
  }

  /** From the first on, each beside one that lies. */
  private void lay() {
    laid[0] = Motion.NONE;
    Deque<Integer> next = new ArrayDeque<>(List.of(0));
    while (!next.isEmpty()) {
      int from = next.remove();
      for (Link link : links) {
        if (link.one == from && laid[link.other] == null) {
          laid[link.other] = laid[from].after(link.joint.motion());
          next.add(link.other);
        } else if (link.other == from && laid[link.one] == null) {
          laid[link.one] = laid[from].after(link.joint.motion().inverse());
          next.add(link.one);
        }
      }
    }
    for (int i = 0; i < laid.length; i++) {
      if (laid[i] == null) {
        throw at(
            scans.get(i), "it cannot be told how the scan lies beside the others: " + seen(), DRAW);
      }
    }
  }

  private String seen() {
    return "of the crosses that are seen ("
        + scans.stream()
            .map(scan -> scan.crosses().size() + " in " + scan.view().file())
            .collect(Collectors.joining(", "))
        + ") no two that are 3 cm apart or more lie alike in it and in another, with the same lines"
        + " and borders round them";
  }

  /** All together, so that crosses meet as well as can be. */
  private void settle() {
    if (scans.size() == 1) {
      return;
    }
    double[] changes = LeastSquares.solved(new Off(1));
    for (int i = 1; i < laid.length; i++) {
      laid[i] = changed(i, changes);
    }
    for (Link link : links) {
      double most =
          link.joint.pairs().stream().mapToDouble(p -> apart(link, p).norm()).max().orElse(0);
      checkOff(scans.get(link.one), scans.get(link.other), most);
    }
    double squares = meetings().stream().mapToDouble(c -> c.offMm() * c.offMm()).sum();
    Off off = new Off(1);
    int free = Math.max(1, off.getNumOfOutputsM() - off.getNumOfInputsN());
    open = LeastSquares.open(new Off(Math.max(USUAL_OFF_MM, Math.sqrt(squares / free))));
  }

  private Motion changed(int scan, double[] changes) {
    if (scan == 0) {
      return laid[0];
    }
    int at = 3 * (scan - 1);
    return new Motion(false, Math.toDegrees(changes[at]), changes[at + 1], changes[at + 2])
        .after(laid[scan]);
  }

  private Point apart(Link link, Joint.Pair pair) {
    Point one = laid[link.one].apply(scans.get(link.one).crosses().get(pair.one()));
    return laid[link.other].apply(scans.get(link.other).crosses().get(pair.other())).minus(one);
  }

  /** How far crosses that are the same lie apart, in what is expected, mm. */
  private final class Off implements FunctionNtoM {

    private final double expectedMm;

    Off(double expectedMm) {
      this.expectedMm = expectedMm;
    }

    @Override
    public int getNumOfInputsN() {
      return 3 * (scans.size() - 1);
    }

    @Override
    public int getNumOfOutputsM() {
      return 2 * links.stream().mapToInt(link -> link.joint.pairs().size()).sum();
    }

    @Override
    public void process(double[] changes, double[] off) {
      int at = 0;
      for (Link link : links) {
        Motion one = changed(link.one, changes);
        Motion other = changed(link.other, changes);
        for (Joint.Pair pair : link.joint.pairs()) {
          Point apart =
              other
                  .apply(scans.get(link.other).crosses().get(pair.other()))
                  .minus(one.apply(scans.get(link.one).crosses().get(pair.one())));
          off[at++] = apart.x() / expectedMm;
          off[at++] = apart.y() / expectedMm;
        }
      }
    }
  }

  /** The scans where they lie. */
  List<View> views() {
    return IntStream.range(0, scans.size()).mapToObj(this::view).toList();
  }

  private View view(int scan) {
    View view = scans.get(scan).view();
    double[] known = new double[9];
    if (scan > 0) {
      int at = 3 * (scan - 1);
      known = LeastSquares.part(open, new int[] {at, at + 1, at + 2});
    }
    return new View(
        view.file(),
        view.picture(),
        new ScanMapping((FlatMapping) view.mapping(), laid[scan], known));
  }

  /** The crosses by which they are joined, each with the most that two of its scans are apart. */
  List<SharedCross> shared() {
    List<SharedCross> shared = new ArrayList<>();
    List<SharedCross> meetings = new ArrayList<>(meetings());
    meetings.sort(Comparator.comparingDouble(c -> -c.offMm()));
    for (SharedCross cross : meetings) {
      if (shared.stream().allMatch(c -> c.at().distance(cross.at()) > ONE_MM)) {
        shared.add(cross);
      }
    }
    return shared;
  }

  /** Of every cross in every two scans. */
  private List<SharedCross> meetings() {
    List<SharedCross> meetings = new ArrayList<>();
    for (Link link : links) {
      for (Joint.Pair pair : link.joint.pairs()) {
        Point at = laid[link.one].apply(scans.get(link.one).crosses().get(pair.one()));
        meetings.add(new SharedCross(at, apart(link, pair).norm()));
      }
    }
    return meetings;
  }

  private static InputException at(Joint.Scan scan, String what, String remedy) {
    return new InputException(Problem.of(what, remedy).at(scan.view().file(), 0));
  }
}
