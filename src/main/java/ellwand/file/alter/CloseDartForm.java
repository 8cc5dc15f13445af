package ellwand.file.alter;

import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.file.source.Measures;
import ellwand.file.source.Spot;
import ellwand.pattern.Alteration;
import ellwand.pattern.alter.CloseDart;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** {@code {close dart: waist dart, into: flare, to: hem middle}}, or into gathers over so much. */
final class CloseDartForm implements StepForm {

  @Override
  public List<String> verbs() {
    return List.of("close dart");
  }

  @Override
  public List<String> details() {
    return List.of("into", "to", "over");
  }

  @Override
  public Optional<Alteration> read(Spot step, String verb) {
    Optional<String> dart = step.get(verb).text();
    Optional<String> into = Details.text(step, "into", "into: flare");
    boolean over = step.get("over").present();
    Optional<Double> overMm = over ? step.get("over").lengthAbove0() : Optional.empty();
    if (dart.isEmpty() || into.isEmpty() || over && overMm.isEmpty()) {
      return Optional.empty();
    }
    return step.attempt(
        () ->
            new CloseDart(
                dart.get(),
                step.get("to").text(),
                CloseDart.Into.valueOf(into.get().toUpperCase(Locale.ROOT)),
                overMm));
  }

  @Override
  public boolean write(Alteration alteration, ObjectNode into, Measures measures) {
    if (!(alteration instanceof CloseDart close)) {
      return false;
    }
    into.put("close dart", close.dart()).put("into", close.into().name().toLowerCase(Locale.ROOT));
    close.to().ifPresent(to -> into.put("to", to));
    close.overMm().ifPresent(mm -> into.set("over", measures.number(mm)));
    return true;
  }
}
