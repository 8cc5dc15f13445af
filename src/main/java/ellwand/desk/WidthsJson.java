package ellwand.desk;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.app.CompareRun;
import ellwand.figures.Buying;
import ellwand.figures.Comparison;
import ellwand.figures.FoldTried;
import ellwand.file.source.Json;
import ellwand.job.Job;
import ellwand.units.Length;
import ellwand.units.Unit;
import ellwand.work.Effort;
import ellwand.work.Request;
import ellwand.work.Seed;
import java.util.List;
import java.util.Optional;

/** A cloth in its usual widths, as a page shows them. */
final class WidthsJson {

  /** Who looks at a chart waits no longer. */
  private static final double SECONDS = 8;

  private WidthsJson() {}

  static ArrayNode of(Job job, String cloth) {
    Unit unit = job.unit();
    Comparison comparison =
        CompareRun.of(job, Optional.of(cloth))
            .make(List.of(), unit, Request.of(Effort.ofSeconds(SECONDS), new Seed(1)))
            .comparison();
    ArrayNode widths = Json.object().arrayNode();
    for (Comparison.WidthTried row : comparison.rows()) {
      FoldTried tried = row.tried();
      ObjectNode one = widths.addObject();
      one.put("widthWords", new Length(row.widthMm()).show(unit));
      one.put("fold", tried.fold().words());
      if (tried.possible()) {
        one.set("toBuy", Json.number(tried.toBuyMm()));
        one.put("toBuyWords", Buying.shown(tried.toBuyMm(), unit));
        one.put("costWords", TableJson.money(row.cost(), row.cloth()));
      } else {
        one.put("reason", tried.reason());
      }
    }
    return widths;
  }
}
