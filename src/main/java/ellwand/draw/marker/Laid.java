package ellwand.draw.marker;

import ellwand.cloth.Direction;
import ellwand.cloth.Zone;
import ellwand.cutting.CutPiece;
import ellwand.draw.piece.GrainLine;
import ellwand.geometry.Motion;
import ellwand.geometry.Point;
import ellwand.lay.Copy;
import ellwand.lay.Form;
import ellwand.lay.Heading;
import ellwand.lay.Marker;
import ellwand.lay.Wanted;
import ellwand.pattern.Cut;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * One copy where it lies.
 *
 * @param number from 1, counted from the cut end, the same in the drawing and in the tables
 * @param cut all its lines in place
 * @param how it is wanted
 * @param grain its grain line in place
 * @param start what the marker begins at: cut end, or fold
 * @param marks its marks in place, on both sides of an opened half
 */
record Laid(
    int number,
    Copy copy,
    CutPiece cut,
    Cut.How how,
    Zone zone,
    GrainLine grain,
    String start,
    List<Point> marks) {

  /** All copies of a marker, numbered zone by zone and from the cut end. */
  static List<Laid> of(Marker marker) {
    List<Copy> sorted = new ArrayList<>(marker.copies());
    List<String> zones = marker.zones().stream().map(Zone::id).toList();
    sorted.sort(
        Comparator.<Copy>comparingInt(c -> zones.indexOf(c.zone()))
            .thenComparingLong(c -> Math.round(c.outline().box().minX()))
            .thenComparingDouble(c -> c.outline().box().minY()));
    List<Laid> laid = new ArrayList<>();
    Map<CutPiece, Map<Form, Lines>> lines = new IdentityHashMap<>();
    for (Copy copy : sorted) {
      Wanted wanted = wanted(marker, copy);
      Lines own =
          lines
              .computeIfAbsent(wanted.cut(), cut -> new EnumMap<>(Form.class))
              .computeIfAbsent(copy.form(), form -> Lines.of(form.drawn(wanted.cut())));
      laid.add(
          new Laid(
              laid.size() + 1,
              copy,
              own.drawn.moved(copy.motion()),
              wanted.how(),
              marker.zone(copy.zone()),
              grain(own, copy),
              ClothWords.start(marker),
              marks(wanted.cut(), copy)));
    }
    return List.copyOf(laid);
  }

  private static List<Point> marks(CutPiece cut, Copy copy) {
    Stream<Point> marks = cut.marks().values().stream();
    if (cut.fold().isPresent() && (copy.form() == Form.OPENED || copy.form() == Form.PAIR)) {
      CutPiece.Stroke fold = cut.fold().get();
      marks = marks.flatMap(p -> Stream.of(p, p.mirrored(fold.from(), fold.to())));
    }
    return marks
        .map(copy.motion()::apply)
        .sorted(Comparator.comparingDouble(Point::x).thenComparingDouble(Point::y))
        .toList();
  }

  private static Wanted wanted(Marker marker, Copy copy) {
    return marker
        .lay()
        .wantedBy(copy)
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "nothing in the lay is called " + copy.piece() + " in size " + copy.size()));
  }

  /** What all copies of a piece have in common that lie in one form. */
  private record Lines(CutPiece drawn, GrainLine grain) {

    static Lines of(CutPiece drawn) {
      return new Lines(drawn, GrainLine.of(drawn));
    }
  }

  private static GrainLine grain(Lines own, Copy copy) {
    CutPiece drawn = own.drawn;
    GrainLine line = own.grain.moved(copy.motion());
    if (!drawn.piece().grain().anywhere() && Math.abs(line.towards().x()) > 0.9) {
      return line;
    }
    // Laid across or on the bias: the warp runs otherwise than the drawn grain line.
    Motion lean = new Motion(false, leanDegrees(drawn, copy), 0, 0);
    Point up = new Point(copy.heading() == Heading.UP ? 1 : -1, 0);
    return new GrainLine(line.through(), lean.apply(up));
  }

  private static double leanDegrees(CutPiece drawn, Copy copy) {
    Motion motion = copy.motion();
    return drawn.piece().grain().leanDegrees(motion.turnDegrees(), motion.flipped());
  }

  /** How far it leans off its grain, degrees counter-clockwise. */
  double leanDegrees() {
    return leanDegrees(cut, copy);
  }

  String piece() {
    return copy.piece();
  }

  /** Whom it is cut for, in words. */
  String garments() {
    return copy.secondGarment().isPresent()
        ? "garments " + copy.garment() + " and " + copy.secondGarment().getAsInt()
        : "garment " + copy.garment();
  }

  /** What the cutter gets from this placement. */
  String form() {
    return switch (copy.form()) {
      case HALF -> "on the fold";
      case OPENED -> zone.plies() == 2 ? "opened out, cuts 2, one is spare" : "opened out";
      case PAIR ->
          how == Cut.How.FOLD
              ? "opened out, cuts 2"
              : copy.secondGarment().isPresent() ? "cuts 2" : "pair, cuts 2";
      case WHOLE ->
          zone.plies() == 2
              ? "cuts 2, one is spare"
              : how == Cut.How.PAIR
                  ? copy.motion().flipped() ? "pair, turned over" : "pair, as drawn"
                  : "cut 1";
    };
  }

  /** Which way the top points, in words. */
  String heading() {
    return copy.heading() == Heading.UP ? "away from " + start : "to " + start;
  }

  /** All there is to say about it, for those who point at it. */
  String title(String style, boolean manyGarments) {
    return number
        + " "
        + piece()
        + ", "
        + style
        + ", size "
        + copy.size()
        + (manyGarments ? ", " + garments() : "")
        + ", "
        + form()
        + ", top "
        + heading();
  }

  /** Whether the drawn arrow has one head. */
  static boolean oneHeaded(Direction direction) {
    return direction != Direction.ANY_WAY;
  }
}
