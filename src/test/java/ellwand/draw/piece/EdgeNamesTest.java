package ellwand.draw.piece;

import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.draw.sheet.Drawn;
import ellwand.draw.sheet.Item;
import ellwand.draw.sheet.Palette;
import ellwand.draw.sheet.Reading;
import ellwand.draw.sheet.Shown;
import ellwand.geometry.Motion;
import ellwand.geometry.Region;
import ellwand.units.Unit;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class EdgeNamesTest {

  @ParameterizedTest
  @ValueSource(doubles = {5, 8, 20})
  void namesStandClearOfTheirPieceAndOfOneAnother(double scale) {
    for (var cut : Pieces.all()) {
      PieceCell cell =
          new PieceCell(
              cut,
              GrainLine.of(cut),
              cut.name(),
              "Weir jacket",
              "104",
              new Reading(scale),
              new Shown(Unit.CM),
              false);
      List<Item> items = cell.items(new Palette(List.of(cut.name())));
      Region piece = Region.of(cut.cutting().moved(new Motion(false, 90, 0, 0)));
      List<Item.Text> names =
          Drawn.texts(items).stream().filter(t -> t.kind().equals("edge-name")).toList();
      assertTrue(names.size() >= cut.piece().edges().size(), cut.name());
      for (int i = 0; i < names.size(); i++) {
        Region name = Region.of(Drawn.area(names.get(i)));
        assertTrue(name.intersect(piece).isEmpty(), names.get(i).words());
        for (int j = 0; j < i; j++) {
          assertTrue(
              name.intersect(Region.of(Drawn.area(names.get(j)))).isEmpty(), names.get(i).words());
        }
      }
    }
  }
}
