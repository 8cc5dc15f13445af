package ellwand.draw.sheet;

import ellwand.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * A heading, if any, and sentences under it, broken to a width.
 *
 * @param kind what it is, for its group
 * @param heading may be empty
 * @param points size of the sentences on paper
 */
public record Paragraphs(
    String kind,
    String heading,
    List<String> sentences,
    double points,
    Colour colour,
    double widthMm,
    Reading reading)
    implements Block {

  private double size() {
    return reading.points(points);
  }

  private double line() {
    return size() * Lettering.LINE;
  }

  private boolean many() {
    return sentences.size() > 1;
  }

  private List<List<String>> broken() {
    double indent = many() ? size() : 0;
    return sentences.stream().map(s -> Lettering.wrapped(s, size(), widthMm - indent)).toList();
  }

  @Override
  public double heightMm() {
    int count = broken().stream().mapToInt(List::size).sum() + (heading.isEmpty() ? 0 : 1);
    return count * line();
  }

  @Override
  public List<Item> items(Point upperLeft) {
    List<Item> items = new ArrayList<>();
    double y = upperLeft.y() - size() * 0.9;
    if (!heading.isEmpty()) {
      items.add(
          Item.Text.of(kind, heading, new Point(upperLeft.x(), y), size(), Item.Anchor.START)
              .strongly());
      y -= line();
    }
    for (List<String> sentence : broken()) {
      double indent = many() ? size() : 0;
      if (many()) {
        items.add(at("–", upperLeft.x(), y));
      }
      for (String line : sentence) {
        items.add(at(line, upperLeft.x() + indent, y));
        y -= line();
      }
    }
    return items;
  }

  private Item at(String words, double x, double y) {
    return Item.Text.of(kind, words, new Point(x, y), size(), Item.Anchor.START).in(colour);
  }
}
