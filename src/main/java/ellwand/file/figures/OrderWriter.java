package ellwand.file.figures;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.figures.LayTicket;
import ellwand.figures.OrderCloth;
import ellwand.figures.OrderFigures;
import ellwand.figures.SpreadWords;
import ellwand.file.source.Json;
import ellwand.order.CutOrderPlan;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Writes order.json and the cut tickets as comma-separated values. */
public final class OrderWriter {

  private OrderWriter() {}

  /** The bytes of order.json: the same plans, one for each cloth, give the same bytes. */
  public static byte[] json(List<CutOrderPlan> plans, OrderFigures figures) {
    ObjectNode root = Json.object();
    ArrayNode lays = root.putArray("lays");
    figures.cloths().forEach(cloth -> cloth.lays().forEach(lay -> lays.add(lay(cloth, lay))));
    root.put("laysLowerBound", figures.laysAtLeast());
    root.set("cut", cut(plans.get(0)));
    root.set("cloth", lengths(figures.clothByColour()));
    costs(root, figures.total());
    root.set("buy", BuyNames.of(figures.buy()));
    root.put("proved", figures.proved());
    if (figures.several()) {
      ArrayNode cloths = root.putArray("cloths");
      for (int i = 0; i < plans.size(); i++) {
        OrderCloth cloth = figures.cloths().get(i);
        ObjectNode node = cloths.addObject();
        node.put("name", cloth.cloth());
        node.put("laysLowerBound", cloth.laysAtLeast());
        node.set("cut", cut(plans.get(i)));
        node.set("cloth", lengths(cloth.clothByColour()));
        node.set("toBuy", lengths(cloth.toBuyByColour()));
        costs(node, cloth.total());
        node.put("proved", cloth.proved());
      }
    }
    return Json.bytes(root);
  }

  /** What is to be paid, of it for the cloth as bought, and what the cloth that is cut comes to. */
  private static void costs(ObjectNode node, OrderCloth.Sum sum) {
    node.set("cost", Json.number(sum.cost()));
    node.set("clothCost", Json.number(sum.boughtCost()));
    node.set("clothCostAsCut", Json.number(sum.cutCost()));
  }

  private static ObjectNode lay(OrderCloth cloth, LayTicket lay) {
    ObjectNode node = Json.object();
    if (!cloth.cloth().isEmpty()) {
      node.put("cloth", cloth.cloth());
    }
    node.set("garments", counts(lay.garments()));
    node.set("plies", counts(lay.plies()));
    node.set("length", Json.number(lay.lengthMm()));
    boolean made =
        cloth.markers().stream()
            .anyMatch(m -> m.name().equals(lay.marker()) && m.utilisation().isPresent());
    node.put("marker", made ? lay.marker() + ".marker.json" : null);
    return node;
  }

  private static ObjectNode cut(CutOrderPlan plan) {
    ObjectNode cut = Json.object();
    plan.cut().forEach((colour, sizes) -> cut.set(colour, counts(sizes)));
    return cut;
  }

  private static ObjectNode lengths(Map<String, Double> mm) {
    ObjectNode node = Json.object();
    mm.forEach((colour, length) -> node.set(colour, Json.number(length)));
    return node;
  }

  private static ObjectNode counts(Map<String, Integer> counts) {
    ObjectNode node = Json.object();
    counts.forEach(node::put);
    return node;
  }

  /** One line for each lay, colour and size. */
  public static byte[] csv(OrderFigures figures) {
    StringBuilder text =
        new StringBuilder(
            "lay,cloth,marker,colour,plies,size,garments in marker,garments cut,"
                + "marker length mm,cloth of colour mm,spread,lengths of cloth\n");
    for (LayTicket lay : figures.lays()) {
      lay.plies()
          .forEach(
              (colour, plies) ->
                  lay.garments()
                      .forEach(
                          (size, garments) ->
                              text.append(
                                  String.format(
                                      Locale.ROOT,
                                      "%d,%s,%s,%s,%d,%s,%d,%d,%.1f,%.1f,%s,%d\n",
                                      lay.number(),
                                      quoted(lay.cloth()),
                                      quoted(lay.marker()),
                                      quoted(colour),
                                      plies,
                                      quoted(size),
                                      garments,
                                      lay.cut().get(colour).get(size),
                                      lay.lengthMm(),
                                      lay.clothMm().get(colour),
                                      quoted(SpreadWords.terms(lay)),
                                      lay.lengths(plies)))));
    }
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }

  /**
   * As RFC 4180 has it. What a spreadsheet would take for a formula begins with an apostrophe
   * (OWASP, CSV Injection).
   */
  private static String quoted(String name) {
    String text = name.matches("(?s)[=+\\-@\t\r].*") ? "'" + name : name;
    return text.matches("[^\",\r\n]*") ? text : '"' + text.replace("\"", "\"\"") + '"';
  }
}
