package ellwand.file.job;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.file.source.Json;
import ellwand.file.source.Measures;
import ellwand.pattern.block.Block;
import ellwand.pattern.block.CircleSkirt;
import ellwand.pattern.block.PieceEdge;
import ellwand.pattern.block.Skirt;
import ellwand.pattern.block.Sleeve;
import ellwand.pattern.block.Trousers;
import java.util.List;

/** Writes {@code block:} of a piece. */
record BlockWriter(Measures measures) {

  JsonNode block(Block block) {
    TrimWriter extents = new TrimWriter(measures);
    ObjectNode node = Json.object();
    node.put("draft", block.words());
    if (block instanceof Skirt skirt) {
      node.set("length", extents.extent(skirt.length()));
      skirt.flare().ifPresent(flare -> node.set("flare", extents.extent(flare)));
    } else if (block instanceof CircleSkirt skirt) {
      node.set("length", extents.extent(skirt.length()));
    } else if (block instanceof Trousers trousers) {
      node.set("hem", extents.extent(trousers.hem()));
    } else if (block instanceof Sleeve sleeve) {
      ArrayNode armhole = node.putArray("armhole");
      for (List<PieceEdge> side : List.of(sleeve.front(), sleeve.back())) {
        ArrayNode edges = armhole.addArray();
        side.forEach(edge -> edges.add(edge.toString()));
      }
    }
    return node.size() == 1 ? node.get("draft") : node;
  }
}
