package ellwand.file.figures;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.figures.Shopping;
import ellwand.figures.ToBuy;
import ellwand.file.source.Json;

/** What is bought, in figures and orders. */
final class BuyNames {

  private BuyNames() {}

  static ArrayNode of(Shopping buy) {
    ArrayNode items = Json.object().arrayNode();
    buy.items().forEach(item -> items.add(item(item)));
    return items;
  }

  private static ObjectNode item(ToBuy item) {
    ObjectNode node = Json.object();
    String kind = Json.word(item.kind());
    node.put("what", kind);
    node.put(kind, item.name());
    if (!item.colour().isEmpty()) {
      node.put("colour", item.colour());
    }
    item.widthMm().ifPresent(mm -> node.set("widthMm", Json.number(mm)));
    item.lengthMm()
        .ifPresent(
            mm -> node.set(item.count().isPresent() ? "eachMm" : "lengthMm", Json.number(mm)));
    item.count().ifPresent(count -> node.put("count", count));
    node.set("cost", Json.number(item.cost()));
    node.put("currency", item.currency());
    return node;
  }
}
