package ellwand.file.alter;

import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.file.source.Measures;
import ellwand.file.source.Names;
import ellwand.file.source.Spot;
import ellwand.pattern.Alteration;
import ellwand.pattern.alter.MarkPoint;
import ellwand.pattern.alter.MarkPoint.Where;
import ellwand.pattern.alter.Reach;
import ellwand.problem.Problem;
import java.util.List;
import java.util.Optional;

/** {@code {mark: new underarm, on: side seam, at: 2 cm}} and the other ways to measure. */
final class MarkForm implements StepForm {

  private static final String UP = "along the grain";
  private static final String LEFT = "across the grain";

  @Override
  public List<String> verbs() {
    return List.of("mark");
  }

  @Override
  public List<String> details() {
    return List.of(
        "on",
        "at",
        "from",
        "along",
        "by",
        "square to",
        "towards",
        "between",
        "where",
        "meets",
        UP,
        LEFT);
  }

  @Override
  public Optional<Alteration> read(Spot step, String verb) {
    String name = step.get(verb).text().orElse("");
    Names.check(step.get(verb), name);
    return where(step).map(where -> new MarkPoint(name, where));
  }

  private static Optional<Where> where(Spot step) {
    if (step.get("on").present()) {
      Optional<Reach> at = Details.reach(step, "at", "at: 1/2");
      String edge = step.get("on").text().orElseThrow();
      return at.map(
          r ->
              step.get("from")
                  .text()
                  .<Where>map(from -> new MarkPoint.Along(from, edge, r))
                  .orElseGet(() -> new MarkPoint.OnEdge(edge, r)));
    }
    if (step.get("between").present()) {
      List<String> ends = Details.texts(step.get("between"));
      Optional<Reach> at = Details.reach(step, "at", "at: 1/3");
      return step.get("between")
                  .holds(ends.size() == 2, "it needs two marks", "Write between: [one, other]")
              && at.isPresent()
          ? Details.share(step.get("at"))
              .map(share -> new MarkPoint.Between(ends.get(0), ends.get(1), share))
          : Optional.empty();
    }
    if (step.get("where").present()) {
      List<String> ends = Details.texts(step.get("where"));
      Optional<String> meets = Details.text(step, "meets", "meets: hem");
      return step.get("where")
                  .holds(ends.size() == 2, "it needs two marks", "Write where: [one, other]")
              && meets.isPresent()
          ? Optional.of(new MarkPoint.Meets(ends.get(0), ends.get(1), meets.get()))
          : Optional.empty();
    }
    if (!step.get("from").present()) {
      step.report(
          Problem.of(
              "it is not said where the mark is",
              "Write on: with at:, or from: with along:, square to: or towards:, or between:, or"
                  + " where: with meets:"));
      return Optional.empty();
    }
    return measured(step, step.get("from").text().orElseThrow());
  }

  private static Optional<Where> measured(Spot step, String from) {
    if (step.get(UP).present() || step.get(LEFT).present()) {
      Optional<Double> up = orNothing(step.get(UP));
      Optional<Double> left = orNothing(step.get(LEFT));
      return up.isPresent() && left.isPresent()
          ? Optional.of(new MarkPoint.ByGrain(from, up.get(), left.get()))
          : Optional.empty();
    }
    if (step.get("along").present()) {
      return Details.reach(step, "by", "by: -2 cm")
          .map(by -> new MarkPoint.Along(from, step.get("along").text().orElseThrow(), by));
    }
    if (step.get("square to").present()) {
      return Details.length(step, "by", "by: 2 cm")
          .map(by -> new MarkPoint.SquareTo(from, step.get("square to").text().orElseThrow(), by));
    }
    if (step.get("towards").present()) {
      return Details.length(step, "by", "by: 2 cm")
          .map(by -> new MarkPoint.Towards(from, step.get("towards").text().orElseThrow(), by));
    }
    step.report(
        Problem.of(
            "it is not said which way to measure from " + Names.shown(from),
            "Write along:, square to: or towards: with by:, or along the grain:"));
    return Optional.empty();
  }

  private static Optional<Double> orNothing(Spot spot) {
    return spot.present() ? spot.length() : Optional.of(0.0);
  }

  @Override
  public boolean write(Alteration alteration, ObjectNode into, Measures measures) {
    if (!(alteration instanceof MarkPoint mark)) {
      return false;
    }
    into.put("mark", mark.name());
    Where where = mark.where();
    if (where instanceof MarkPoint.OnEdge on) {
      into.put("on", on.edge()).set("at", Details.written(on.at(), measures));
    } else if (where instanceof MarkPoint.Along along) {
      into.put("from", along.from())
          .put("along", along.edge())
          .set("by", Details.written(along.by(), measures));
    } else if (where instanceof MarkPoint.SquareTo square) {
      into.put("from", square.from())
          .put("square to", square.edge())
          .set("by", measures.number(square.byMm()));
    } else if (where instanceof MarkPoint.Towards towards) {
      into.put("from", towards.from())
          .put("towards", towards.towards())
          .set("by", measures.number(towards.byMm()));
    } else if (where instanceof MarkPoint.Between between) {
      into.putArray("between").add(between.one()).add(between.other());
      into.set("at", Details.written(between.at(), measures));
    } else if (where instanceof MarkPoint.Meets meets) {
      into.putArray("where").add(meets.one()).add(meets.other());
      into.put("meets", meets.edge());
    } else if (where instanceof MarkPoint.ByGrain grain) {
      into.put("from", grain.from());
      into.set(UP, measures.number(grain.alongMm()));
      into.set(LEFT, measures.number(grain.acrossMm()));
    }
    return true;
  }
}
