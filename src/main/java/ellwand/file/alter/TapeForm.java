package ellwand.file.alter;

import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.file.source.Measures;
import ellwand.file.source.Spot;
import ellwand.pattern.Alteration;
import ellwand.pattern.alter.OtherEdge;
import ellwand.pattern.alter.TapeTogether;
import java.util.List;
import java.util.Optional;

/** {@code {tape together: [shoulder, back.shoulder]}}. */
final class TapeForm implements StepForm {

  @Override
  public List<String> verbs() {
    return List.of("tape together");
  }

  @Override
  public List<String> details() {
    return List.of("part", "ends");
  }

  @Override
  public Optional<Alteration> read(Spot step, String verb) {
    List<String> edges = Details.texts(step.get(verb));
    Optional<OtherEdge> other =
        edges.size() == 2 ? Optional.of(OtherEdge.of(edges.get(1))) : Optional.empty();
    return step.get(verb)
            .holds(
                other.flatMap(OtherEdge::piece).isPresent() && !edges.get(0).contains("."),
                "it is not said which edge is taped to which",
                "Write an edge of this piece and piece.edge, for example [shoulder, back.shoulder]")
        ? Optional.of(
            new TapeTogether(
                edges.get(0),
                other.get().piece().orElseThrow(),
                step.get("part").text(),
                other.get().edge(),
                step.get("ends").text().filter("crossed"::equals).isPresent()))
        : Optional.empty();
  }

  @Override
  public boolean write(Alteration alteration, ObjectNode into, Measures measures) {
    if (!(alteration instanceof TapeTogether tape)) {
      return false;
    }
    into.putArray("tape together").add(tape.edge()).add(tape.piece() + "." + tape.otherEdge());
    tape.part().ifPresent(part -> into.put("part", part));
    if (tape.crossed()) {
      into.put("ends", "crossed");
    }
    return true;
  }
}
