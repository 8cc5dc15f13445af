package ellwand.file.job;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.file.source.Json;
import ellwand.file.source.Measures;
import ellwand.pattern.Extent;
import ellwand.pattern.Trim;
import ellwand.units.Unit;
import java.math.BigDecimal;

/** Writes the trims of a design, each with all that its entry says. */
record TrimWriter(Measures measures) {

  ObjectNode trim(Trim trim) {
    ObjectNode node = Json.object();
    if (trim.need() instanceof Trim.Lengths lengths) {
      node.set("length", extent(lengths.of()));
      if (lengths.share() != 1) {
        node.set("share", Json.number(lengths.share()));
      }
      if (lengths.plusMm() > 0) {
        node.set("plus", measures.number(lengths.plusMm()));
      }
      node.set("shop-step", measures.number(lengths.stepMm()));
    } else {
      Trim.Pieces pieces = (Trim.Pieces) trim.need();
      node.set("count", count(pieces));
      pieces.each().ifPresent(each -> node.set("each", extent(each)));
    }
    trim.widthMm().ifPresent(mm -> node.set("width", measures.number(mm)));
    if (trim.price().known()) {
      node.put("price", price(trim));
    }
    if (!trim.sizes().isEmpty()) {
      ArrayNode sizes = node.putArray("sizes");
      trim.sizes().forEach(sizes::add);
    }
    return node;
  }

  private static JsonNode count(Trim.Pieces pieces) {
    ObjectNode node = Json.object();
    if (pieces.garments() > 1) {
      int count = pieces.bySize().values().iterator().next();
      node.put("count", count + " for " + pieces.garments() + " garments");
      return node.get("count");
    }
    pieces.bySize().forEach(node::put);
    return node;
  }

  private static String price(Trim trim) {
    Trim.Price price = trim.price();
    String money = price.currency().isEmpty() ? "" : price.currency() + " ";
    if (trim.byLength()) {
      return money + plain(price.of(Unit.M.mm())) + " per m";
    }
    return money
        + plain(price.amount())
        + (price.per() == 1 ? " each" : " for " + plain(price.per()));
  }

  static String plain(double number) {
    return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
  }

  JsonNode extent(Extent extent) {
    if (extent instanceof Extent.Given given) {
      return measures.number(given.mm());
    }
    if (extent instanceof Extent.OfEdges joined) {
      ArrayNode edges = Json.object().arrayNode();
      joined.edges().forEach(edges::add);
      return edges;
    }
    ObjectNode bySize = Json.object();
    ((Extent.BySize) extent)
        .mmBySize()
        .forEach((size, mm) -> bySize.set(size, measures.number(mm)));
    return bySize;
  }
}
