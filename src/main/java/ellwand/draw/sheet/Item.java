package ellwand.draw.sheet;

import ellwand.geometry.Box;
import ellwand.geometry.Motion;
import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Something drawn; mm, y up. */
public sealed interface Item permits Item.Group, Item.Lines, Item.Text {

  /**
   * Things that belong together.
   *
   * @param id unique in the drawing, letters, digits and hyphens
   * @param kind what it is, one word or words with hyphens
   * @param title said to those who point at it, if anything
   * @param number of a copy, which stands on every part of it; nothing else has one
   */
  record Group(
      String id, String kind, Optional<String> title, Optional<Integer> number, List<Item> items)
      implements Item {

    /** The kind of what can be shown or hidden by itself. */
    static final String LAYER = "layer";

    /** The kind of what belongs to the pages, not to what is drawn. */
    static final String FURNITURE = "page-furniture";

    public Group {
      title = title.map(Lettering::clean);
      items = List.copyOf(items);
    }

    public static Group of(String id, List<Item> items) {
      return new Group(id, id, Optional.empty(), Optional.empty(), items);
    }

    public static Group titled(String id, String kind, String title, List<Item> items) {
      return new Group(id, kind, Optional.of(title), Optional.empty(), items);
    }

    /**
     * What can be shown or hidden by itself.
     *
     * @param name of the layer
     */
    public static Group layer(String id, String name, List<Item> items) {
      return titled(id, LAYER, name, items);
    }

    /** What belongs to the pages, such as marks to join them by. */
    public static Group furniture(String id, List<Item> items) {
      return new Group(id, FURNITURE, Optional.empty(), Optional.empty(), items);
    }

    /** The same with other things in it. */
    public Group with(List<Item> others) {
      return new Group(id, kind, title, number, others);
    }

    /** The same under another id. */
    Group called(String other) {
      return new Group(other, kind, title, number, items);
    }
  }

  /**
   * Lines drawn with one ink.
   *
   * @param kind what they are
   * @param lines each of two points or more
   * @param closed whether each comes back to its first point
   */
  record Lines(String kind, List<List<Point>> lines, boolean closed, Ink ink) implements Item {

    public Lines {
      lines = lines.stream().map(List::copyOf).toList();
    }

    public static Lines open(String kind, Ink ink, Point... points) {
      return new Lines(kind, List.of(List.of(points)), false, ink);
    }

    public static Lines closed(String kind, Ink ink, List<Point> points) {
      return new Lines(kind, List.of(points), true, ink);
    }
  }

  /**
   * One line of words.
   *
   * @param at on the base line: its start, middle or end
   * @param sizeMm height of the type (its em)
   * @param turnDegrees counter-clockwise about {@code at}
   * @param strong drawn heavier
   */
  record Text(
      String kind,
      String words,
      Point at,
      double sizeMm,
      Anchor anchor,
      double turnDegrees,
      boolean strong,
      Colour colour)
      implements Item {

    public Text {
      words = Lettering.clean(words);
    }

    public static Text of(String kind, String words, Point at, double sizeMm, Anchor anchor) {
      return new Text(kind, words, at, sizeMm, anchor, 0, false, Colour.INK);
    }

    public Text strongly() {
      return new Text(kind, words, at, sizeMm, anchor, turnDegrees, true, colour);
    }

    public Text turned(double degrees) {
      return new Text(kind, words, at, sizeMm, anchor, degrees, strong, colour);
    }

    public Text in(Colour other) {
      return new Text(kind, words, at, sizeMm, anchor, turnDegrees, strong, other);
    }

    /** Measured in the type that the PDF carries, mm. */
    public double widthMm() {
      return Lettering.width(words, sizeMm);
    }

    /** What the letters cover, those that hang below the line included. */
    public Box box() {
      double before = -widthMm() * anchor.share();
      Box flat = new Box(before, -sizeMm * Lettering.DESCENT, before + widthMm(), sizeMm * 0.75);
      return Outline.of(flat).moved(new Motion(false, turnDegrees, at.x(), at.y())).box();
    }
  }

  /** All words among things drawn. */
  static Stream<Text> texts(List<Item> items) {
    return items.stream()
        .flatMap(
            item ->
                item instanceof Group group
                    ? texts(group.items())
                    : item instanceof Text text ? Stream.of(text) : Stream.empty());
  }

  /** Which part of a line of words stands at its place. */
  enum Anchor {
    START(0),
    MIDDLE(0.5),
    END(1);

    private final double share;

    Anchor(double share) {
      this.share = share;
    }

    /** The share of the width that lies before the place. */
    double share() {
      return share;
    }
  }
}
