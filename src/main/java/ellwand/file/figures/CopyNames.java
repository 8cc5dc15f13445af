package ellwand.file.figures;

import com.fasterxml.jackson.databind.node.ArrayNode;
import ellwand.figures.CopyName;
import java.util.List;

/** Copies as they are told apart in JSON. */
final class CopyNames {

  private CopyNames() {}

  static void write(ArrayNode into, List<CopyName> copies) {
    for (CopyName copy : copies) {
      into.addObject()
          .put("piece", copy.piece())
          .put("size", copy.size())
          .put("garment", copy.garment());
    }
  }
}
