package ellwand.nest.stretch;

import ellwand.cloth.Band;
import ellwand.cloth.Cloth;
import ellwand.cloth.Direction;
import ellwand.cloth.KeepOut;
import ellwand.cloth.LaidCloth;
import ellwand.geometry.Box;
import ellwand.geometry.Motion;
import ellwand.geometry.Outline;
import ellwand.geometry.Region;
import ellwand.lay.Heading;
import ellwand.lay.Lay;
import ellwand.nest.kernel.NoFit;
import ellwand.nest.kernel.Obstacle;
import ellwand.nest.kernel.Shape;
import ellwand.nest.kernel.Strip;
import ellwand.nest.kernel.StripForm;
import ellwand.nest.kernel.StripSearch;
import ellwand.nest.pose.Placement;
import ellwand.nest.pose.Pose;
import ellwand.nest.pose.Station;
import ellwand.nest.pose.Way;
import ellwand.nest.repeat.Phases;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/**
 * What is to be placed on one stretch, in the kernel's terms.
 *
 * @param cloth whose stretch it is
 * @param seats one for each copy
 * @param ways for each seat the ways it may lie, in the order of the kernel's forms
 * @param measured whether the cloth has flaws, so that nothing may be shifted along it
 * @param keepOuts flaws in the stretch, counted along from where it begins
 * @param gapMm least distance between two copies
 * @param beforeMm the same from what lies on an earlier stretch, 0 if nothing does
 * @param strip all this for the kernel; empty where there is nothing to place
 * @param search made ready to place them; empty where there is nothing to place
 */
public record StretchTask(
    Cloth cloth,
    List<Seat> seats,
    List<List<Way>> ways,
    boolean measured,
    List<KeepOut> keepOuts,
    double gapMm,
    double beforeMm,
    Optional<Strip> strip,
    Optional<StripSearch> search) {

  /** Farther than any table is long, mm. */
  private static final double FAR_MM = 1e6;

  /** A placement and the bands of the stretch in which it may lie. */
  public record Seat(Placement placement, List<Band> bands) {}

  /**
   * What a decision has on a stretch.
   *
   * @param fromX where the stretch begins on the table, mm; of no account but for flaws and bars
   * @param acrossMm how far from its cut end the cloth is folded or cut across, mm; likewise
   * @param grown with the cloth's gap
   */
  static StretchTask of(
      Cloth cloth,
      LaidCloth laid,
      Phases phases,
      Decision decision,
      int stretch,
      double fromX,
      double acrossMm,
      GrownShapes grown,
      NoFit noFit) {
    List<Seat> seats = new ArrayList<>();
    boolean follows = false;
    for (Station station : decision.stations()) {
      follows |= station.stretch() < stretch;
      if (station.stretch() == stretch) {
        station.placements().forEach(r -> seats.add(new Seat(r, station.bands())));
      }
    }
    double beforeMm = follows ? cloth.gapMm() : 0;
    List<List<Way>> ways = new ArrayList<>();
    seats.forEach(seat -> ways.add(ways(cloth, phases, decision, seat, fromX)));
    List<KeepOut> keepOuts = new ArrayList<>();
    if (!seats.isEmpty() && !cloth.flaws().isEmpty()) {
      Motion toStretch = new Motion(false, 0, -fromX, 0);
      for (Band band : laid.stretches().get(stretch)) {
        double toX = laid.lengths(stretch) > 1 ? acrossMm : FAR_MM;
        for (KeepOut k : KeepOut.of(cloth, band, acrossMm, fromX, toX)) {
          keepOuts.add(new KeepOut(k.zone(), k.flaw(), k.outline().moved(toStretch)));
        }
      }
    }
    return of(cloth, seats, ways, keepOuts, beforeMm, grown, noFit);
  }

  private static StretchTask of(
      Cloth cloth,
      List<Seat> seats,
      List<List<Way>> ways,
      List<KeepOut> keepOuts,
      double beforeMm,
      GrownShapes grown,
      NoFit noFit) {
    Builder builder = new Builder(grown, beforeMm);
    ways.forEach(builder::add);
    keepOuts.forEach(keepOut -> builder.bar(keepOut.outline()));
    Optional<Strip> strip = builder.strip();
    return new StretchTask(
        cloth,
        seats,
        ways,
        !cloth.flaws().isEmpty(),
        keepOuts,
        cloth.gapMm(),
        beforeMm,
        strip,
        strip.map(s -> new StripSearch(s, noFit)));
  }

  /** The same with other ways in which its copies may lie. */
  public StretchTask with(List<List<Way>> other, NoFit noFit) {
    return of(cloth, seats, other, keepOuts, beforeMm, new GrownShapes(gapMm), noFit);
  }

  /** Whether everything has a place with these choices. */
  public static boolean possible(Cloth cloth, Phases phases, Decision decision) {
    return decision.stations().stream()
        .allMatch(
            station ->
                station.placements().stream()
                    .map(placement -> new Seat(placement, station.bands()))
                    .noneMatch(seat -> ways(cloth, phases, decision, seat, 0).isEmpty()));
  }

  /** Half the gap round each piece keeps the whole gap between any two. */
  public static Outline grown(Outline outline, double gapMm) {
    return gapMm == 0 ? outline : Region.of(outline).grownMitred(gapMm / 2).shells().get(0);
  }

  /** Heading by heading, since two that look alike may lie differently in a repeat. */
  private static List<Way> ways(
      Cloth cloth, Phases phases, Decision decision, Seat seat, double fromX) {
    Placement placement = seat.placement();
    Set<Heading> headings =
        headings(Lay.direction(cloth, placement.wanted().cut()), decision, seat);
    if (cloth.repeat().isEmpty()) {
      return seat.bands().stream()
          .flatMap(band -> Pose.of(placement, band, headings).stream())
          .map(Way::anywhere)
          .toList();
    }
    return headings.stream()
        .flatMap(
            heading ->
                seat.bands().stream()
                    .flatMap(
                        band -> Pose.of(placement, band, EnumSet.of(heading), headings).stream()))
        .flatMap(pose -> phases.ways(placement, pose, fromX, decision.phases()).stream())
        .toList();
  }

  private static Set<Heading> headings(Direction direction, Decision decision, Seat seat) {
    return switch (direction) {
      case ANY_WAY -> EnumSet.allOf(Heading.class);
      case ONE_WAY -> EnumSet.of(Heading.UP);
      case ONE_WAY_PER_GARMENT -> {
        Heading heading = decision.headings().get(seat.placement().wanted().garment());
        OptionalInt second = seat.placement().secondGarment();
        yield second.isEmpty() || decision.headings().get(second.getAsInt()) == heading
            ? EnumSet.of(heading)
            : EnumSet.noneOf(Heading.class);
      }
    };
  }

  /**
   * Collects shapes and forms; equal outlines become one shape, equal placements share their forms.
   */
  private static final class Builder {

    private final GrownShapes grown;
    private final double beforeMm;
    private final Map<Outline, Integer> indices = new HashMap<>();
    private final List<Shape> shapes = new ArrayList<>();
    private final Map<List<Way>, List<StripForm>> formsOf = new HashMap<>();
    private final List<List<StripForm>> copies = new ArrayList<>();
    private final List<Obstacle> obstacles = new ArrayList<>();

    Builder(GrownShapes grown, double beforeMm) {
      this.grown = grown;
      this.beforeMm = beforeMm;
    }

    void add(List<Way> ways) {
      copies.add(formsOf.computeIfAbsent(ways, w -> w.stream().map(this::form).toList()));
    }

    private StripForm form(Way way) {
      Outline outline = way.pose().outline();
      Box box = outline.box();
      return new StripForm(
          indices.computeIfAbsent(outline, o -> add(grown.of(o))),
          way.lowY(),
          way.highY(),
          beforeMm - box.minX(),
          box.maxX(),
          way.x(),
          way.y());
    }

    private int add(Shape shape) {
      shapes.add(shape);
      return shapes.size() - 1;
    }

    /** No copy may lie there, but it may touch. */
    void bar(Outline keepOut) {
      obstacles.add(new Obstacle(add(GrownShapes.bare(keepOut)), 0, 0));
    }

    /** Any length is allowed: what is found too long tells how much cloth is missing. */
    Optional<Strip> strip() {
      return copies.isEmpty()
          ? Optional.empty()
          : Optional.of(new Strip(shapes, copies, obstacles, Double.POSITIVE_INFINITY));
    }
  }
}
