package ellwand.nest;

import ellwand.cloth.Band;
import ellwand.cloth.Cloth;
import ellwand.cloth.Direction;
import ellwand.cloth.KeepOut;
import ellwand.cloth.LaidCloth;
import ellwand.geometry.Box;
import ellwand.geometry.Outline;
import ellwand.geometry.Region;
import ellwand.lay.Heading;
import ellwand.lay.Lay;
import ellwand.nest.kernel.Form;
import ellwand.nest.kernel.NoFit;
import ellwand.nest.kernel.Obstacle;
import ellwand.nest.kernel.Search;
import ellwand.nest.kernel.Shape;
import ellwand.nest.kernel.Strip;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.DoubleStream;

/**
 * What is to be placed on one stretch, in the kernel's terms.
 *
 * @param seats one for each copy
 * @param poses for each request the ways it may lie, in the order of the kernel's forms
 * @param strip the same for the kernel; empty where there is nothing to place
 * @param search made ready to place them; empty where there is nothing to place
 */
record StretchTask(
    List<Seat> seats, List<List<Pose>> poses, Optional<Strip> strip, Optional<Search> search) {

  /** A request and its band. */
  record Seat(Request request, Band band) {}

  static StretchTask of(
      Cloth cloth, LaidCloth laid, Phases phases, Decision decision, int stretch, NoFit noFit) {
    List<Seat> seats = new ArrayList<>();
    for (Station station : decision.stations()) {
      if (station.stretch() == stretch) {
        station.requests().forEach(r -> seats.add(new Seat(r, station.band())));
      }
    }
    Builder builder = new Builder(cloth.gapMm(), stretch > 0);
    for (Seat seat : seats) {
      builder.add(ways(cloth, phases, decision, seat));
    }
    if (stretch == 0) {
      KeepOut.of(cloth, laid).forEach(keepOut -> builder.bar(keepOut.outline()));
    }
    Optional<Strip> strip = builder.strip();
    return new StretchTask(seats, builder.poses, strip, strip.map(s -> new Search(s, noFit)));
  }

  /** Whether everything has a place with these choices. */
  static boolean possible(Cloth cloth, Phases phases, Decision decision) {
    return decision.stations().stream()
        .allMatch(
            station ->
                station.requests().stream()
                    .map(request -> new Seat(request, station.band()))
                    .noneMatch(seat -> ways(cloth, phases, decision, seat).isEmpty()));
  }

  /** Heading by heading, since two that look alike may lie differently in a repeat. */
  private static List<Way> ways(Cloth cloth, Phases phases, Decision decision, Seat seat) {
    Request request = seat.request();
    Set<Heading> headings = headings(Lay.direction(cloth, request.wanted().cut()), decision, seat);
    if (cloth.repeat().isEmpty()) {
      return Pose.of(request, seat.band(), headings, cloth.grainToleranceDegrees()).stream()
          .map(Way::anywhere)
          .toList();
    }
    return headings.stream()
        .flatMap(heading -> Pose.of(request, seat.band(), EnumSet.of(heading)).stream())
        .flatMap(pose -> phases.ways(request, pose, seat.band(), decision.phases()).stream())
        .toList();
  }

  private static Set<Heading> headings(Direction direction, Decision decision, Seat seat) {
    return switch (direction) {
      case ANY_WAY -> EnumSet.allOf(Heading.class);
      case ONE_WAY -> EnumSet.of(Heading.UP);
      case ONE_WAY_PER_GARMENT ->
          EnumSet.of(decision.headings().get(seat.request().wanted().garment()));
    };
  }

  /**
   * Collects shapes and forms; equal outlines become one shape, equal requests share their forms.
   */
  private static final class Builder {

    private final double gapMm;
    private final double beforeMm;
    private final Map<Outline, Integer> indices = new HashMap<>();
    private final List<Shape> shapes = new ArrayList<>();
    private final Map<List<Way>, List<Form>> formsOf = new HashMap<>();
    private final List<List<Pose>> poses = new ArrayList<>();
    private final List<List<Form>> copies = new ArrayList<>();
    private final List<Obstacle> obstacles = new ArrayList<>();

    /**
     * @param follows whether another stretch lies before this one, to whose pieces the gap applies
     */
    Builder(double gapMm, boolean follows) {
      this.gapMm = gapMm;
      this.beforeMm = follows ? gapMm : 0;
    }

    void add(List<Way> ways) {
      poses.add(ways.stream().map(Way::pose).toList());
      copies.add(formsOf.computeIfAbsent(ways, w -> w.stream().map(this::form).toList()));
    }

    private Form form(Way way) {
      Outline outline = way.pose().outline();
      Box box = outline.box();
      return new Form(
          indices.computeIfAbsent(outline, this::shape),
          way.lowY(),
          way.highY(),
          beforeMm - box.minX(),
          box.maxX(),
          way.x(),
          way.y());
    }

    private int shape(Outline outline) {
      return add(grown(outline));
    }

    private int add(Outline outline) {
      shapes.add(
          new Shape(
              outline.points().stream()
                  .flatMapToDouble(p -> DoubleStream.of(p.x(), p.y()))
                  .toArray()));
      return shapes.size() - 1;
    }

    /** No copy may lie there; half the gap, which copies carry about them, is kept as well. */
    void bar(Outline keepOut) {
      obstacles.add(new Obstacle(add(keepOut), 0, 0));
    }

    /** Half the gap round each piece keeps the whole gap between any two. */
    private Outline grown(Outline outline) {
      return gapMm == 0 ? outline : Region.of(outline).grownMitred(gapMm / 2).shells().get(0);
    }

    /** Any length is allowed: what is found too long tells how much cloth is missing. */
    Optional<Strip> strip() {
      return copies.isEmpty()
          ? Optional.empty()
          : Optional.of(new Strip(shapes, copies, obstacles, Double.POSITIVE_INFINITY));
    }
  }
}
