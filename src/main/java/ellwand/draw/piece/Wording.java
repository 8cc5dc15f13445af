package ellwand.draw.piece;

import ellwand.draw.sheet.Lettering;
import ellwand.draw.sheet.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One way to letter a piece: the fewer words, the smaller the room that is needed.
 *
 * @param lines the first is drawn larger and heavier
 * @param points size of the other lines on paper
 * @param named whether the piece's name is among them
 */
public record Wording(List<String> lines, double points, boolean named) {

  /** How much larger the first line is. */
  private static final double HEAD = 1.2;

  /** Letters of a name that a label shows; tables show more. */
  private static final int LONGEST_NAME = 28;

  public Wording {
    lines = lines.stream().map(Lettering::clean).toList();
  }

  /**
   * From the most words to the fewest.
   *
   * @param number of the copy, or empty
   * @param size where it tells copies apart
   * @param name of the piece
   * @param main lines that are kept as long as possible
   * @param more lines that are left out first
   */
  public static List<Wording> choices(
      String number, Optional<String> size, String name, List<String> main, List<String> more) {
    String shortName =
        name.codePointCount(0, name.length()) <= LONGEST_NAME
            ? name
            : name.substring(0, name.offsetByCodePoints(0, LONGEST_NAME - 1)).strip() + "…";
    String head = number.isEmpty() ? shortName : number + " " + shortName;
    List<String> full = lines(head, main, more);
    List<String> some = lines(head, main, List.of());
    List<String> first = lines(head, main.subList(0, 1), List.of());
    List<String> oneLine = List.of(String.join(", ", lines(head, main, List.of())));
    List<Wording> choices = new ArrayList<>();
    choices.add(new Wording(full, 9, true));
    choices.add(new Wording(full, 8, true));
    choices.add(new Wording(some, 9, true));
    choices.add(new Wording(some, 8, true));
    choices.add(new Wording(some, 7, true));
    choices.add(new Wording(oneLine, 7, true));
    choices.add(new Wording(first, 8, true));
    choices.add(new Wording(first, 7, true));
    choices.add(new Wording(List.of(head), 8, true));
    choices.add(new Wording(List.of(head), 7, true));
    if (!number.isEmpty()) {
      size.ifPresent(s -> choices.add(new Wording(List.of(number, "(" + s + ")"), 7, false)));
      choices.add(new Wording(List.of(number), 9, false));
      choices.add(new Wording(List.of(number), 7, false));
    }
    return choices;
  }

  private static List<String> lines(String head, List<String> main, List<String> more) {
    List<String> lines = new ArrayList<>(List.of(head));
    lines.addAll(main);
    lines.addAll(more);
    return lines;
  }

  double size(int line, Reading reading) {
    return reading.points(line == 0 ? points * HEAD : points);
  }

  double width(Reading reading) {
    double width = 0;
    for (int i = 0; i < lines.size(); i++) {
      width = Math.max(width, Lettering.width(lines.get(i), size(i, reading)));
    }
    return width;
  }

  double height(Reading reading) {
    double height = 0;
    for (int i = 0; i < lines.size(); i++) {
      height += size(i, reading) * (i == 0 ? Lettering.CAPITALS : Lettering.LINE);
    }
    return height + size(lines.size() - 1, reading) * Lettering.DESCENT;
  }
}
