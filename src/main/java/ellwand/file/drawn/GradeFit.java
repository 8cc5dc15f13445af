package ellwand.file.drawn;

import ellwand.geometry.CurveFit;
import ellwand.geometry.Point;
import ellwand.geometry.Segment;
import ellwand.pattern.Draft;
import ellwand.pattern.GradeRule;
import ellwand.pattern.Sizes;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Finds how the points of a piece move from size to size, from its outlines in all of them.
 *
 * <p>Turn points stand for one another, in order. Curves between them are graded as every curve is.
 * Where one would stray from what is drawn in some size its handles get rules of their own, or,
 * where only points may have rules or that does not do, it is cut in two at the place where the
 * other size runs in the same direction, so that its handles need not turn.
 */
public final class GradeFit {

  /** How far a graded line may stray from what is drawn, mm. */
  private static final double STRAYS_MM = 0.003;

  private static final int ROUNDS = 12;
  private static final int MOST_POINTS = 300;
  private static final int SAMPLES = 10;

  /** What is shorter is not cut in two, mm. */
  private static final double SHORTEST_MM = 1;

  /** How near to its neighbours a point may come, as a share of the way between them. */
  private static final double APART = 0.1;

  /** Shifts are rounded to, mm. */
  private static final double STEPS = 1e4;

  /**
   * What was found.
   *
   * @param draft the piece in the base size, with names for all points that have a rule of their
   *     own
   * @param rules by point
   * @param straysMm how far a graded outline strays from what is drawn, at most
   */
  public record Fitted(Draft draft, Map<String, GradeRule> rules, double straysMm) {}

  /** A point of the outline, and the line that leaves it. */
  private static final class Knot {
    final Point at;
    final boolean turn;
    final int stretch;
    Segment leaving;
    Optional<String> name;

    /** How far along its stretch it lies, mm, by size. */
    final Map<String, Double> lies = new LinkedHashMap<>();

    /** The line that leaves it in each size, once its handles have rules. */
    Map<String, Segment.Cubic> fitted = Map.of();

    Knot(Optional<String> name, Segment leaving, boolean turn, int stretch) {
      this.name = name;
      this.at = leaving.start();
      this.leaving = leaving;
      this.turn = turn;
      this.stretch = stretch;
    }

    boolean pinned() {
      return !lies.isEmpty();
    }
  }

  private final Draft drawn;
  private final Sizes sizes;
  private final List<Knot> knots = new ArrayList<>();
  private final Set<String> names = new HashSet<>();
  private final List<Map<String, Track>> tracks = new ArrayList<>();
  private final List<Track> own = new ArrayList<>();

  private final boolean handles;

  private GradeFit(Draft drawn, Sizes sizes, boolean handles) {
    this.drawn = drawn;
    this.sizes = sizes;
    this.handles = handles;
  }

  /**
   * How a piece is graded.
   *
   * @param drawn in the base size
   * @param turns numbers of its points that each size has, in order
   * @param others its outline in every other size
   * @param handles whether those of curves may have rules, too
   * @return nothing if the sizes have not as many of these points
   */
  public static Optional<Fitted> of(
      Draft drawn,
      List<Integer> turns,
      Sizes sizes,
      Map<String, SizedOutline> others,
      boolean handles) {
    if (turns.isEmpty()
        || others.values().stream().anyMatch(o -> o.turns().size() != turns.size())) {
      return Optional.empty();
    }
    GradeFit fit = new GradeFit(drawn, sizes, handles);
    fit.begin(turns, others);
    double strays = fit.refine();
    return Optional.of(new Fitted(fit.draft(), fit.rules(), strays));
  }

  private void begin(List<Integer> turns, Map<String, SizedOutline> others) {
    SizedOutline base = new SizedOutline(drawn.nodes(), turns);
    drawn.nodes().forEach(n -> n.name().ifPresent(names::add));
    for (int k = 0; k < turns.size(); k++) {
      tracks.add(new LinkedHashMap<>());
      own.add(new Track(base.stretch(k)));
    }
    others.forEach(
        (size, shape) -> {
          int first = shape.standingFor(base);
          for (int k = 0; k < turns.size(); k++) {
            tracks.get(k).put(size, new Track(shape.stretch(first + k)));
          }
        });
    for (int i = 0; i < drawn.nodes().size(); i++) {
      int stretch = stretchOf(turns, i);
      Knot knot =
          new Knot(drawn.nodes().get(i).name(), base.leaving(i), turns.contains(i), stretch);
      knots.add(knot);
      if (knot.turn) {
        tracks.get(stretch).keySet().forEach(size -> knot.lies.put(size, 0.0));
        name(knot);
      }
    }
    // A point with a name and no rule would stay where it is.
    knots.stream().filter(k -> !k.turn && k.name.isPresent()).forEach(this::pin);
  }

  private void name(Knot knot) {
    if (knot.name.isEmpty()) {
      knot.name = Optional.of(SafeName.free("point " + (names.size() + 1), names));
    }
  }

  private static int stretchOf(List<Integer> turns, int node) {
    int stretch = turns.size() - 1;
    for (int k = 0; k < turns.size(); k++) {
      if (turns.get(k) <= node) {
        stretch = k;
      }
    }
    return stretch;
  }

  /** Mends curves until none strays, and says how far one still does. */
  private double refine() {
    Set<Integer> changed = new HashSet<>();
    knots.forEach(k -> changed.add(k.stretch));
    double[] most = new double[tracks.size()];
    for (int round = 0; round < ROUNDS && knots.size() <= MOST_POINTS; round++) {
      List<Knot> straying = straying(changed, most);
      if (straying.isEmpty()) {
        break;
      }
      changed.clear();
      for (Knot knot : straying) {
        mend(knot);
        // A handle beside a straight line turns with it.
        for (int beside = -1; beside <= 1; beside++) {
          changed.add(Math.floorMod(knot.stretch + beside, tracks.size()));
        }
      }
    }
    straying(changed, most);
    return Arrays.stream(most).max().orElse(0);
  }

  private void mend(Knot knot) {
    List<Knot> loose =
        knots.stream().filter(k -> k.stretch == knot.stretch && !k.pinned()).toList();
    loose.forEach(this::pin);
    if (loose.isEmpty() && (!handles || !knot.fitted.isEmpty() || !fit(knot))) {
      cut(knot);
    }
  }

  /** Finds the curve in each size that leaves a point, if one does in every size. */
  private boolean fit(Knot knot) {
    Map<String, Segment.Cubic> fitted = new LinkedHashMap<>();
    for (Map.Entry<String, Track> in : tracks.get(knot.stretch).entrySet()) {
      Track track = in.getValue();
      List<Point> part = track.between(knot.lies.get(in.getKey()), end(knot, in.getKey()));
      List<Segment> curves = CurveFit.through(part, STRAYS_MM / 2);
      if (curves.size() > 1) {
        return false;
      }
      fitted.put(in.getKey(), cubic(curves.get(0)));
    }
    knot.leaving = cubic(knot.leaving);
    knot.fitted = fitted;
    return true;
  }

  private double end(Knot knot, String size) {
    Knot next = knots.get(pinned(knots.indexOf(knot) + 1, 1));
    return next.turn ? tracks.get(knot.stretch).get(size).length() : next.lies.get(size);
  }

  /** The number of the first point that has its place, from one on. */
  private int pinned(int from, int step) {
    int at = Math.floorMod(from, knots.size());
    while (!knots.get(at).pinned()) {
      at = Math.floorMod(at + step, knots.size());
    }
    return at;
  }

  private static Segment.Cubic cubic(Segment segment) {
    return segment instanceof Segment.Cubic curve
        ? curve
        : new Segment.Cubic(
            segment.start(),
            segment.start().towards(segment.end(), 1.0 / 3),
            segment.start().towards(segment.end(), 2.0 / 3),
            segment.end());
  }

  /**
   * The points that a line leaves that strays in any size.
   *
   * @param changed stretches to look at
   * @param most takes how far any of a stretch strays, mm
   */
  private List<Knot> straying(Set<Integer> changed, double[] most) {
    changed.forEach(stretch -> most[stretch] = 0);
    Set<Knot> straying = new LinkedHashSet<>();
    Draft draft = draft().bare();
    Sizes graded =
        new Sizes(sizes.names(), sizes.base(), Map.of(draft.name(), rules()), sizes.body());
    for (String size : tracks.get(0).keySet()) {
      SizedOutline shape = new SizedOutline(graded.graded(draft, size).nodes(), List.of());
      for (int i = 0; i < knots.size(); i++) {
        Knot knot = knots.get(i);
        if (changed.contains(knot.stretch)) {
          double strays = strays(i, shape.leaving(i), size);
          most[knot.stretch] = Math.max(most[knot.stretch], strays);
          if (strays > STRAYS_MM) {
            straying.add(knot);
          }
        }
      }
    }
    return List.copyOf(straying);
  }

  /** How far the line that leaves a point strays from what is drawn in a size, mm. */
  private double strays(int number, Segment line, String size) {
    Knot knot = knots.get(number);
    Track track = tracks.get(knot.stretch).get(size);
    double beyond = Track.NEAR_SHARE * track.length();
    double from = knots.get(pinned(number, -1)).lies.get(size) - beyond;
    double to = end(knot, size) + beyond;
    double most = 0;
    for (int k = 1; k < SAMPLES; k++) {
      most = Math.max(most, track.off(line.at((double) k / SAMPLES), from, to));
    }
    return most;
  }

  private void cut(Knot knot) {
    Segment whole = knot.leaving;
    if (whole.start().distance(whole.end()) < SHORTEST_MM) {
      return;
    }
    knot.leaving = whole.between(0, 0.5);
    knot.fitted = Map.of();
    Knot next = new Knot(Optional.empty(), whole.between(0.5, 1), false, knot.stretch);
    knots.add(knots.indexOf(knot) + 1, next);
    pin(next);
  }

  /** Gives a point that lies between two others its place in each size. */
  private void pin(Knot knot) {
    name(knot);
    int at = knots.indexOf(knot);
    Knot from = knots.get(pinned(at - 1, -1));
    Knot to = knots.get(pinned(at + 1, 1));
    Track mine = own.get(knot.stretch);
    double start = from.turn ? 0 : mine.nearest(from.at);
    double end = to.turn ? mine.length() : mine.nearest(to.at);
    double share = end > start ? (mine.nearest(knot.at) - start) / (end - start) : 0.5;
    Map<String, Double> lies = new LinkedHashMap<>();
    tracks
        .get(knot.stretch)
        .forEach(
            (size, track) -> {
              double low = from.lies.get(size);
              double high = to.turn ? track.length() : to.lies.get(size);
              double apart = APART * (high - low);
              lies.put(
                  size,
                  track.running(
                      knot.leaving.direction(0),
                      low + share * (high - low),
                      low + apart,
                      high - apart));
            });
    knot.lies.putAll(lies);
  }

  private Draft draft() {
    List<Draft.Node> nodes = new ArrayList<>();
    for (int i = 0; i < knots.size(); i++) {
      Segment before = knots.get(Math.floorMod(i - 1, knots.size())).leaving;
      Optional<Draft.Curve> curve =
          before instanceof Segment.Cubic c
              ? Optional.of(new Draft.Curve(c.control1(), c.control2()))
              : Optional.empty();
      nodes.add(new Draft.Node(knots.get(i).name, knots.get(i).at, curve));
    }
    return drawn.through(nodes);
  }

  private Map<String, GradeRule> rules() {
    Map<String, GradeRule> rules = new LinkedHashMap<>();
    for (int i = 0; i < knots.size(); i++) {
      Knot knot = knots.get(i);
      if (knot.pinned()) {
        Map<String, Point> shifts = new LinkedHashMap<>();
        knot.lies.forEach(
            (size, mm) ->
                shifts.put(size, even(tracks.get(knot.stretch).get(size).at(mm).minus(knot.at))));
        rule(shifts, sizes).ifPresent(rule -> rules.put(knot.name.orElseThrow(), rule));
      }
      if (!knot.fitted.isEmpty()) {
        handleRules(knot, knots.get((i + 1) % knots.size()), rules);
      }
    }
    return rules;
  }

  /** A handle that keeps its direction where others turn has a rule, though it may be of zeros. */
  private static void handleRules(Knot knot, Knot next, Map<String, GradeRule> rules) {
    Segment.Cubic curve = (Segment.Cubic) knot.leaving;
    Map<String, Point> leaving = new LinkedHashMap<>();
    Map<String, Point> arriving = new LinkedHashMap<>();
    knot.fitted.forEach(
        (size, c) -> {
          leaving.put(size, even(c.control1().minus(curve.control1())));
          arriving.put(size, even(c.control2().minus(curve.control2())));
        });
    rules.put(GradeRule.curveFrom(knot.name.orElseThrow()), new GradeRule.EachSize(leaving));
    rules.put(GradeRule.curveTo(next.name.orElseThrow()), new GradeRule.EachSize(arriving));
  }

  private static Point even(Point shift) {
    return new Point(Math.rint(shift.x() * STEPS) / STEPS, Math.rint(shift.y() * STEPS) / STEPS);
  }

  /** The rule of a point that moves so, as simply as it can be said; none if it stays. */
  static Optional<GradeRule> rule(Map<String, Point> shifts, Sizes sizes) {
    if (shifts.values().stream().allMatch(p -> p.norm() == 0)) {
      return Optional.empty();
    }
    int base = sizes.names().indexOf(sizes.base());
    String next = sizes.names().get(base == 0 ? 1 : base - 1);
    Point step = even(shifts.get(next).times(base == 0 ? 1 : -1));
    boolean steady =
        shifts.entrySet().stream()
            .allMatch(
                e ->
                    step.times(sizes.names().indexOf(e.getKey()) - base).distance(e.getValue())
                        <= 1 / STEPS);
    return Optional.of(steady ? new GradeRule.Step(step) : new GradeRule.EachSize(shifts));
  }
}
