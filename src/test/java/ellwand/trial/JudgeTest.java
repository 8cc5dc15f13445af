package ellwand.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.util.AffineTransformation;

/** The judge sees what is wrong with markers drawn by hand; lengths in mm. */
class JudgeTest {

  private static final ObjectMapper YAML = new ObjectMapper(new YAMLFactory());

  /** A U that is no mirror image of itself, though all mirrored corners lie on its line. */
  private static final String JOB =
      """
      style:
        name: facing
        allowance: 0
        pieces:
          u:
            cut: {main: 2}
            outline:
              - {point: a, at: [0, 0]}
              - {point: b, at: [200, 0]}
              - {point: c, at: [200, 120]}
              - {point: d, at: [140, 120]}
              - {point: e, at: [140, 30]}
              - {point: f, at: [30, 30]}
              - {point: g, at: [30, 120]}
              - {point: h, at: [0, 120]}
            edges: {side: {from: a, to: b}}
      cloths:
        main: {width: 400, gap: 2, direction: one way, flaws: [{at: [300, 300], radius: 20}]}
      """;

  private static final String MARKER =
      """
      cloth: main
      fold: %s
      length: %s
      clothLength: %s
      zones: [{id: %s, x0: 0, x1: 500, y0: 0, y1: %s, plies: %d, foldEdges: []}]
      keepOuts: []
      copies: []
      """;

  private static JsonNode yaml(String text) {
    try {
      return YAML.readTree(text);
    } catch (JsonProcessingException e) {
      throw new AssertionError(e);
    }
  }

  private final JsonNode job = yaml(JOB);
  private final ObjectNode open = marker("open", 200, "open", 400, 1);

  private static ObjectNode marker(
      String fold, double length, String zone, double wide, int plies) {
    return (ObjectNode) yaml(MARKER.formatted(fold, length, length, zone, wide, plies));
  }

  private void lay(ObjectNode marker, String form, boolean flipped, int turn, double x, double y) {
    ObjectNode copy = marker.withArray("copies").addObject();
    copy.put("piece", "u").put("size", "one").put("garment", 1).put("form", form);
    copy.put("zone", marker.get("zones").get(0).get("id").asText());
    copy.put("x", x).put("y", y).put("turn", turn).put("flipped", flipped);
    AffineTransformation motion = AffineTransformation.scaleInstance(1, flipped ? -1 : 1);
    motion.rotate(Math.toRadians(turn)).translate(x, y);
    Drawing.of(job.get("style").get("pieces").get("u")).points().stream()
        .map(c -> motion.transform(c, new Coordinate()))
        .forEach(c -> copy.withArray("outline").addArray().add(c.x).add(c.y));
  }

  private void sees(String fault, ObjectNode marker) {
    List<String> faults = Judge.faults(job, marker);
    assertTrue(faults.stream().anyMatch(f -> f.contains(fault)), faults::toString);
  }

  @Test
  void aLegalMarkerIsLegal() {
    lay(open, "whole", false, 0, 0, 0);
    lay(open, "whole", false, 0, 0, 122);
    assertEquals(List.of(), Judge.faults(job, open));
  }

  @Test
  void theOtherHandIsSeen() {
    lay(open, "whole", false, 0, 0, 0);
    lay(open, "whole", true, 0, 0, 250);
    sees("wrong hand", open);
    ObjectNode folded = marker("lengthwise fold", 200, "folded", 200, 2);
    lay(folded, "pair", false, 0, 0, 0);
    sees("wrong hand", folded);
  }

  @Test
  void overlapsGapsAndStrayingAreSeen() {
    lay(open, "whole", false, 0, 0, 0);
    lay(open, "whole", false, 0, 0, 121);
    sees("only 1.0", open);
    ObjectNode over = marker("open", 200, "open", 400, 1);
    lay(over, "whole", false, 0, 0, 0);
    lay(over, "whole", false, 0, 0, 119);
    sees("takes cloth of", over);
    ObjectNode beyond = marker("open", 200, "open", 400, 1);
    lay(beyond, "whole", false, 0, 0, 0);
    lay(beyond, "whole", false, 0, 0, 281);
    sees("lies beyond the cloth", beyond);
    sees("sticks out of its zone", beyond);
  }

  @Test
  void headingGrainNumberAndDrawingAreSeen() {
    lay(open, "whole", false, 0, 0, 0);
    lay(open, "whole", false, 180, 200, 250);
    sees("head both ways", open);
    lay(open, "whole", false, 5, 0, 250);
    sees("off its grain", open);
    sees("cut 3 times", open);
    ((ObjectNode) open.get("copies").get(0)).put("x", 3);
    sees("not drawn like the others", open);
    open.put("length", 100);
    sees("mm long", open);
  }

  @Test
  void flawsAreSeenOnEitherPly() {
    ObjectNode flawed = marker("open", 402, "open", 400, 1);
    lay(flawed, "whole", false, 0, 0, 0);
    lay(flawed, "whole", false, 0, 202, 270);
    sees("flawed cloth", flawed);
    // Folded at 200, what lies at 100 on the table is at 300 on the ply that is turned over.
    ObjectNode folded = marker("lengthwise fold", 402, "folded", 200, 2);
    lay(folded, "pair", false, 0, 202, 75);
    sees("flawed cloth", folded);
  }

  @Test
  void whatIsCutOnTwoPliesTakesBoth() {
    ObjectNode folded = marker("part fold", 200, "folded", 150, 2);
    lay(folded, "pair", false, 0, 0, 20);
    ObjectNode single = folded.withArray("zones").addObject();
    single.put("id", "single").put("x0", 0).put("x1", 500).put("y0", 0).put("y1", 250);
    single.put("plies", 1).putArray("foldEdges");
    lay(folded, "whole", false, 0, 0, 20);
    ((ObjectNode) folded.get("copies").get(1)).put("zone", "single");
    sees("takes cloth of", folded);
  }
}
