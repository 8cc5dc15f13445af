package ellwand.draw.marker;

import ellwand.cloth.Zone;
import ellwand.draw.sheet.Pages;
import ellwand.draw.sheet.Reading;

/** The pages of one cloth after its picture: how it lies, what to cut, where each piece lies. */
final class ClothPages {

  private static final double SMALL_HEADING = 9.5;

  private ClothPages() {}

  static void add(Pages flow, PlacementTable table) {
    flow.head("How the cloth lies: " + table.cloth());
    flow.space(2);
    flow.add(FoldPicture.of(table.marker(), Pages.widthMm() * 0.8, new Reading(1)));
    Pages.sentences("", ClothWords.of(table.marker(), table.shown())).ifPresent(flow::add);
    flow.space(5);
    flow.head("What to cut");
    flow.add(table.wantedHead(), table.wantedRows());
    flow.space(5);
    flow.head("Where each piece lies");
    Pages.sentences("", table.notes()).ifPresent(b -> flow.add(b, Pages.KEPT));
    for (Zone zone : table.marker().zones()) {
      if (!table.placesRows(zone).isEmpty()) {
        flow.space(4);
        String words = ClothWords.of(zone, table.shown()) + "; " + table.across(zone);
        flow.add(Pages.heading(words, SMALL_HEADING), Pages.KEPT);
        flow.space(1);
        flow.add(table.placesHead(), table.placesRows(zone));
      }
    }
  }
}
