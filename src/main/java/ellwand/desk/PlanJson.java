package ellwand.desk;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.app.PlannedOrder;
import ellwand.figures.Buying;
import ellwand.figures.LayTicket;
import ellwand.figures.OrderCloth;
import ellwand.figures.OrderFigures;
import ellwand.figures.OrderText;
import ellwand.file.source.Json;
import ellwand.units.Length;
import ellwand.units.Unit;
import java.util.Locale;
import java.util.Map;

/** A cut-order plan as a page draws it. */
final class PlanJson {

  private PlanJson() {}

  static ObjectNode of(PlannedOrder plan) {
    OrderFigures figures = plan.figures();
    Unit unit = plan.unit();
    ObjectNode json = Json.object();
    json.put("garments", figures.garments());
    ArrayNode lays = json.putArray("lays");
    for (LayTicket lay : figures.lays()) {
      ObjectNode one = lays.addObject();
      one.put("number", lay.number());
      one.put("cloth", lay.cloth());
      if (plan.markers().containsKey(lay.marker())) {
        one.put("picture", lay.marker() + ".svg");
      }
      one.set("garments", counts(lay.garments()));
      one.set("plies", counts(lay.plies()));
      one.put("cut", lay.totalCut());
      one.set("lengthMm", Json.number(lay.lengthMm()));
      one.put("length", new Length(lay.lengthMm()).show(unit));
      one.put("clothLength", Buying.shown(lay.totalClothMm(), unit));
    }
    ArrayNode cloths = json.putArray("cloths");
    for (OrderCloth cloth : figures.cloths()) {
      ObjectNode one = cloths.addObject();
      one.put("name", cloth.cloth());
      ArrayNode said = one.putArray("said");
      OrderText.sentences(figures, cloth, unit).forEach(said::add);
      ObjectNode buy = one.putObject("buy");
      cloth.toBuyByColour().forEach((colour, mm) -> buy.put(colour, Buying.shown(mm, unit)));
    }
    json.set("planned", sum(figures.total(), figures.currency(), unit));
    json.set("oneSizeALay", sum(figures.plain(), figures.currency(), unit));
    json.put("oneSizeALayEstimated", figures.plainEstimated());
    ArrayNode cautions = json.putArray("cautions");
    figures.cautions().forEach(cautions::add);
    return json;
  }

  private static ObjectNode sum(OrderCloth.Sum sum, String currency, Unit unit) {
    ObjectNode json = Json.object();
    json.put("lays", sum.lays());
    json.set("clothMm", Json.number(sum.clothMm()));
    json.put("cloth", Buying.shown(sum.clothMm(), unit));
    if (sum.cost() > 0) {
      json.put("cost", String.format(Locale.ROOT, "%.2f %s", sum.cost(), currency).strip());
    }
    return json;
  }

  private static ObjectNode counts(Map<String, Integer> counts) {
    ObjectNode json = Json.object();
    counts.forEach(json::put);
    return json;
  }
}
