package ellwand.file.pdf;

import ellwand.file.drawn.Label;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The layers of a PDF, which are the same on all of its pages. */
final class Layers {

  private final Label whole =
      new Label(Optional.empty(), List.of(), Optional.empty(), Optional.empty(), 0);
  private final Map<String, Label> byName = new HashMap<>();

  /** What lies in no layer. */
  Label whole() {
    return whole;
  }

  Label called(String name) {
    return byName.computeIfAbsent(name, n -> in(whole, Optional.of(n)));
  }

  /** A line, or several, perhaps with a word of what it is. */
  static Label in(Label layer, Optional<String> word) {
    return new Label(word, List.of(), Optional.empty(), Optional.of(layer), 0);
  }
}
