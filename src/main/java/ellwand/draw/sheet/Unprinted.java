package ellwand.draw.sheet;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Words of which a PDF, and the PNG that is made from one, cannot show every letter. */
public final class Unprinted {

  private Unprinted() {}

  /** Names them and says where they can be read; nothing if all can be printed. */
  public static Optional<String> caution(Stream<String> words) {
    List<String> lacking =
        words
            .map(Lettering::clean)
            .filter(w -> !Lettering.printable(w).equals(w))
            .distinct()
            .toList();
    return lacking.isEmpty()
        ? Optional.empty()
        : Optional.of(
            lacking.stream()
                .collect(
                    Collectors.joining(
                        ", ",
                        "PDF and PNG show question marks for letters that are not Latin, Greek or"
                            + " Cyrillic; read these in the SVG: ",
                        ".")));
  }
}
