package ellwand.file.drawn;

import ellwand.units.Unit;
import java.util.List;
import java.util.Optional;

/**
 * What a file draws, at true scale.
 *
 * @param file as the user gave it
 * @param title of the whole, if it has one
 * @param unit that its maker reckons in
 * @param grainDegrees how the grain of a piece runs on the page where no line says so,
 *     counter-clockwise from its x axis
 * @param words entries of a style that no line can hold, if it has any
 * @param said what of its reading its maker should know, one sentence each
 * @param sizes where its pieces are there in several; the lines are then those of one of them
 */
public record Drawing(
    String file,
    Optional<String> title,
    Unit unit,
    double grainDegrees,
    List<DrawnLine> lines,
    List<DrawnText> texts,
    Optional<String> words,
    List<String> said,
    Optional<DrawnSizes> sizes) {

  /** More points than any pattern has. */
  public static final int MOST_POINTS = 200_000;

  /** No point lies farther from the origin than this along either axis, mm: 100 m. */
  public static final double FARTHEST_MM = 100_000;

  public Drawing {
    lines = List.copyOf(lines);
    texts = List.copyOf(texts);
    said = List.copyOf(said);
  }

  /** One whose pieces are there in one size. */
  public Drawing(
      String file,
      Optional<String> title,
      Unit unit,
      double grainDegrees,
      List<DrawnLine> lines,
      List<DrawnText> texts,
      Optional<String> words,
      List<String> said) {
    this(file, title, unit, grainDegrees, lines, texts, words, said, Optional.empty());
  }

  /** The same with the lines that it has in another size. */
  Drawing with(List<DrawnLine> other) {
    return new Drawing(file, title, unit, grainDegrees, other, texts, words, said);
  }

  /** The same with the lines and words of these layers or groups only. */
  public Drawing only(List<String> layers) {
    return layers.isEmpty()
        ? this
        : new Drawing(
            file,
            title,
            unit,
            grainDegrees,
            lines.stream().filter(l -> layers.stream().anyMatch(l.label()::isUnder)).toList(),
            texts.stream().filter(t -> layers.stream().anyMatch(t.label()::isUnder)).toList(),
            words,
            said,
            sizes);
  }
}
