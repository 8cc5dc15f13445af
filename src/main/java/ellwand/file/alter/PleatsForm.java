package ellwand.file.alter;

import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.file.source.Measures;
import ellwand.file.source.Spot;
import ellwand.pattern.Alteration;
import ellwand.pattern.alter.Pleats;
import ellwand.pattern.alter.Reach;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** {@code {pleats: 3, on: waist, depth: 2 cm, kind: knife, folded towards: side}}, or tucks. */
final class PleatsForm implements StepForm {

  @Override
  public List<String> verbs() {
    return List.of("pleats", "tucks");
  }

  @Override
  public List<String> details() {
    return List.of("on", "depth", "kind", "at", "spacing", "long", DartForm.FOLDED);
  }

  @Override
  public Optional<Alteration> read(Spot step, String verb) {
    boolean tucks = verb.equals("tucks");
    int before = step.problems().size();
    Optional<String> edge = Details.text(step, "on", "on: waist");
    Optional<Double> depth = Details.lengthAbove0(step, "depth", "depth: 2 cm");
    Optional<String> kind = kind(step, tucks);
    Optional<Reach> at =
        step.get("at").present() ? Details.reach(step, "at", "at: 4 cm") : Optional.empty();
    Optional<Double> spacing = step.get("spacing").lengthAbove0();
    Optional<Double> length = step.get("long").lengthAbove0();
    if (step.problems().size() > before) {
      return Optional.empty();
    }
    return step.attempt(
        () ->
            new Pleats(
                Pleats.Kind.valueOf(kind.orElseThrow().toUpperCase(Locale.ROOT)),
                edge.orElseThrow(),
                step.get(verb).node().asInt(),
                depth.orElseThrow(),
                at,
                spacing,
                length,
                step.get(DartForm.FOLDED).text()));
  }

  private static Optional<String> kind(Spot step, boolean tucks) {
    if (!tucks) {
      return Details.text(step, "kind", "kind: knife");
    }
    step.get("kind")
        .holds(
            !step.get("kind").present(),
            "a tuck is folded to one side",
            "Take kind: out, or write pleats: in place of tucks:");
    return Optional.of("tuck");
  }

  @Override
  public boolean write(Alteration alteration, ObjectNode into, Measures measures) {
    if (!(alteration instanceof Pleats pleats)) {
      return false;
    }
    boolean tucks = pleats.kind() == Pleats.Kind.TUCK;
    into.put(tucks ? "tucks" : "pleats", pleats.number()).put("on", pleats.edge());
    into.set("depth", measures.number(pleats.depthMm()));
    if (!tucks) {
      into.put("kind", pleats.kind().name().toLowerCase(Locale.ROOT));
    }
    pleats.at().ifPresent(at -> into.set("at", Details.written(at, measures)));
    pleats.spacingMm().ifPresent(mm -> into.set("spacing", measures.number(mm)));
    pleats.longMm().ifPresent(mm -> into.set("long", measures.number(mm)));
    pleats.foldedTowards().ifPresent(mark -> into.put(DartForm.FOLDED, mark));
    return true;
  }
}
