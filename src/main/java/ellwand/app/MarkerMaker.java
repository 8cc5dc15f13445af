package ellwand.app;

import ellwand.cloth.Cloth;
import ellwand.cloth.Fold;
import ellwand.cloth.Wishes;
import ellwand.cutting.CutPiece;
import ellwand.job.Job;
import ellwand.lay.Lay;
import ellwand.lay.Marker;
import ellwand.lay.Scope;
import ellwand.nest.Tried;
import ellwand.order.AreaLengths;
import ellwand.order.Limits;
import ellwand.order.MarkerLengths;
import ellwand.order.MeasuredLengths;
import ellwand.order.SizeMix;
import ellwand.order.Spreading;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import ellwand.rule.Check;
import ellwand.units.Length;
import ellwand.units.Unit;
import ellwand.work.Effort;
import ellwand.work.Progress;
import ellwand.work.Request;
import ellwand.work.Spending;
import ellwand.work.Stop;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** Makes the markers of one cloth of an order, each size mix once. */
final class MarkerMaker {

  private static final long BRIEF_STEPS = 20;
  private static final double BRIEF_SECONDS = 1;

  private final Job job;
  private final Cloth cloth;
  private final Spreading spreading;
  private final Fold fold;
  private final Unit unit;
  private final Wishes wishes;
  private final Hands hands;
  private final Map<String, List<CutPiece>> cutBySize = new ConcurrentHashMap<>();
  private final Map<SizeMix, Marker> made = new LinkedHashMap<>();

  MarkerMaker(Job job, Cloth cloth, Spreading spreading, Unit unit, Hands hands) {
    this.job = job;
    // A plan wants the shortest markers.
    this.cloth = cloth.wishing(Wishes.NONE).flawed(List.of());
    this.wishes = cloth.wishes();
    this.spreading = spreading;
    this.fold =
        spreading.halfSets()
            ? Fold.FACE_TO_FACE
            : spreading.faces() == Spreading.Faces.FOLDED ? Fold.STACKED : Fold.OPEN;
    this.unit = unit;
    this.hands = hands;
  }

  /** The cloth of plain plies: without flaws and wishes. */
  Cloth cloth() {
    return cloth;
  }

  /** What the cutter wishes of the markers that are cut. */
  Wishes wishes() {
    return wishes;
  }

  /** How many pieces one garment of each size has of this cloth. */
  int pieces(List<String> sizes) {
    return sizes.stream().mapToInt(size -> lay(SizeMix.one(size)).wanted().size()).sum();
  }

  /** The sizes of which something is cut from this cloth. */
  Set<String> cut(List<String> sizes) {
    return sizes.stream()
        .filter(size -> !lay(SizeMix.one(size)).wanted().isEmpty())
        .collect(Collectors.toSet());
  }

  /** What has no room on the cloth, with the width that is enough for all sizes. */
  Optional<Problem> noRoom(List<String> sizes) {
    Map<String, Integer> each = new LinkedHashMap<>();
    sizes.forEach(size -> each.put(size, 1));
    return NoRoom.foreseen(lay(new SizeMix(each)), List.of(fold), unit);
  }

  /** Whether plies lie in twos that a marker cuts together. */
  boolean liesDouble() {
    return fold != Fold.OPEN;
  }

  /** What the order's markers may come to by their area, at a usual utilisation of open cloth. */
  AreaLengths estimate(List<String> sizes) {
    Map<String, AreaLengths.Garment> bySize = new LinkedHashMap<>();
    for (String size : sizes) {
      Lay one = lay(SizeMix.one(size));
      double longest =
          one.wanted().stream()
              .mapToDouble(w -> w.cut().cutting().box().length())
              .max()
              .orElseThrow(() -> nothingToCut(size));
      bySize.put(size, new AreaLengths.Garment(one.wantedAreaMm2(), longest));
    }
    return new AreaLengths(
        bySize,
        cloth.usableWidthMm() * (spreading.halfSets() ? 2 : 1),
        AreaLengths.USUAL_UTILISATION);
  }

  /** The same corrected by how full a short search makes a marker. */
  AreaLengths probed(AreaLengths estimate, SizeMix mix, Request request) {
    return estimate.at(
        estimate.areaMm2(mix) / (estimate.widthMm() * marker(mix, request).lengthMm()));
  }

  private InputException nothingToCut(String size) {
    return new InputException(
        Problem.of(
            "no piece of size " + size + " is cut from cloth " + cloth.name(),
            "Name another cloth with cloth: in the order"));
  }

  Lay lay(SizeMix mix) {
    return lay(mix, cloth);
  }

  /** The lay of a mix on cloth that is wished something of. */
  Lay lay(SizeMix mix, Wishes wished) {
    return lay(mix, cloth.wishing(wished));
  }

  private Lay lay(SizeMix mix, Cloth of) {
    Job garments = job.withGarments(mix.garments());
    return JobLays.of(garments, of, 1, this::cutPieces).of(new Scope.Garments(mix.garments()));
  }

  /** Cut once: every mix of an order is laid, joined and compared many times. */
  private List<CutPiece> cutPieces(String size) {
    return cutBySize.computeIfAbsent(size, s -> JobLays.cutPieces(job, s, cloth));
  }

  /** How bindings become strips, one sentence each. */
  List<String> bindings(SizeMix mix) {
    return JobLays.bindings(job.withGarments(mix.garments()), cloth, unit);
  }

  /** The shortest found so far, which plans are made with. */
  Map<SizeMix, Marker> made() {
    return made;
  }

  /** Why a marker that was made does not go on the table. */
  Problem tooLong(SizeMix mix, Limits limits) {
    return Problem.of(
        "cloth %s: the marker of %s is %s long with its end loss, but the table only %s"
            .formatted(
                cloth.name(),
                mix,
                new Length(made.get(mix).lengthMm() + limits.endLossMm()).show(unit),
                new Length(limits.tableMm()).show(unit)),
        "Use a longer table, or leave out what is too long");
  }

  /** What is known of the lengths of markers by now. */
  MeasuredLengths measured(MarkerLengths estimate, MeasuredLengths.Unmade unmade) {
    Map<SizeMix, Double> lengths = new LinkedHashMap<>();
    made.forEach((mix, marker) -> lengths.put(mix, marker.lengthMm()));
    return new MeasuredLengths(estimate, lengths, this::nextMm, unmade);
  }

  /** Where another marker may begin behind one of a length, mm. */
  private double nextMm(double lengthMm) {
    return cloth.wholeRepeatsMm(lengthMm + cloth.gapMm());
  }

  boolean has(SizeMix mix) {
    return made.containsKey(mix);
  }

  /**
   * Makes markers, sharing the effort by how many garments they hold.
   *
   * @param request with the effort for all of them
   */
  void make(List<SizeMix> mixes, Request request) {
    Map<SizeMix, Double> garments = new LinkedHashMap<>();
    mixes.forEach(mix -> garments.put(mix, (double) mix.count()));
    search(garments, request, effort -> true);
  }

  /** Makes markers in a moment each, beyond any effort. */
  void makeBriefly(List<SizeMix> mixes, Request request) {
    mixes.forEach(mix -> keep(mix, marker(mix, brief(request))));
    MixesJoined.shorten(made, this::lay, this::nextMm);
  }

  /** Makes a marker of those that are made, end to end; false if they do not make it. */
  boolean join(SizeMix mix) {
    Optional<Marker> row =
        MixesJoined.of(mix, made, Double.POSITIVE_INFINITY, this::lay, this::nextMm);
    row.ifPresent(marker -> made.put(mix, marker));
    return row.isPresent();
  }

  /**
   * Searches again for markers that are made, in another way, and keeps what is shorter.
   *
   * @param weights what each is worth, by the cloth that is spread for it
   * @param request with the effort for all of them
   */
  void polish(Map<SizeMix, Double> weights, Request request) {
    search(
        weights,
        request.with(request.seed().child(1)),
        effort -> !request.stop().wanted() && !effort.over());
  }

  /**
   * Keeps the shortest that is found of each, one after another or as many at once as there are
   * hands.
   *
   * @param worthwhile whether another is searched for
   */
  private void search(
      Map<SizeMix, Double> weights, Request request, Predicate<Spending> worthwhile) {
    double all = weights.values().stream().mapToDouble(w -> w).sum();
    int atOnce = Math.min(hands.atOnce(request), weights.size());
    if (atOnce > 1) {
      double times = request.effort().repeats() ? 1 : atOnce;
      List<SizeMix> mixes = List.copyOf(weights.keySet());
      List<Marker> found =
          SideBySide.each(
              mixes,
              atOnce,
              mix -> marker(mix, request.part(Math.min(1, times * weights.get(mix) / all))));
      for (int i = 0; i < mixes.size(); i++) {
        keep(mixes.get(i), found.get(i));
      }
    } else {
      Spending effort = new Spending(request.effort());
      weights.forEach(
          (mix, weight) -> {
            if (worthwhile.test(effort)) {
              keep(mix, marker(mix, request.with(effort.take(weight / all))));
            }
          });
    }
    MixesJoined.shorten(made, this::lay, this::nextMm);
  }

  /** Keeps a marker if it is shorter than the one that is made. */
  void keep(SizeMix mix, Marker found) {
    made.merge(mix, found, (a, b) -> b.lengthMm() < a.lengthMm() ? b : a);
  }

  private Marker marker(SizeMix mix, Request request) {
    Optional<Marker> found =
        request.stop().wanted() ? Optional.empty() : Optional.of(searched(mix, request));
    // What a stop breaks off at once lies piece after piece; a moment more makes it far shorter.
    return request.stop().wanted()
        ? shorter(found, searched(mix, brief(request).with(new Stop())))
        : found.orElseThrow();
  }

  /** The same with so little effort that whoever has stopped it hardly waits. */
  private static Request brief(Request request) {
    Effort steps = Effort.ofSteps(BRIEF_STEPS);
    return request.with(
        request.effort().repeats() ? steps : steps.within(Effort.ofSeconds(BRIEF_SECONDS)));
  }

  private static Marker shorter(Optional<Marker> one, Marker other) {
    return one.filter(marker -> marker.lengthMm() <= other.lengthMm()).orElse(other);
  }

  private Marker searched(SizeMix mix, Request request) {
    Lay lay = lay(mix);
    Tried tried = nest(lay, mix, request);
    return Check.passed(
        tried
            .marker()
            .orElseThrow(
                () ->
                    new InputException(
                        NoRoom.problem(lay, List.of(fold), tried.noRoom().orElseThrow(), unit))));
  }

  /** Searches for a marker once. */
  Tried nest(Lay lay, SizeMix mix, Request request) {
    Progress named =
        news ->
            request
                .progress()
                .ofSeveral()
                .hear(news instanceof Progress.Shorter s ? s.of(mix.toString()) : news);
    return hands.nest(lay, List.of(fold), request.with(named)).get(0);
  }
}
