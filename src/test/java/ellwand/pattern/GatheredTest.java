package ellwand.pattern;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import ellwand.geometry.Box;
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

  private static Gathered valance(double joined, double fullness, Cut... cuts) {
    return new Gathered(
        "valance",
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
    assertEquals(inches * 25.4, valance(10 * 25.4, fullness).finishedWidthMm(), 1e-9);
  }

  @Test
  void itIsARectangleWithItsLengthAlongTheGrain() {
    Piece piece = valance(600, 1.5, new Cut("main", 1, Cut.How.WHOLE)).piece();
    assertEquals(new Box(0, 0, 400, 900), box(piece));
    assertEquals(
        List.of("other side 20.0", "top 10.0", "side 20.0", "hem 40.0"),
        piece.edges().stream().map(e -> e.name() + " " + e.allowanceMm()).toList());
    assertEquals(true, piece.edge("hem").turnedBack());
    assertEquals(900, piece.edge("top").line().length(), 1e-9);
    assertEquals(400, piece.edge("top").line().start().x());
  }

  @Test
  void onTheFoldItIsHalfARectangle() {
    Piece piece = valance(600, 1.5, new Cut("main", 1, Cut.How.FOLD)).piece();
    assertEquals(new Box(0, 0, 400, 450), box(piece));
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
    // 210 cm finished and 2 cm at each side; halves are 105 + 4 cm.
    Panels panels = valance(1400, 1.5, cut).panels(cut, 1460);
    assertEquals(2, panels.count());
    assertEquals(1090, panels.panelMm(), 1e-9);
    assertEquals(List.of(new Cut("main", 2, Cut.How.WHOLE)), panels.piece().cuts());
    assertEquals(1050, box(panels.piece()).width(), 1e-9);
    assertEquals(
        "valance: 214.0 cm is wider than the 146.0 cm usable of main, so it is cut as 2 panels"
            + " 109.0 cm wide with joins",
        panels.sentences(Unit.CM).get(0));
  }

  @Test
  void panelsAreAsFewAsTheClothAllows() {
    Cut cut = new Cut("main", 3, Cut.How.FOLD);
    Gathered whole = valance(1400, 1.5, cut);
    assertEquals(1, whole.panels(cut, 2140).count());
    assertEquals(List.of(), whole.panels(cut, 2140).sentences(Unit.CM));
    assertEquals(2, whole.panels(cut, 2139).count());
    assertEquals(2, whole.panels(cut, 1090).count());
    assertEquals(3, whole.panels(cut, 1089).count());
    assertEquals(9, whole.panels(cut, 1089).piece().cuts().get(0).count());
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
        "piece valance: there is nothing to gather it onto. Give a length of more than 0.",
        assertThrows(InputException.class, () -> valance(0, 0.5)).getMessage());
    Cut cut = new Cut("main", 1, Cut.How.WHOLE);
    assertEquals(
        "piece valance: the cloth is narrower than its side allowances alone. Make the side"
            + " allowances narrower, or take a wider cloth.",
        assertThrows(InputException.class, () -> valance(600, 1.5, cut).panels(cut, 40))
            .getMessage());
  }

  @Test
  void aStyleHandsOutPanelsForTheClothTheyAreCutFrom() {
    Cut main = new Cut("main", 1, Cut.How.WHOLE);
    Cut trim = new Cut("trim", 1, Cut.How.WHOLE);
    Style style =
        new Style(
            new Design(
                "bed cover",
                Unit.CM,
                Sizes.only("double"),
                List.of(),
                List.of(),
                List.of(),
                List.of()),
            Map.of(
                "double",
                new PieceSet(
                    List.of(JoinedTest.part("end", 140, "1 on fold")),
                    List.of(),
                    List.of(valance(1400, 1.5, main, trim)))));
    assertEquals(
        List.of("end 1 on fold", "valance 2"),
        style.pieces("double", "main", 1460).stream()
            .map(p -> p.name() + " " + p.cuts().get(0))
            .toList());
    assertEquals(
        List.of("valance 3"),
        style.pieces("double", "trim", 800).stream()
            .map(p -> p.name() + " " + p.cuts().get(0))
            .toList());
    assertEquals(
        List.of("end", "valance"), style.pieces("double").stream().map(Piece::name).toList());
    assertEquals(
        "style bed cover has no size single. Use one of double.",
        assertThrows(InputException.class, () -> style.pieces("single", "main", 1460))
            .getMessage());
  }
}
