package ellwand.file.alter;

import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.file.source.Measures;
import ellwand.file.source.Spot;
import ellwand.pattern.Alteration;
import ellwand.pattern.alter.Extend;
import java.util.List;
import java.util.Optional;

/** {@code {extend: centre front, by: 2 cm, ends: mirrored}}. */
final class ExtendForm implements StepForm {

  @Override
  public List<String> verbs() {
    return List.of("extend");
  }

  @Override
  public List<String> details() {
    return List.of("by", "ends");
  }

  @Override
  public Optional<Alteration> read(Spot step, String verb) {
    Extend.Ends ends =
        step.get("ends").text().filter("mirrored"::equals).isPresent()
            ? Extend.Ends.MIRRORED
            : Extend.Ends.SQUARE;
    return Details.lengthAbove0(step, "by", "by: 2 cm")
        .map(by -> new Extend(step.get(verb).text().orElseThrow(), by, ends));
  }

  @Override
  public boolean write(Alteration alteration, ObjectNode into, Measures measures) {
    if (!(alteration instanceof Extend extend)) {
      return false;
    }
    into.put("extend", extend.edge()).set("by", measures.number(extend.byMm()));
    if (extend.ends() == Extend.Ends.MIRRORED) {
      into.put("ends", "mirrored");
    }
    return true;
  }
}
