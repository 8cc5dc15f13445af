package ellwand.nest.repeat;

import ellwand.cloth.Band;
import ellwand.cloth.Cloth;
import ellwand.cloth.LaidCloth;
import ellwand.cloth.Ply;
import ellwand.cloth.Repeat;
import ellwand.cloth.Zone;
import ellwand.cutting.CutPiece;
import ellwand.cutting.CutPiece.Stroke;
import ellwand.geometry.Box;
import ellwand.geometry.Motion;
import ellwand.geometry.Point;
import ellwand.lay.Form;
import ellwand.lay.Heading;
import ellwand.lay.Lay;
import ellwand.lay.Wanted;
import ellwand.nest.kernel.Lattice;
import ellwand.nest.pose.Placement;
import ellwand.nest.pose.Pose;
import ellwand.nest.pose.Way;
import ellwand.nest.repeat.Free.Axis;
import ellwand.nest.repeat.MarkPlaces.Member;
import ellwand.pattern.Asks;
import ellwand.pattern.Cut.How;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Turns what pieces ask of the cloth's repeat into the places that the kernel may give them. */
public final class Phases {

  /** Parts of a repeat by which a free choice is tried. */
  private static final int PARTS = 4;

  /** Room that rounding may take where a piece can lie on one line only, mm. */
  private static final double EXACT_MM = 1e-6;

  private final LaidCloth laid;
  private final Cloth cloth;
  private final Optional<Repeat> repeat;
  private final Map<String, Map<Axis, MarkPlaces>> bySize = new LinkedHashMap<>();
  private final Map<Free, List<Double>> candidates = new LinkedHashMap<>();

  /**
   * @throws ellwand.problem.InputException if pieces cannot match at all their marks
   */
  public Phases(Lay lay, LaidCloth laid) {
    this.laid = laid;
    cloth = lay.cloth();
    repeat = cloth.repeatLaid(laid.fold());
    if (repeat.isEmpty()) {
      return;
    }
    for (Wanted w : lay.wanted()) {
      Map<Axis, MarkPlaces> places =
          bySize.computeIfAbsent(w.size(), size -> MarkPlaces.of(lay, repeat.get(), size));
      for (Axis axis : Axis.values()) {
        for (int group = 0; group < places.get(axis).groups(); group++) {
          Free free = new Free(w.garment(), w.size(), axis, group);
          candidates.computeIfAbsent(free, f -> candidates(places.get(f.axis()), f));
        }
      }
    }
  }

  /** What may be chosen, each with the values worth a trial, the likeliest first. */
  public Map<Free, List<Double>> candidates() {
    return candidates;
  }

  /** The likeliest value of each choice. */
  public Map<Free, Double> first() {
    Map<Free, Double> first = new HashMap<>();
    candidates.forEach((free, values) -> first.put(free, values.get(0)));
    return first;
  }

  /** Pieces on a fold where it is, the others flush with the cut end or the edge, or between. */
  private List<Double> candidates(MarkPlaces places, Free free) {
    if (!places.only(free.group()).isEmpty()) {
      return places.only(free.group());
    }
    List<Member> group =
        places.members(free.group()).stream()
            .sorted(Comparator.comparingDouble(m -> -m.wanted().cut().cutting().area()))
            .toList();
    List<Double> values = new ArrayList<>();
    for (Member member : group) {
      Optional<Stroke> fold = member.wanted().cut().fold();
      if (free.axis() == Axis.ACROSS && fold.isPresent()) {
        double y = member.place().mark().y() - fold.get().from().y();
        foldPhases().forEach(phase -> values.add(chosen(member, y + phase)));
      }
    }
    for (Member member : group) {
      flush(member, free.axis(), places.periodMm())
          .forEach(phase -> values.add(chosen(member, phase)));
    }
    for (int part = 1; part < PARTS; part++) {
      values.add(values.get(0) + places.periodMm() * part / PARTS);
    }
    return values;
  }

  /** What has to be chosen for a mark to lie so far from the middle of a bar, mm. */
  private static double chosen(Member member, double phase) {
    return (phase - member.place().phaseMm()) * member.place().sign();
  }

  /** Where a mark lies when its piece lies flush, from the middle of a bar, mm. */
  private List<Double> flush(Member member, Axis axis, double period) {
    CutPiece cut = member.wanted().cut();
    Point mark = member.place().mark();
    Box box = (cut.fold().isPresent() ? cut.opened() : cut).cutting().box();
    if (axis == Axis.ALONG) {
      return List.of(mark.x() - box.minX() - start(axis));
    }
    int sign = member.turnedOver() ? -1 : 1;
    double above = member.turnedOver() ? box.maxY() - mark.y() : mark.y() - box.minY();
    List<Double> phases = new ArrayList<>();
    phases.add(sign * (above - start(axis)));
    for (Band band : laid.bands()) {
      double spare = band.widthMm() - box.width();
      // Elsewhere it has all places of the repeat.
      if (spare >= 0 && spare < period) {
        double low = seen(band).open(band.lowY());
        phases.add(sign * (low + above - start(axis)));
        phases.add(sign * (low + spare + above - start(axis)));
      }
    }
    return phases;
  }

  /** Where folds of the cloth lie from the middle of a bar; there, if it is not folded. */
  private List<Double> foldPhases() {
    List<Double> phases =
        laid.bands().stream()
            .filter(
                b ->
                    b.foldEdges().contains(Zone.Side.LOW_Y)
                        || b.foldEdges().contains(Zone.Side.HIGH_Y))
            .map(
                b ->
                    b.foldEdges().contains(Zone.Side.LOW_Y)
                        ? seen(b).open(b.lowY())
                        : seen(b).open(b.highY()))
            .map(
                mm ->
                    Math.abs(
                        Math.IEEEremainder(
                            mm - start(Axis.ACROSS), repeat.orElseThrow().acrossMm())))
            .distinct()
            .toList();
    return phases.isEmpty() ? List.of(0.0) : phases;
  }

  /** Middle of a bar, from the cut end or from the first cuttable line, mm. */
  private double start(Axis axis) {
    return axis == Axis.ALONG
        ? repeat.orElseThrow().startAlongMm()
        : repeat.orElseThrow().startAcrossMm() - cloth.selvedgeMm();
  }

  /**
   * The places that a pose may have; none where its band has none that serves.
   *
   * @param fromX where the stretch that it lies on begins on the table, mm
   */
  public List<Way> ways(Placement placement, Pose pose, double fromX, Map<Free, Double> chosen) {
    if (repeat.isEmpty()) {
      return List.of(Way.anywhere(pose));
    }
    CutPiece cut = placement.wanted().cut();
    Optional<Asks.Place> border = cut.piece().asks().place().filter(Asks.Place::onBorder);
    if (border.isPresent() && repeat.get().borderMm().isPresent()) {
      return onBorder(placement, pose, cut.marks().get(border.get().mark()));
    }
    Optional<Lattice> x = lattice(Axis.ALONG, placement, pose, fromX, chosen);
    Optional<Lattice> y = lattice(Axis.ACROSS, placement, pose, fromX, chosen);
    if (matched(placement) && !alongWarp(pose)) {
      return List.of();
    }
    if (placement.twice() && !twinMatches(placement, pose, x, y)) {
      return List.of();
    }
    List<Way> ways = new ArrayList<>();
    if (repeat.get().halfDrop() && x.isPresent() && y.isPresent()) {
      double half = x.get().step() / 2;
      double column = y.get().step();
      add(ways, pose, x.get(), new Lattice(2 * column, y.get().offset()));
      add(
          ways,
          pose,
          new Lattice(x.get().step(), x.get().offset() + half),
          new Lattice(2 * column, y.get().offset() + column));
    } else {
      add(ways, pose, x.orElse(Lattice.FREE), y.orElse(Lattice.FREE));
    }
    return ways;
  }

  private boolean matched(Placement placement) {
    String piece = placement.wanted().cut().name();
    return bySize.get(placement.wanted().size()).values().stream()
        .anyMatch(places -> places.matched(piece));
  }

  /**
   * Whether what is asked is met on both plies: the twin is turned over, so that the middle has to
   * lie along the cloth, and on a mirror line of the repeat if anything is asked across it.
   */
  private boolean twinMatches(
      Placement placement, Pose pose, Optional<Lattice> x, Optional<Lattice> y) {
    Ply twin = pose.band().layers().get(0);
    if (twin.mirrored() == twin.backwards() || x.isEmpty() && y.isEmpty()) {
      return true;
    }
    if (y.isEmpty() || !alongWarp(pose)) {
      return alongWarp(pose);
    }
    Wanted wanted = placement.wanted();
    CutPiece cut = wanted.cut();
    Point middle = cut.fold().map(Stroke::from).orElseGet(() -> cut.cutting().box().centre());
    double from =
        seen(pose.band()).open(pose.motion().apply(middle).y() + y.get().offset())
            - start(Axis.ACROSS);
    double same = bySize.get(wanted.size()).get(Axis.ACROSS).sameAfterMm();
    return Math.abs(Math.IEEEremainder(2 * from, same)) <= EXACT_MM;
  }

  private static boolean alongWarp(Pose pose) {
    return pose.motion().turnDegrees() % 180 == 0;
  }

  private Optional<Lattice> lattice(
      Axis axis, Placement placement, Pose pose, double fromX, Map<Free, Double> chosen) {
    Wanted wanted = placement.wanted();
    MarkPlaces places = bySize.get(wanted.size()).get(axis);
    return places
        .of(wanted, pose.motion().flipped() != seen(pose.band()).mirrored())
        .map(
            place -> {
              double phase =
                  place.phaseMm()
                      + place.sign()
                          * place
                              .group()
                              .map(
                                  g ->
                                      chosen.get(
                                          new Free(wanted.garment(), wanted.size(), axis, g)))
                              .orElse(0.0);
              Point mark = pose.motion().apply(place.mark());
              return new Lattice(
                  places.periodMm(),
                  axis == Axis.ALONG
                      ? start(axis) - fromX + headingSign(pose) * phase - mark.x()
                      : seen(pose.band()).laid(start(axis) + leftSign(pose) * phase) - mark.y());
            });
  }

  /** The ply that is seen as the piece is drawn, right side up if there is one. */
  private static Ply seen(Band band) {
    return band.layers().get(band.layers().size() - 1);
  }

  private static int headingSign(Pose pose) {
    return pose.heading() == Heading.UP ? 1 : -1;
  }

  /** Whether what is drawn to the left lies to the left on the open cloth, or to the right. */
  private static int leftSign(Pose pose) {
    Motion turn = pose.motion().unshifted();
    double left = turn.apply(new Point(0, 1)).y() - turn.apply(new Point(0, 0)).y();
    int sign = left < -EXACT_MM ? -1 : 1;
    return seen(pose.band()).mirrored() ? -sign : sign;
  }

  private static void add(List<Way> ways, Pose pose, Lattice along, Lattice y) {
    double fixed = pose.fixedX().orElse(0);
    if (pose.fixedX().isPresent()
        && along.step() > 0
        && Math.abs(Math.IEEEremainder(fixed - along.offset(), along.step())) > EXACT_MM) {
      return;
    }
    Lattice x = pose.fixedX().isPresent() ? Way.only(fixed) : along;
    if (y.step() == 0) {
      ways.add(new Way(pose, x, y, pose.lowY(), pose.highY()));
      return;
    }
    double first =
        y.offset() + y.step() * Math.ceil((pose.lowY() - y.offset() - EXACT_MM) / y.step());
    if (first > pose.highY() + EXACT_MM) {
      return;
    }
    boolean oneLine = pose.highY() - pose.lowY() <= EXACT_MM;
    ways.add(
        oneLine
            ? new Way(pose, x, Lattice.FREE, pose.lowY(), pose.highY())
            : new Way(pose, x, y, Math.min(first, pose.lowY()), Math.max(first, pose.highY())));
  }

  /** Both of a pair lie on it only where the plies lie alike. */
  private List<Way> onBorder(Placement placement, Pose pose, Point mark) {
    Band band = pose.band();
    boolean alike = band.layers().stream().distinct().count() == 1;
    if (!alike && (placement.form() == Form.PAIR || placement.form() == Form.HALF)) {
      return List.of();
    }
    double line = repeat.orElseThrow().borderMm().orElseThrow() - cloth.selvedgeMm();
    Ply ply =
        band.layers().stream()
            .filter(p -> pose.motion().flipped() == (p.mirrored() != p.backwards()))
            .findFirst()
            .filter(p -> placement.wanted().how() == How.WHOLE)
            .orElse(seen(band));
    double y = ply.laid(line) - pose.motion().apply(mark).y();
    boolean beyond = ply.open(pose.outline().box().centre().y() + y) > line;
    return beyond && y >= pose.lowY() - EXACT_MM && y <= pose.highY() + EXACT_MM
        ? List.of(new Way(pose, Lattice.FREE, Lattice.FREE, y, y))
        : List.of();
  }
}
