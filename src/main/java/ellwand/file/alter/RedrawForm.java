package ellwand.file.alter;

import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.file.source.Measures;
import ellwand.file.source.Spot;
import ellwand.pattern.Alteration;
import ellwand.pattern.alter.Manner;
import ellwand.pattern.alter.Redraw;
import java.util.List;
import java.util.Optional;

/** {@code {redraw: neckline, from: shoulder neck, to: v point, as: line}}. */
final class RedrawForm implements StepForm {

  @Override
  public List<String> verbs() {
    return List.of("redraw");
  }

  @Override
  public List<String> details() {
    return LineDetails.KEYS;
  }

  @Override
  public Optional<Alteration> read(Spot step, String verb) {
    int before = step.problems().size();
    List<String> edges = Details.texts(step.get(verb));
    step.holds(!edges.isEmpty(), "it is not said which edge", "Write for example redraw: hem");
    Optional<Manner> leaves = Details.manner(step.get("leaves"));
    Optional<Manner> arrives = Details.manner(step.get("arrives"));
    if (step.problems().size() > before) {
      return Optional.empty();
    }
    return step.attempt(
        () ->
            new Redraw(
                edges,
                step.get("from").text(),
                step.get("to").text(),
                Details.texts(step.get("through")),
                LineDetails.shape(step),
                leaves,
                arrives));
  }

  @Override
  public boolean write(Alteration alteration, ObjectNode into, Measures measures) {
    if (!(alteration instanceof Redraw redraw)) {
      return false;
    }
    Details.put(into, "redraw", redraw.edges());
    redraw.from().ifPresent(from -> into.put("from", from));
    redraw.to().ifPresent(to -> into.put("to", to));
    LineDetails.write(redraw.through(), redraw.shape(), redraw.leaves(), redraw.arrives(), into);
    return true;
  }
}
