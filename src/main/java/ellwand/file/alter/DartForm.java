package ellwand.file.alter;

import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.file.source.Measures;
import ellwand.file.source.Names;
import ellwand.file.source.Spot;
import ellwand.pattern.Alteration;
import ellwand.pattern.alter.DrawDart;
import ellwand.pattern.alter.Reach;
import java.util.List;
import java.util.Optional;

/** {@code {dart: waist dart, on: waist, at: 1/2, width: 2 cm, depth: 9 cm, folded towards: ..}}. */
final class DartForm implements StepForm {

  static final String FOLDED = "folded towards";

  @Override
  public List<String> verbs() {
    return List.of("dart");
  }

  @Override
  public List<String> details() {
    return List.of("on", "at", "width", "depth", "point", FOLDED);
  }

  @Override
  public Optional<Alteration> read(Spot step, String verb) {
    String name = step.get(verb).text().orElse("");
    Names.check(step.get(verb), name);
    Optional<String> edge = Details.text(step, "on", "on: waist");
    Optional<Reach> at = Details.reach(step, "at", "at: 1/2");
    Optional<Double> width = Details.lengthAbove0(step, "width", "width: 2 cm");
    boolean deep = step.get("depth").present();
    Optional<Double> depth = deep ? step.get("depth").lengthAbove0() : Optional.empty();
    Optional<String> folded = Details.text(step, FOLDED, FOLDED + ": waist middle");
    if (edge.isEmpty()
        || at.isEmpty()
        || width.isEmpty()
        || folded.isEmpty()
        || deep && depth.isEmpty()) {
      return Optional.empty();
    }
    return step.attempt(
        () ->
            new DrawDart(
                name,
                edge.get(),
                at.get(),
                width.get(),
                depth,
                step.get("point").text(),
                folded.get()));
  }

  @Override
  public boolean write(Alteration alteration, ObjectNode into, Measures measures) {
    if (!(alteration instanceof DrawDart dart)) {
      return false;
    }
    into.put("dart", dart.name()).put("on", dart.edge());
    into.set("at", Details.written(dart.at(), measures));
    into.set("width", measures.number(dart.widthMm()));
    dart.depthMm().ifPresent(mm -> into.set("depth", measures.number(mm)));
    dart.point().ifPresent(mark -> into.put("point", mark));
    into.put(FOLDED, dart.foldedTowards());
    return true;
  }
}
