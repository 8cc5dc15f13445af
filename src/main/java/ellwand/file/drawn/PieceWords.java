package ellwand.file.drawn;

import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.file.source.Json;
import ellwand.file.source.Source;
import ellwand.file.source.Tree;
import ellwand.problem.InputException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What stands with the lines of a piece: entries as in a job's piece, or sentences. */
public final class PieceWords {

  private PieceWords() {}

  /** The entries of the nearest label that has any. */
  static ObjectNode entries(List<Label> labels) {
    return labels.stream()
        .flatMap(l -> l.words().flatMap(PieceWords::entries).stream())
        .findFirst()
        .orElseGet(Json::object);
  }

  /** A text that is a list of entries, as tree; nothing if it is none. */
  public static Optional<ObjectNode> entries(String text) {
    try {
      Tree tree = Tree.ofYaml(new Source("", text.getBytes(StandardCharsets.UTF_8), text));
      return tree.root() instanceof ObjectNode entries ? Optional.of(entries) : Optional.empty();
    } catch (InputException e) {
      return Optional.empty();
    }
  }

  /** All that is written in and at a piece. */
  static List<String> sentences(Parts parts) {
    List<String> sentences = new ArrayList<>();
    for (Label label : parts.labels()) {
      label.name().ifPresent(sentences::add);
      label.words().ifPresent(sentences::add);
      label.kinds().stream().map(k -> k.replace('-', ' ')).forEach(sentences::add);
    }
    parts.texts().forEach(t -> sentences.add(t.words()));
    return sentences;
  }
}
