package ellwand.app;

import ellwand.draw.piece.PaperPiece;
import ellwand.draw.tiles.FullSize.Ground;
import ellwand.draw.tiles.PrintPaper;
import ellwand.problem.InputException;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * How something is to be printed full size.
 *
 * @param paper empty for a projector that needs none
 * @param sizes of the pieces; where there are none, those of the order
 * @param lines of the pieces
 * @param projector one unbroken page with heavy lines
 * @param ground of that page
 */
public record Printing(
    Optional<PrintPaper> paper,
    List<String> sizes,
    PaperPiece.Lines lines,
    boolean projector,
    Ground ground) {

  public Printing {
    sizes = List.copyOf(sizes);
    if (projector && paper.isPresent() && !paper.get().isRoll()) {
      throw InputException.of(
          "a projector shows one unbroken page, and " + paper.get().name() + " would be several",
          "Leave the paper out, or say how wide the page may be: roll:120cm");
    }
    if (!projector && paper.isEmpty()) {
      throw InputException.of("no paper is named", "Name it, such as A4 or roll:91cm");
    }
    if (!projector && ground == Ground.DARK) {
      throw InputException.of(
          "a dark ground is for a projector, and would use up the ink on paper",
          "Leave the ground out");
    }
  }

  /**
   * As people write it.
   *
   * @throws InputException if a word is not known
   */
  public static Printing of(
      Optional<String> paper, List<String> sizes, String lines, boolean projector, String ground) {
    return new Printing(
        paper.map(PrintPaper::parse),
        sizes,
        word(lines, PaperPiece.Lines.values()),
        projector,
        word(ground, Ground.values()));
  }

  private static <E extends Enum<E>> E word(String text, E[] words) {
    return Arrays.stream(words)
        .filter(w -> w.name().equalsIgnoreCase(text.strip()))
        .findFirst()
        .orElseThrow(
            () ->
                InputException.of(
                    "'" + text + "' is not known here",
                    "Use "
                        + Arrays.stream(words)
                            .map(w -> w.name().toLowerCase(Locale.ROOT))
                            .collect(Collectors.joining(", "))));
  }
}
