package ellwand.file.alter;

import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.file.source.Measures;
import ellwand.file.source.Spot;
import ellwand.pattern.Alteration;
import ellwand.pattern.alter.Lengthen;
import java.util.List;
import java.util.Optional;

/** {@code {lengthen: 3 cm, at: hip}}, with {@code line: along the grain} to make it wider. */
final class LengthenForm implements StepForm {

  private static final String ALONG = "along the grain";

  @Override
  public List<String> verbs() {
    return List.of("lengthen", "shorten");
  }

  @Override
  public List<String> details() {
    return List.of("at", "line");
  }

  @Override
  public Optional<Alteration> read(Spot step, String verb) {
    Optional<Double> by = step.get(verb).lengthAbove0();
    Optional<String> at = Details.text(step, "at", "at: waist side");
    boolean along = step.get("line").text().filter(ALONG::equals).isPresent();
    return by.isPresent() && at.isPresent()
        ? Optional.of(new Lengthen(verb.equals("shorten") ? -by.get() : by.get(), at.get(), along))
        : Optional.empty();
  }

  @Override
  public boolean write(Alteration alteration, ObjectNode into, Measures measures) {
    if (!(alteration instanceof Lengthen lengthen)) {
      return false;
    }
    into.set(
        lengthen.byMm() < 0 ? "shorten" : "lengthen", measures.number(Math.abs(lengthen.byMm())));
    into.put("at", lengthen.at());
    if (lengthen.alongGrain()) {
      into.put("line", ALONG);
    }
    return true;
  }
}
