package ellwand.nest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.cloth.Cloth;
import ellwand.cloth.Direction;
import ellwand.cloth.Fold;
import ellwand.cloth.Goods;
import ellwand.cloth.Laying;
import ellwand.cloth.Selling;
import ellwand.cutting.CutPiece;
import ellwand.cutting.Cutter;
import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.lay.Copy;
import ellwand.lay.Form;
import ellwand.lay.Heading;
import ellwand.lay.Lay;
import ellwand.lay.Marker;
import ellwand.lay.Wanted;
import ellwand.nest.pose.NoRoomException;
import ellwand.pattern.Cut;
import ellwand.pattern.Cut.How;
import ellwand.pattern.Edge;
import ellwand.pattern.Grain;
import ellwand.pattern.Piece;
import ellwand.rule.Check;
import ellwand.work.Effort;
import ellwand.work.Progress;
import ellwand.work.Request;
import ellwand.work.Seed;
import ellwand.work.Stop;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Markers of small lays whose best answer can be worked out by hand, and of random ones. */
public class NesterTest {

  private static final Effort SHORT = Effort.ofSteps(60);

  private static Marker nest(Lay lay, Fold fold, Effort effort) {
    return Nester.nest(lay, fold, Request.of(effort, new Seed(1)));
  }

  public static Cloth cloth(double width, double gap, Direction direction, Fold fold) {
    return new Cloth(
        "main", Goods.wide(width), Laying.in(fold).heading(direction).gap(gap), Selling.USUAL);
  }

  public static Lay lay(Cloth cloth, Wanted... wanted) {
    return new Lay("test", cloth, Arrays.asList(wanted));
  }

  public static Wanted wanted(CutPiece piece, int garment) {
    return new Wanted(piece, "one", garment, piece.piece().cuts().get(0).how());
  }

  /** A piece without allowance, its points counter-clockwise, the first edge a fold if cut so. */
  private static CutPiece piece(String name, How how, Grain grain, double... xy) {
    List<Edge> edges = new ArrayList<>();
    int n = xy.length / 2;
    for (int i = 0; i < n; i++) {
      int next = (i + 1) % n;
      edges.add(
          new Edge(
              "edge " + i,
              Path.line(
                  new Point(xy[2 * i], xy[2 * i + 1]), new Point(xy[2 * next], xy[2 * next + 1])),
              0,
              false));
    }
    return Cutter.cut(
        new Piece(
            name,
            edges,
            how == How.FOLD ? Optional.of("edge 0") : Optional.empty(),
            grain,
            List.of(),
            List.of(),
            List.of(new Cut("main", 1, how))),
        1,
        1);
  }

  public static CutPiece rectangle(String name, How how, double length, double width) {
    return piece(name, how, Grain.ALONG, 0, 0, length, 0, length, width, 0, width);
  }

  private static CutPiece wedge(String name, How how) {
    return piece(name, how, Grain.ALONG, 0, 0, 300, 0, 260, 80, 0, 200);
  }

  @Test
  void rectanglesThatFillTheWidthTakeTheirSum() {
    CutPiece band = rectangle("band", How.WHOLE, 100, 300);
    Lay lay =
        lay(
            cloth(600, 0, Direction.ANY_WAY, Fold.OPEN),
            wanted(band, 1),
            wanted(band, 2),
            wanted(band, 3),
            wanted(band, 4));
    assertEquals(200, nest(lay, Fold.OPEN, SHORT).lengthMm(), 0.01);
  }

  @Test
  void aHalfLiesOnTheFoldAndAPairIsOnePlacement() {
    Lay lay =
        lay(
            cloth(1000, 2, Direction.ONE_WAY, Fold.LENGTHWISE),
            wanted(rectangle("back", How.FOLD, 300, 200), 1),
            wanted(wedge("front", How.PAIR), 1));
    Marker marker = nest(lay, Fold.LENGTHWISE, SHORT);
    assertEquals(
        Set.of(Form.HALF, Form.PAIR),
        marker.copies().stream().map(Copy::form).collect(Collectors.toSet()));
    assertEquals(2, marker.copies().size());
    assertEquals(300, marker.lengthMm(), 0.01);
    assertTrue(marker.copies().stream().allMatch(c -> c.heading() == Heading.UP));
  }

  /** 400 wide on 1000 open: the fold gives 500, so a whole of 600 has to go on opened cloth. */
  @Test
  void aWholeTooWideForTheFoldGoesOnTheOpenedStretch() {
    Lay lay =
        lay(
            cloth(1000, 2, Direction.ANY_WAY, Fold.LENGTHWISE),
            wanted(rectangle("back", How.FOLD, 300, 400), 1),
            wanted(rectangle("skirt", How.WHOLE, 250, 600), 1));
    Marker marker = nest(lay, Fold.LENGTHWISE, SHORT);
    assertEquals(2, marker.zones().size());
    assertEquals(300 + 2 + 250, marker.lengthMm(), 0.01);
  }

  /** Beside the half there is room for the whole and its wasted twin; opening takes more cloth. */
  @Test
  void aSmallWholeWastesItsTwinWhereThatTakesLessCloth() {
    Lay lay =
        lay(
            cloth(1010, 2, Direction.ANY_WAY, Fold.LENGTHWISE),
            wanted(rectangle("back", How.FOLD, 300, 300), 1),
            wanted(wedge("tab", How.WHOLE), 1));
    Marker marker = nest(lay, Fold.LENGTHWISE, Effort.ofSteps(200));
    assertEquals(300, marker.lengthMm(), 0.01);
    assertEquals(1, marker.zones().size());
  }

  @Test
  void onASinglePlyAPairIsOneOfEachHand() {
    Lay lay = lay(cloth(700, 0, Direction.ONE_WAY, Fold.OPEN), wanted(wedge("front", How.PAIR), 1));
    Marker marker = nest(lay, Fold.OPEN, SHORT);
    assertEquals(1, marker.copies().stream().filter(c -> c.motion().flipped()).count());
    assertEquals(2, marker.copies().size());
  }

  @Test
  void garmentsThatMayOpposeKeepOneHeadingEach() {
    CutPiece front = wedge("front", How.PAIR);
    CutPiece back = wedge("back", How.WHOLE);
    Lay lay =
        lay(
            cloth(900, 2, Direction.ONE_WAY_PER_GARMENT, Fold.OPEN),
            wanted(front, 1),
            wanted(back, 1),
            wanted(front, 2),
            wanted(back, 2));
    Marker marker = nest(lay, Fold.OPEN, Effort.ofSteps(200));
    for (int garment = 1; garment <= 2; garment++) {
      int number = garment;
      assertEquals(
          1,
          marker.copies().stream()
              .filter(c -> c.garment() == number)
              .map(Copy::heading)
              .distinct()
              .count());
    }
  }

  @Test
  void aPieceWiderThanEveryZoneIsRefused() {
    Lay lay =
        lay(
            cloth(500, 2, Direction.ANY_WAY, Fold.LENGTHWISE),
            wanted(rectangle("cape", How.FOLD, 300, 260), 1));
    NoRoomException e =
        assertThrows(NoRoomException.class, () -> nest(lay, Fold.LENGTHWISE, SHORT));
    assertEquals("cape", e.piece());
    assertEquals(520, e.neededMm(), 0.01);
  }

  @Test
  void stoppedAtOnceItStillHasALegalMarker() {
    Stop stop = new Stop();
    stop.request();
    Lay lay =
        lay(
            cloth(900, 2, Direction.ANY_WAY, Fold.LENGTHWISE),
            wanted(wedge("front", How.PAIR), 1),
            wanted(wedge("tab", How.WHOLE), 1));
    Marker marker =
        Nester.nest(lay, Fold.LENGTHWISE, Request.of(Effort.ofSeconds(60), new Seed(1)).with(stop));
    assertTrue(marker.stoppedEarly());
    assertEquals(List.of(), Check.of(marker));
  }

  @Test
  void whatIsHeardOnlyGetsShorter() {
    List<Double> heard = new ArrayList<>();
    CutPiece front = wedge("front", How.PAIR);
    Lay lay =
        lay(
            cloth(520, 2, Direction.ANY_WAY, Fold.OPEN),
            wanted(front, 1),
            wanted(front, 2),
            wanted(front, 3));
    Marker marker =
        Nester.nest(
            lay,
            Fold.OPEN,
            Request.of(Effort.ofSteps(300), new Seed(1))
                .with(news -> heard.add(((Progress.Shorter) news).clothMm())));
    assertFalse(heard.isEmpty());
    for (int i = 1; i < heard.size(); i++) {
      assertTrue(heard.get(i) < heard.get(i - 1));
    }
    assertEquals(marker.lengthMm(), heard.get(heard.size() - 1), 0.01);
  }

  @Test
  void aListenerHearsLegalMarkersThatGetShorter() {
    List<Marker> heard = new ArrayList<>();
    CutPiece front = wedge("front", How.PAIR);
    Lay lay =
        lay(
            cloth(520, 2, Direction.ANY_WAY, Fold.OPEN),
            wanted(front, 1),
            wanted(front, 2),
            wanted(front, 3));
    Request request = Request.of(Effort.ofSteps(300), new Seed(1));
    Marker alone = Nester.nest(lay, Fold.OPEN, request);
    Marker marker =
        Nester.nest(lay, List.of(Fold.OPEN), request, heard::add).get(0).marker().orElseThrow();
    assertEquals(alone, marker);
    assertEquals(marker, heard.get(heard.size() - 1));
    heard.forEach(better -> assertEquals(List.of(), Check.of(better)));
    for (int i = 1; i < heard.size(); i++) {
      assertTrue(heard.get(i).clothLengthMm() < heard.get(i - 1).clothLengthMm());
    }
  }

  /** Whatever is asked for, the marker keeps every hard rule and is never longer than a row. */
  @Property(tries = 40)
  void randomLaysAreLegal(@ForAll @IntRange(min = 1, max = 100_000) int number) {
    java.util.SplittableRandom dice = new Seed(number).generator();
    Direction direction = Direction.values()[dice.nextInt(Direction.values().length)];
    Fold fold = dice.nextBoolean() ? Fold.OPEN : Fold.LENGTHWISE;
    List<Wanted> wanted = new ArrayList<>();
    double row = 0;
    for (int i = 0; i < 3 + dice.nextInt(4); i++) {
      How how = How.values()[dice.nextInt(How.values().length)];
      Grain grain = how == How.FOLD ? Grain.ALONG : Grain.NAMED.get(dice.nextInt(3));
      double length = 60 + dice.nextDouble() * 300;
      double width = 60 + dice.nextDouble() * 150;
      CutPiece piece =
          piece(
              "piece " + i,
              how,
              grain,
              0,
              0,
              length,
              0,
              length * (0.5 + dice.nextDouble() / 2),
              width,
              0,
              width * (0.4 + dice.nextDouble() * 0.6));
      for (int garment = 1; garment <= 2; garment++) {
        wanted.add(wanted(piece, garment));
        row += 2 * (Math.max(length, width) + 4);
      }
    }
    Cloth cloth = cloth(820, dice.nextInt(3) * 2, direction, fold);
    Marker marker = nest(new Lay("random", cloth, wanted), fold, Effort.ofSteps(40));
    assertEquals(List.of(), Check.of(marker));
    assertTrue(marker.lengthMm() <= row);
  }
}
