package ellwand.file.alter;

import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.file.source.Measures;
import ellwand.file.source.Spot;
import ellwand.pattern.Alteration;
import ellwand.pattern.alter.Facing;
import java.util.List;
import java.util.Optional;

/** {@code {facing: [neckline, front edge], depth: 5 cm}}. */
final class FacingForm implements StepForm {

  @Override
  public List<String> verbs() {
    return List.of("facing");
  }

  @Override
  public List<String> details() {
    return List.of("depth");
  }

  @Override
  public Optional<Alteration> read(Spot step, String verb) {
    List<String> edges = Details.texts(step.get(verb));
    return step.get(verb)
            .holds(!edges.isEmpty(), "it is not said which edge", "Write for example neckline")
        ? Details.lengthAbove0(step, "depth", "depth: 5 cm").map(mm -> new Facing(edges, mm))
        : Optional.empty();
  }

  @Override
  public boolean write(Alteration alteration, ObjectNode into, Measures measures) {
    if (!(alteration instanceof Facing facing)) {
      return false;
    }
    Details.put(into, "facing", facing.edges());
    into.set("depth", measures.number(facing.depthMm()));
    return true;
  }
}
