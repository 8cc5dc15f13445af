package ellwand.draw.marker;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.cloth.Cloth;
import ellwand.cloth.Direction;
import ellwand.cloth.Fold;
import ellwand.cloth.Goods;
import ellwand.cloth.Laying;
import ellwand.cloth.Repeat;
import ellwand.cloth.Selling;
import ellwand.draw.piece.Room;
import ellwand.draw.sheet.Drawn;
import ellwand.draw.sheet.Item;
import ellwand.draw.sheet.Palette;
import ellwand.draw.sheet.Reading;
import ellwand.draw.sheet.Shown;
import ellwand.geometry.Box;
import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import ellwand.lay.Marker;
import ellwand.units.Unit;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is written on a marker can be read, and belongs to one piece only. */
class LegibleTest {

  @Test
  void noStripeRunsThroughALabel() {
    Marker jacket = Samples.jacket();
    Repeat checks = new Repeat(60, 50, false, true, true, 10, 0, Optional.empty());
    Cloth cloth =
        new Cloth(
            "main",
            Goods.wide(1400).selvedge(10).repeating(Optional.of(checks)),
            Laying.in(Fold.LENGTHWISE),
            Selling.USUAL);
    List<Item> items = picture(jacket.of(jacket.lay().on(cloth)), 8);
    List<List<Point>> bars = lines(items, "bar");
    assertTrue(bars.size() > 20, "" + bars.size());
    for (Item.Text text : labels(items)) {
      Box box = text.box().grown(-0.01);
      assertTrue(bars.stream().noneMatch(bar -> Room.crosses(bar, box)), text.words());
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {14, 20, 30})
  void lineToANumberRunsOverNoWords(double scale) {
    Marker overalls = Samples.overalls();
    List<Item> items = picture(overalls, scale);
    List<List<Point>> pointers = lines(items, "pointer");
    assertFalse(pointers.isEmpty());
    for (List<Point> pointer : pointers) {
      for (Item.Text text : labels(items)) {
        Box core = text.box().grown(-0.15 * text.sizeMm());
        assertFalse(Room.crosses(pointer, core), text.words());
      }
    }
  }

  @Test
  void unevenStripesHaveASecondLineOnOneSide() {
    Marker jacket = Samples.jacket();
    Laying folded = Laying.in(Fold.LENGTHWISE).heading(Direction.ONE_WAY);
    Repeat even = new Repeat(60, 50, false, true, true, 10, 0, Optional.empty());
    Repeat uneven = new Repeat(60, 0, false, false, true, 10, 0, Optional.empty());
    for (Repeat repeat : List.of(even, uneven)) {
      Goods goods = Goods.wide(1400).selvedge(10).repeating(Optional.of(repeat));
      Cloth cloth = new Cloth("main", goods, folded, Selling.USUAL);
      Marker marker = jacket.of(jacket.lay().on(cloth));
      assertEquals(repeat.evenAlong(), lines(picture(marker, 8), "uneven").isEmpty());
      assertEquals(
          repeat.evenAlong(),
          ClothWords.of(marker, new Shown(Unit.CM)).stream().noneMatch(w -> w.contains("uneven")));
    }
  }

  @Test
  void whereTheClothIsOpenedIsDrawnAndSaidOtherwiseThanTheEnd() throws IOException {
    Marker jacket = Samples.jacket();
    List<Item> items = picture(jacket, 8);
    assertEquals(2, lines(items, "zone-border").size());
    byte[] pdf = CutSheet.pdf("Jacket", Samples.job(jacket), List.of(jacket), Unit.CM);
    try (PDDocument document = Loader.loadPDF(pdf)) {
      String words = new PDFTextStripper().getText(document);
      assertTrue(words.contains("Cut the folded part first, then open the rest."), words);
      assertTrue(words.contains("First:") && words.contains("then:"), words);
    }
  }

  @Test
  void aKeyOfManyKindsLeavesRoomForTheMarker() {
    List<String> kinds = new ArrayList<>();
    for (int i = 0; i < 300; i++) {
      kinds.add("a part of the harness, number " + i);
    }
    PieceKey key =
        new PieceKey(
            kinds.stream().collect(Collectors.toMap(kind -> kind, kind -> "1, 2")),
            new Palette(kinds),
            190,
            new Reading(1));
    assertTrue(key.heightMm() < 80, key.heightMm() + " mm");
    List<Item.Text> words = Drawn.texts(key.items(new Point(0, 0)));
    assertTrue(words.stream().anyMatch(t -> t.words().matches("and \\d+ more kinds of pieces")));
  }

  @Test
  void theSelvedgeWithTheBorderIsNamed() {
    Marker overalls = Samples.overalls();
    for (double mm : new double[] {60, 1300}) {
      Repeat border = new Repeat(0, 0, false, true, true, 0, 0, Optional.of(mm));
      Goods goods = Goods.wide(1400).selvedge(10).repeating(Optional.of(border));
      Cloth cloth = new Cloth("main", goods, Laying.in(Fold.OPEN), Selling.USUAL);
      Marker marker = overalls.of(overalls.lay().on(cloth));
      List<Item.Text> named =
          Drawn.texts(picture(marker, 8)).stream()
              .filter(t -> t.words().equals("selvedge with the border"))
              .toList();
      assertFalse(named.isEmpty());
      assertTrue(named.stream().allMatch(t -> t.at().y() < 700 == mm < 700));
    }
  }

  @Test
  void kindsAreToldApartByTheirHatching() {
    List<String> kinds = new ArrayList<>();
    for (int i = 0; i < 21; i++) {
      kinds.add("piece " + i);
    }
    Palette palette = new Palette(kinds);
    List<Point> square = Outline.of(new Box(0, 0, 100, 100)).points();
    Reading reading = new Reading(1);
    assertTrue(palette.hatching("piece 0", square, reading).isEmpty());
    assertEquals(palette.fill("piece 0"), palette.fill("piece 7"));
    // In grey by its lines alone, in colour by both.
    for (int i = 0; i < 21; i++) {
      for (int k = 0; k < i; k++) {
        boolean alike = lines(palette, i, square).equals(lines(palette, k, square));
        boolean sameFill = palette.fill("piece " + i).equals(palette.fill("piece " + k));
        assertFalse(alike && (sameFill || i < 7), i + " looks like " + k);
      }
    }
  }

  private static List<List<List<Point>>> lines(Palette palette, int kind, List<Point> outline) {
    return palette.hatching("piece " + kind, outline, new Reading(1)).stream()
        .map(item -> ((Item.Lines) item).lines())
        .toList();
  }

  private static List<Item> picture(Marker marker, double scale) {
    List<Laid> laid = Laid.of(marker);
    Palette palette =
        new Palette(marker.lay().wanted().stream().map(w -> w.cut().name()).distinct().toList());
    return new MarkerPicture(
            marker, Samples.figures(marker), laid, palette, new Reading(scale), new Shown(Unit.CM))
        .items();
  }

  private static List<Item.Text> labels(List<Item> items) {
    return Drawn.texts(items).stream().filter(t -> t.kind().equals("label")).toList();
  }

  private static List<List<Point>> lines(List<Item> items, String kind) {
    List<List<Point>> lines = new ArrayList<>();
    for (Item item : items) {
      if (item instanceof Item.Group group) {
        lines.addAll(lines(group.items(), kind));
      } else if (item instanceof Item.Lines found && found.kind().equals(kind)) {
        lines.addAll(found.lines());
      }
    }
    return lines;
  }
}
