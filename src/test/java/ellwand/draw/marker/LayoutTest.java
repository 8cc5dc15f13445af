package ellwand.draw.marker;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.draw.sheet.Drawing;
import ellwand.draw.sheet.Drawn;
import ellwand.draw.sheet.Item;
import ellwand.figures.Figures;
import ellwand.geometry.Box;
import ellwand.geometry.Outline;
import ellwand.geometry.Region;
import ellwand.lay.Copy;
import ellwand.lay.Marker;
import ellwand.units.Unit;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Nothing overlaps and nothing is cut off, on sheets that are read on A4. */
class LayoutTest {

  /** What may be looked at. */
  enum Sheet {
    JACKET(Samples.jacket(), Unit.CM),
    JACKET_IN_INCHES(Samples.jacket(), Unit.INCH),
    JACKET_WISHED(Samples.jacket(), Samples.wished(Samples.jacket()), Unit.CM),
    OVERALLS(Samples.overalls(), Unit.MM),
    OVERALLS_WISHED(Samples.overalls(), Samples.wished(Samples.overalls()), Unit.CM),
    HOSTILE(Samples.hostile(), Unit.YARD);

    private final MarkerSheet sheet;

    Sheet(Marker marker, Unit unit) {
      this(marker, Samples.figures(marker), unit);
    }

    Sheet(Marker marker, Figures figures, Unit unit) {
      this.sheet = new MarkerSheet(marker, figures, Samples.head(marker), unit);
    }

    Drawing drawing() {
      return MarkerDrawing.drawing(sheet, MarkerDrawing.fit(sheet, 0), 1);
    }

    double scale() {
      return MarkerDrawing.fit(sheet, 0).scale();
    }
  }

  @ParameterizedTest
  @EnumSource
  void wordsStandWithinTheSheetAndClearOfOneAnother(Sheet sheet) {
    Drawing drawing = sheet.drawing();
    List<Item.Text> texts = Drawn.texts(drawing.items());
    assertTrue(texts.size() > 20);
    Region frame = Region.of(drawing.frame().grown(0.01));
    for (int i = 0; i < texts.size(); i++) {
      Region words = Region.of(Drawn.area(texts.get(i)));
      assertTrue(words.minus(frame).isEmpty(), texts.get(i).words() + " leaves the sheet");
      for (int j = 0; j < i; j++) {
        String both = texts.get(i).words() + " / " + texts.get(j).words();
        assertTrue(words.intersect(Region.of(Drawn.area(texts.get(j)))).isEmpty(), both);
      }
    }
  }

  @ParameterizedTest
  @EnumSource
  void labelsAndArrowsStandInsideTheirPieces(Sheet sheet) {
    for (Item.Group copy : Drawn.groups(sheet.drawing().items())) {
      if (copy.number().isPresent()) {
        Region piece = Region.of(outline(copy));
        boolean pointed = copy.items().stream().anyMatch(i -> isLines(i, "pointer"));
        List<Region> labels =
            Drawn.texts(copy.items()).stream().map(t -> Region.of(Drawn.area(t))).toList();
        assertTrue(!labels.isEmpty(), copy.id());
        for (Region label : labels) {
          assertEquals(pointed, !label.minus(piece).isEmpty(), copy.id());
        }
        arrow(copy).ifPresent(a -> assertInside(copy, a, piece, labels));
      }
    }
  }

  @ParameterizedTest
  @EnumSource
  void numbersOutsideTheirPieceStandOnNoOther(Sheet sheet) {
    List<Item.Group> copies =
        Drawn.groups(sheet.drawing().items()).stream().filter(g -> g.number().isPresent()).toList();
    for (Item.Group copy : copies) {
      if (copy.items().stream().anyMatch(i -> isLines(i, "pointer"))) {
        Region number = Region.of(Drawn.area(Drawn.texts(copy.items()).get(0)));
        for (Item.Group other : copies) {
          assertTrue(number.intersect(Region.of(outline(other))).isEmpty(), copy.id());
        }
      }
    }
  }

  @Test
  void straightCutsAndTheLeftOverAreDrawnWhereTheyAre() {
    Marker marker = Samples.overalls();
    List<Item> items = Sheet.OVERALLS_WISHED.drawing().items();
    List<Double> cuts =
        lines(items, "straight-cut").stream().map(l -> l.lines().get(0).get(0).x()).toList();
    assertEquals(Samples.wished(marker).handling().straightCuts(), cuts.size());
    assertTrue(cuts.size() > 1);
    Box free = Outline.of(lines(items, "left-over").get(0).lines().get(0)).box();
    for (Copy copy : marker.copies()) {
      Box box = copy.outline().box();
      assertTrue(cuts.stream().noneMatch(x -> box.minX() < x && x < box.maxX()), copy.piece());
      assertTrue(
          Region.of(copy.outline()).intersect(Region.of(free.grown(-0.1))).isEmpty(), copy.piece());
    }
    assertTrue(lines(Sheet.OVERALLS.drawing().items(), "straight-cut").isEmpty());
  }

  private static List<Item.Lines> lines(List<Item> items, String kind) {
    return Drawn.groups(items).stream()
        .flatMap(g -> g.items().stream())
        .filter(i -> i instanceof Item.Lines l && l.kind().equals(kind))
        .map(Item.Lines.class::cast)
        .toList();
  }

  private static void assertInside(
      Item.Group copy, Region arrow, Region piece, List<Region> labels) {
    assertTrue(arrow.minus(piece).isEmpty(), copy.id());
    labels.forEach(l -> assertTrue(arrow.intersect(l).isEmpty(), copy.id()));
  }

  @ParameterizedTest
  @EnumSource
  void typeIsLargeEnoughToRead(Sheet sheet) {
    double scale = sheet.scale();
    for (Item.Text text : Drawn.texts(sheet.drawing().items())) {
      double points = text.sizeMm() / scale * 72 / 25.4;
      double least = List.of("figure", "caution", "key").contains(text.kind()) ? 9 : 7;
      assertTrue(points >= least - 1e-9, text.kind() + " " + points);
    }
  }

  private static boolean isLines(Item item, String kind) {
    return item instanceof Item.Lines lines && lines.kind().startsWith(kind);
  }

  private static Outline outline(Item.Group copy) {
    return copy.items().stream()
        .filter(i -> isLines(i, "outline"))
        .map(i -> Outline.of(((Item.Lines) i).lines().get(0)))
        .findFirst()
        .orElseThrow();
  }

  private static Optional<Region> arrow(Item.Group copy) {
    return copy.items().stream()
        .filter(i -> isLines(i, "grain-line"))
        .map(i -> ((Item.Lines) i).lines().get(0))
        .map(l -> Region.of(Box.around(l).grown(0.1)))
        .findFirst();
  }
}
