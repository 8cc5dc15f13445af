package ellwand.file.alter;

import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.file.source.Measures;
import ellwand.file.source.Spot;
import ellwand.pattern.Alteration;
import ellwand.pattern.alter.OtherEdge;
import ellwand.pattern.alter.TrueLength;
import ellwand.pattern.alter.TrueRun;
import java.util.List;
import java.util.Optional;

/**
 * {@code {true: side seam, to: back.side seam, at: waist side}} for one length, {@code {true:
 * armhole, to: back.armhole, across: shoulder}} for a smooth run.
 */
final class TrueForm implements StepForm {

  @Override
  public List<String> verbs() {
    return List.of("true");
  }

  @Override
  public List<String> details() {
    return List.of("to", "at", "ease", "across");
  }

  @Override
  public Optional<Alteration> read(Spot step, String verb) {
    int before = step.problems().size();
    String edge = step.get(verb).text().orElseThrow();
    Optional<String> to = Details.text(step, "to", "to: back.side seam");
    List<String> across = Details.texts(step.get("across"));
    boolean run = step.get("across").present();
    if (run) {
      step.get("across")
          .holds(
              across.size() == 1 || across.size() == 2,
              "it takes the edge that is sewn, or two where they are called otherwise",
              "Write for example across: shoulder");
      for (String key : List.of("at", "ease")) {
        step.get(key)
            .holds(
                !step.get(key).present(),
                "a smooth run has no " + key + ":",
                "Take it out, or across:");
      }
    }
    double ease = step.get("ease").present() ? step.get("ease").length().orElse(0.0) : 0;
    if (step.problems().size() > before) {
      return Optional.empty();
    }
    OtherEdge other = OtherEdge.of(to.orElseThrow());
    return Optional.of(
        run
            ? new TrueRun(edge, across.get(0), other, across.get(across.size() - 1))
            : new TrueLength(edge, other, ease, step.get("at").text()));
  }

  @Override
  public boolean write(Alteration alteration, ObjectNode into, Measures measures) {
    if (alteration instanceof TrueRun run) {
      into.put("true", run.edge()).put("to", run.to().toString());
      Details.put(
          into,
          "across",
          run.across().equals(run.otherAcross())
              ? List.of(run.across())
              : List.of(run.across(), run.otherAcross()));
      return true;
    }
    if (!(alteration instanceof TrueLength length)) {
      return false;
    }
    into.put("true", length.edge()).put("to", length.to().toString());
    length.at().ifPresent(at -> into.put("at", at));
    if (length.easeMm() != 0) {
      into.set("ease", measures.number(length.easeMm()));
    }
    return true;
  }
}
