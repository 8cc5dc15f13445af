package ellwand.desk;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.file.source.Json;
import ellwand.problem.Problem;
import java.util.List;

/** What is wrong with a job, so that a page can show it where it belongs. */
final class Problems {

  private Problems() {}

  static ArrayNode json(List<Problem> problems) {
    ArrayNode all = Json.object().arrayNode();
    for (Problem problem : problems) {
      ObjectNode one = all.addObject();
      one.put("line", problem.line());
      problem.piece().ifPresent(p -> one.put("piece", p));
      problem.edge().ifPresent(e -> one.put("edge", e));
      one.put("what", Asides.without(problem.what()));
      one.put("remedy", Asides.without(problem.remedy()));
    }
    return all;
  }
}
