package ellwand.file.figures;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.figures.Comparison;
import ellwand.file.source.Json;

/** Writes compare.json. */
public final class ComparisonWriter {

  private ComparisonWriter() {}

  /** One entry for each width and fold, lengths in mm. */
  public static byte[] bytes(Comparison comparison) {
    ArrayNode rows = Json.object().putArray("rows");
    for (Comparison.WidthTried row : comparison.rows()) {
      ObjectNode node = rows.addObject();
      node.set("width", Json.number(row.widthMm()));
      node.put("fold", row.tried().fold().words());
      node.set("length", Json.number(row.tried().lengthMm()));
      node.set("clothLength", Json.number(row.tried().clothLengthMm()));
      node.set("toBuy", Json.number(row.tried().toBuyMm()));
      node.set("utilisation", Json.number(row.utilisation()));
      node.set("cost", Json.number(row.cost()));
      node.put("reason", row.tried().possible() ? null : row.tried().reason());
    }
    return Json.bytes(rows);
  }
}
