package ellwand.file.alter;

import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.file.source.Measures;
import ellwand.file.source.Spot;
import ellwand.pattern.Alteration;
import ellwand.pattern.alter.Spread;
import java.util.List;
import java.util.Optional;

/** {@code {spread: hem, to: waist, by: 12 cm, slashes: 4}}, or from one mark to another. */
final class SpreadForm implements StepForm {

  private static final String OTHER = "at the other end";

  @Override
  public List<String> verbs() {
    return List.of("spread");
  }

  @Override
  public List<String> details() {
    return List.of("to", "by", "slashes", OTHER);
  }

  @Override
  public Optional<Alteration> read(Spot step, String verb) {
    Optional<String> from = step.get(verb).text();
    Optional<String> to = Details.text(step, "to", "to: waist");
    Optional<Double> by = Details.lengthAbove0(step, "by", "by: 6 cm");
    boolean both = step.get(OTHER).present();
    Optional<Double> other = both ? step.get(OTHER).lengthFrom0() : Optional.of(0.0);
    if (from.isEmpty() || to.isEmpty() || by.isEmpty() || other.isEmpty()) {
      return Optional.empty();
    }
    int slashes = step.get("slashes").present() ? step.get("slashes").node().asInt() : 0;
    return step.attempt(() -> new Spread(from.get(), to.get(), by.get(), other.get(), slashes));
  }

  @Override
  public boolean write(Alteration alteration, ObjectNode into, Measures measures) {
    if (!(alteration instanceof Spread spread)) {
      return false;
    }
    into.put("spread", spread.from()).put("to", spread.to());
    into.set("by", measures.number(spread.byMm()));
    if (spread.otherMm() > 0) {
      into.set(OTHER, measures.number(spread.otherMm()));
    }
    if (spread.slashes() > 0) {
      into.put("slashes", spread.slashes());
    }
    return true;
  }
}
