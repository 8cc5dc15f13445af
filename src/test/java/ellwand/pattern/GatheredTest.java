package ellwand.pattern;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import ellwand.geometry.Box;
import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.problem.InputException;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GatheredTest {

  private static Gathered skirt(double joined, double fullness, Cut... cuts) {
    return new Gathered(
        "skirt",
        joined,
        fullness,
        400,
        new Gathered.Seams(10, 40, 20, true),
        Grain.ALONG,
        List.of(cuts));
  }

  @ParameterizedTest
  // 10 in of ruffle from 15, 20, 30 in at 1.5, 2, 3 to 1: ruffle gauge page, instructables.com.
  @CsvSource({"1.5, 15", "2, 20", "3, 30"})
  void finishedWidthIsJoinedLengthTimesFullness(double fullness, double inches) {
    assertEquals(inches * 25.4, skirt(10 * 25.4, fullness).finishedWidthMm(), 1e-9);
  }

  @Test
  void itIsARectangleWithItsLengthAlongTheGrain() {
    Piece piece = skirt(600, 2, new Cut("main", 1, Cut.How.WHOLE)).piece();
    assertEquals(new Box(0, 0, 400, 1200), box(piece));
    assertEquals(
        List.of("other side 20.0", "top 10.0", "side 20.0", "hem 40.0"),
        piece.edges().stream().map(e -> e.name() + " " + e.allowanceMm()).toList());
    assertEquals(true, piece.edge("hem").turnedBack());
    assertEquals(1200, piece.edge("top").line().length(), 1e-9);
    assertEquals(400, piece.edge("top").line().start().x());
  }

  @Test
  void onTheFoldItIsHalfARectangle() {
    Piece piece = skirt(600, 2, new Cut("main", 1, Cut.How.FOLD)).piece();
    assertEquals(new Box(0, 0, 400, 600), box(piece));
    assertEquals(Optional.of("fold"), piece.fold());
    assertEquals(0, piece.edge("fold").allowanceMm());
  }

  private static Box box(Piece piece) {
    List<Point> points = new ArrayList<>();
    piece.edges().forEach(e -> points.add(e.line().start()));
    return Box.around(points);
  }

  @Test
  void widerThanTheClothItIsCutInPanels() {
    Cut cut = new Cut("main", 1, Cut.How.WHOLE);
    // 204 cm finished and 2 cm at each side; halves are 102 + 4 cm.
    Panels panels = skirt(1020, 2, cut).panels(cut, 1460);
    assertEquals(2, panels.count());
    assertEquals(1060, panels.panelMm(), 1e-9);
    assertEquals(List.of(new Cut("main", 2, Cut.How.WHOLE)), panels.piece().cuts());
    assertEquals(1020, box(panels.piece()).width(), 1e-9);
    assertEquals(
        "skirt: 208.0 cm is wider than the 146.0 cm usable of main, so it is cut as 2 panels"
            + " 106.0 cm wide with joins",
        panels.sentence(Unit.CM).orElseThrow());
  }

  @Test
  void panelsAreAsFewAsTheClothAllows() {
    Cut cut = new Cut("main", 3, Cut.How.FOLD);
    Gathered skirt = skirt(1020, 2, cut);
    assertEquals(1, skirt.panels(cut, 2080).count());
    assertEquals(Optional.empty(), skirt.panels(cut, 2080).sentence(Unit.CM));
    assertEquals(2, skirt.panels(cut, 2079).count());
    assertEquals(2, skirt.panels(cut, 1060).count());
    assertEquals(3, skirt.panels(cut, 1059).count());
    assertEquals(9, skirt.panels(cut, 1059).piece().cuts().get(0).count());
  }

  @Test
  void laidAlongTheClothItNeedsNoPanels() {
    Cut cut = new Cut("main", 1, Cut.How.WHOLE);
    Gathered across =
        new Gathered(
            "frill",
            1000,
            2,
            60,
            new Gathered.Seams(10, 10, 10, false),
            Grain.ACROSS,
            List.of(cut));
    assertEquals(1, across.panels(cut, 1000).count());
  }

  @Test
  void whatCannotBeGatheredIsRefused() {
    assertEquals(
        "piece skirt: there is nothing to gather it onto. Give a length of more than 0.\n"
            + "piece skirt: a fullness of 0.5 is less than the edge it is sewn to. Write 1.5 for"
            + " half as much again, 2 for twice as much.",
        assertThrows(InputException.class, () -> skirt(0, 0.5)).getMessage());
    Cut cut = new Cut("main", 1, Cut.How.WHOLE);
    assertEquals(
        "piece skirt: the cloth is narrower than its side allowances alone. Make the side"
            + " allowances narrower, or take a wider cloth.",
        assertThrows(InputException.class, () -> skirt(600, 2, cut).panels(cut, 40)).getMessage());
  }

  private static Piece bodice(String name, double waist, Cut.How how) {
    boolean half = how == Cut.How.FOLD;
    Point a = new Point(0, 0);
    Point b = new Point(200, 0);
    Point c = new Point(200, waist);
    Point d = new Point(0, waist);
    return new Piece(
        name,
        List.of(
            new Edge("centre", Path.line(a, b), 0, false),
            new Edge("shoulder", Path.line(b, c), 10, false),
            new Edge("side", Path.line(c, d), 10, false),
            new Edge("waist", Path.line(d, a), 10, false)),
        half ? Optional.of("centre") : Optional.empty(),
        Grain.ALONG,
        List.of(),
        List.of(),
        List.of(new Cut("main", how == Cut.How.WHOLE ? 2 : 1, how)));
  }

  @Test
  void joinedEdgesOfHalvesAndPairsCountTwice() {
    List<Piece> pieces =
        List.of(
            bodice("front", 140, Cut.How.FOLD),
            bodice("back", 130, Cut.How.PAIR),
            bodice("band", 50, Cut.How.WHOLE));
    assertEquals(540, Joined.lengthMm(List.of("front.waist", "back.waist"), pieces), 1e-9);
    assertEquals(50, Joined.lengthMm(List.of("band.waist"), pieces), 1e-9);
    assertEquals(100, Joined.lengthMm(List.of("band.waist", "band.waist"), pieces), 1e-9);
  }

  @Test
  void unknownJoinedEdgesAreNamed() {
    List<Piece> pieces = List.of(bodice("front", 140, Cut.How.FOLD));
    assertEquals(
        "no edge is called front.waste. Write piece.edge, for example front.centre.\n"
            + "no edge is called back.waist. Write piece.edge, for example front.centre.",
        assertThrows(
                InputException.class,
                () -> Joined.lengthMm(List.of("front.waste", "front.waist", "back.waist"), pieces))
            .getMessage());
  }

  @Test
  void aStyleHandsOutPanelsForTheClothTheyAreCutFrom() {
    Cut main = new Cut("main", 1, Cut.How.WHOLE);
    Cut lining = new Cut("lining", 1, Cut.How.WHOLE);
    Style style =
        new Style(
            new Design(
                "smock", Unit.CM, Sizes.only("104"), List.of(), List.of(), List.of(), List.of()),
            Map.of(
                "104",
                new PieceSet(
                    List.of(bodice("front", 140, Cut.How.FOLD)),
                    List.of(),
                    List.of(skirt(1020, 2, main, lining)))));
    assertEquals(
        List.of("front 1 on fold", "skirt 2"),
        style.pieces("104", "main", 1460).stream()
            .map(p -> p.name() + " " + p.cuts().get(0))
            .toList());
    assertEquals(
        List.of("skirt 3"),
        style.pieces("104", "lining", 800).stream()
            .map(p -> p.name() + " " + p.cuts().get(0))
            .toList());
    assertEquals(List.of("front", "skirt"), style.pieces("104").stream().map(Piece::name).toList());
    assertEquals(
        "style smock has no size 98. Use one of 104.",
        assertThrows(InputException.class, () -> style.pieces("98", "main", 1460)).getMessage());
  }
}
