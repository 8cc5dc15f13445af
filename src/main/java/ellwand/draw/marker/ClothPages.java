package ellwand.draw.marker;

import ellwand.cloth.Zone;
import ellwand.draw.sheet.Pages;
import ellwand.draw.sheet.Reading;

/** The pages of one cloth after its picture: how it lies, what to cut, where each piece lies. */
final class ClothPages {

  private static final double HEADING = 12;
  private static final double SMALL_HEADING = 9.5;

  /** Room that a heading keeps under it: a table's head and a row or two, mm. */
  private static final double KEPT = 25;

  private ClothPages() {}

  static void add(Pages flow, PlacementTable table) {
    flow.add(Pages.heading("How the cloth lies: " + table.cloth(), HEADING), KEPT);
    flow.space(2);
    flow.add(FoldPicture.of(table.marker(), Pages.widthMm() * 0.8, new Reading(1)));
    Pages.sentences("", ClothWords.of(table.marker(), table.shown())).ifPresent(flow::add);
    flow.space(5);
    flow.add(Pages.heading("What to cut", HEADING), KEPT);
    flow.add(table.wantedHead(), table.wantedRows());
    flow.space(5);
    flow.add(Pages.heading("Where each piece lies", HEADING), KEPT);
    Pages.sentences("", table.notes()).ifPresent(b -> flow.add(b, KEPT));
    for (Zone zone : table.marker().zones()) {
      if (!table.placesRows(zone).isEmpty()) {
        flow.space(4);
        String words = ClothWords.of(zone, table.shown()) + "; " + table.across(zone);
        flow.add(Pages.heading(words, SMALL_HEADING), KEPT);
        flow.space(1);
        flow.add(table.placesHead(), table.placesRows(zone));
      }
    }
  }
}
