package ellwand.file.alter;

import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.file.source.Measures;
import ellwand.file.source.Spot;
import ellwand.pattern.Alteration;
import ellwand.pattern.alter.Unfold;
import java.util.List;
import java.util.Optional;

/** {@code {unfold: centre front}}. */
final class UnfoldForm implements StepForm {

  @Override
  public List<String> verbs() {
    return List.of("unfold");
  }

  @Override
  public List<String> details() {
    return List.of();
  }

  @Override
  public Optional<Alteration> read(Spot step, String verb) {
    return step.get(verb).text().map(Unfold::new);
  }

  @Override
  public boolean write(Alteration alteration, ObjectNode into, Measures measures) {
    if (!(alteration instanceof Unfold unfold)) {
      return false;
    }
    into.put("unfold", unfold.edge());
    return true;
  }
}
