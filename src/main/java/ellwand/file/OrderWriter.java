package ellwand.file;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.figures.LayTicket;
import ellwand.figures.OrderFigures;
import ellwand.order.CutOrderPlan;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;

/** Writes order.json and the cut tickets as comma-separated values. */
public final class OrderWriter {

  private OrderWriter() {}

  /** The bytes of order.json: the same plan gives the same bytes. */
  public static byte[] json(CutOrderPlan plan, OrderFigures figures) {
    ObjectNode root = Json.object();
    ArrayNode lays = root.putArray("lays");
    for (LayTicket lay : figures.lays()) {
      ObjectNode node = lays.addObject();
      node.set("garments", counts(lay.garments()));
      node.set("plies", counts(lay.plies()));
      node.set("length", Json.number(lay.lengthMm()));
      boolean made =
          figures.markers().stream()
              .anyMatch(m -> m.name().equals(lay.marker()) && m.utilisation().isPresent());
      node.put("marker", made ? lay.marker() + ".marker.json" : null);
    }
    root.put("laysLowerBound", figures.laysAtLeast());
    ObjectNode cut = root.putObject("cut");
    plan.cut().forEach((colour, sizes) -> cut.set(colour, counts(sizes)));
    ObjectNode cloth = root.putObject("cloth");
    figures.clothByColour().forEach((colour, mm) -> cloth.set(colour, Json.number(mm)));
    root.set("cost", Json.number(figures.total().cost()));
    root.put("proved", figures.proved());
    return Json.bytes(root);
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
            "lay,marker,colour,plies,size,garments in marker,garments cut,"
                + "marker length mm,cloth of colour mm\n");
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
                                      "%d,%s,%s,%d,%s,%d,%d,%.1f,%.1f\n",
                                      lay.number(),
                                      lay.marker(),
                                      quoted(colour),
                                      plies,
                                      quoted(size),
                                      garments,
                                      lay.cut().get(colour).get(size),
                                      lay.lengthMm(),
                                      lay.clothMm().get(colour)))));
    }
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }

  /** As RFC 4180 has it. */
  private static String quoted(String text) {
    return text.matches("[^\",\r\n]*") ? text : '"' + text.replace("\"", "\"\"") + '"';
  }
}
