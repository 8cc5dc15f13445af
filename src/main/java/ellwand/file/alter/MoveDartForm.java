package ellwand.file.alter;

import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.file.source.Measures;
import ellwand.file.source.Spot;
import ellwand.pattern.Alteration;
import ellwand.pattern.alter.MoveDart;
import java.util.List;
import java.util.Optional;

/** {@code {move dart: waist dart, to: shoulder middle, folded towards: neck}}. */
final class MoveDartForm implements StepForm {

  @Override
  public List<String> verbs() {
    return List.of("move dart");
  }

  @Override
  public List<String> details() {
    return List.of("to", DartForm.FOLDED);
  }

  @Override
  public Optional<Alteration> read(Spot step, String verb) {
    Optional<String> dart = step.get(verb).text();
    Optional<String> to = Details.text(step, "to", "to: shoulder middle");
    Optional<String> folded =
        Details.text(step, DartForm.FOLDED, DartForm.FOLDED + ": shoulder neck");
    return dart.isPresent() && to.isPresent() && folded.isPresent()
        ? Optional.of(new MoveDart(dart.get(), to.get(), folded.get()))
        : Optional.empty();
  }

  @Override
  public boolean write(Alteration alteration, ObjectNode into, Measures measures) {
    if (!(alteration instanceof MoveDart move)) {
      return false;
    }
    into.put("move dart", move.dart())
        .put("to", move.to())
        .put(DartForm.FOLDED, move.foldedTowards());
    return true;
  }
}
