package ellwand.file.figures;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.figures.EdgeLength;
import ellwand.file.source.Json;
import ellwand.problem.Problem;
import ellwand.rule.Finding;
import ellwand.units.Unit;
import java.util.List;

/** Writes what a check found as JSON. */
public final class CheckWriter {

  private CheckWriter() {}

  /**
   * What is wrong with a job or with a file, and what is to be known of a job where nothing is.
   *
   * @param notes how its pieces come about, one sentence each
   * @param cautions what its maker should look at, one sentence each
   */
  public static byte[] problems(List<Problem> problems, List<String> notes, List<String> cautions) {
    return Json.bytes(root(problems, notes, cautions));
  }

  /**
   * What is to be known of a job in which nothing is wrong.
   *
   * @param lengths of its edges when sewn, mm; left out where there are none
   */
  public static byte[] job(List<String> notes, List<String> cautions, List<EdgeLength> lengths) {
    ObjectNode root = root(List.of(), notes, cautions);
    if (!lengths.isEmpty()) {
      ArrayNode list = root.putArray("lengths");
      for (EdgeLength length : lengths) {
        ObjectNode node = list.addObject();
        node.put("size", length.size());
        node.put("piece", length.piece());
        node.put("edge", length.edge());
        node.set("sewnMm", Json.number(length.mm()));
        node.put("half", length.half());
      }
    }
    return Json.bytes(root);
  }

  private static ObjectNode root(
      List<Problem> problems, List<String> notes, List<String> cautions) {
    ObjectNode root = Json.object();
    ArrayNode list = root.putArray("problems");
    for (Problem problem : problems) {
      ObjectNode node = list.addObject();
      node.put("file", problem.file().orElse(null));
      node.put("line", problem.line() > 0 ? problem.line() : null);
      node.put("piece", problem.piece().orElse(null));
      node.put("edge", problem.edge().orElse(null));
      node.put("what", problem.what());
      node.put("remedy", problem.remedy());
    }
    notes.forEach(root.putArray("notes")::add);
    cautions.forEach(root.putArray("cautions")::add);
    return root;
  }

  /**
   * Which hard rules a marker breaks and where on the laid cloth, in mm.
   *
   * @param jobChanged since the marker was made
   * @param unit that sentences show lengths in
   */
  public static byte[] findings(List<Finding> findings, boolean jobChanged, Unit unit) {
    ObjectNode root = Json.object();
    ArrayNode list = root.putArray("findings");
    for (Finding finding : findings) {
      ObjectNode node = list.addObject();
      node.put("rule", finding.rule().id());
      finding.pieces().forEach(node.putArray("pieces")::add);
      finding.copies().forEach(node.putArray("copies")::add);
      node.set("x", finding.place().map(p -> Json.number(p.x())).orElse(null));
      node.set("y", finding.place().map(p -> Json.number(p.y())).orElse(null));
      node.set("amount", Double.isFinite(finding.amount()) ? Json.number(finding.amount()) : null);
      node.put("unit", Json.word(finding.rule().unit()));
      node.put("sentence", finding.sentence(unit));
    }
    root.put("jobChanged", jobChanged);
    return Json.bytes(root);
  }
}
