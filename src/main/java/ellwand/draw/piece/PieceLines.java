package ellwand.draw.piece;

import ellwand.cutting.CutPiece;
import ellwand.draw.sheet.Colour;
import ellwand.draw.sheet.Ink;
import ellwand.draw.sheet.Item;
import ellwand.draw.sheet.Reading;
import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The lines of one piece in its place. */
public final class PieceLines {

  /** Widths and lengths on paper, mm. */
  private static final double CUTTING = 0.5;

  private static final double THIN = 0.2;
  private static final double NOTCH = 0.45;
  private static final double SHORTEST_NOTCH = 1.3;
  private static final double FOLD = 0.9;
  private static final double HEAD = 1.8;

  private final Reading reading;

  public PieceLines(Reading reading) {
    this.reading = reading;
  }

  /**
   * The cutting line, filled; along a fold nothing is cut, so no line is drawn there.
   *
   * @param fold where the piece lies on a fold
   */
  public List<Item> cutting(Outline outline, Optional<CutPiece.Stroke> fold, Colour fill) {
    Ink heavy = Ink.line(Colour.INK, reading.mm(CUTTING));
    if (fold.isEmpty()) {
      return List.of(
          Item.Lines.closed("outline cutting-line", heavy.filled(fill), outline.points()));
    }
    return List.of(
        Item.Lines.closed("outline", Ink.area(fill), outline.points()),
        new Item.Lines("cutting-line", offFold(outline.points(), fold.get()), false, heavy));
  }

  /** The stretches of a closed line that do not lie along a fold. */
  public static List<List<Point>> offFold(List<Point> ring, CutPiece.Stroke fold) {
    List<List<Point>> stretches = new ArrayList<>();
    List<Point> stretch = new ArrayList<>();
    int n = ring.size();
    int start = 0;
    while (start < n && !onFold(ring.get(start), ring.get((start + 1) % n), fold)) {
      start++;
    }
    for (int i = 1; i <= n; i++) {
      Point a = ring.get((start + i) % n);
      Point b = ring.get((start + i + 1) % n);
      if (!onFold(a, b, fold)) {
        if (stretch.isEmpty()) {
          stretch.add(a);
        }
        stretch.add(b);
      } else if (!stretch.isEmpty()) {
        stretches.add(stretch);
        stretch = new ArrayList<>();
      }
    }
    if (!stretch.isEmpty()) {
      stretches.add(stretch);
    }
    return stretches;
  }

  private static boolean onFold(Point a, Point b, CutPiece.Stroke fold) {
    Point along = fold.to().minus(fold.from()).unit();
    return Math.abs(along.cross(a.minus(fold.from()))) < 0.01
        && Math.abs(along.cross(b.minus(fold.from()))) < 0.01;
  }

  /** Sewing line, inner lines and notches. */
  public List<Item> inside(CutPiece cut) {
    List<Item> items = new ArrayList<>();
    items.add(Item.Lines.closed("sewing-line", dashed(1.2, 0.8), cut.sewing().points()));
    items.addAll(marks(cut, cut.notches()));
    return items;
  }

  /**
   * Inner lines, and notches where they are given.
   *
   * @param notches each a stroke from the line that is cut along
   */
  List<Item> marks(CutPiece cut, List<CutPiece.Stroke> notches) {
    List<Item> items = new ArrayList<>();
    if (!cut.innerLines().isEmpty()) {
      items.add(
          new Item.Lines(
              "inner-line",
              cut.innerLines().stream().map(CutPiece.Drawn::points).toList(),
              false,
              dashed(2.4, 0.8)));
    }
    if (!notches.isEmpty()) {
      items.add(
          new Item.Lines(
              "notch",
              notches.stream().map(this::seen).toList(),
              false,
              Ink.line(Colour.INK, reading.mm(NOTCH))));
    }
    return items;
  }

  private Ink dashed(double on, double off) {
    return Ink.line(Colour.GREY, reading.mm(THIN), reading.mm(on), reading.mm(off));
  }

  /** A notch, drawn longer than it is cut where it would not be seen. */
  private List<Point> seen(CutPiece.Stroke notch) {
    double length = notch.from().distance(notch.to());
    double shown = Math.max(length, reading.mm(SHORTEST_NOTCH));
    return List.of(notch.from(), notch.from().towards(notch.to(), shown / length));
  }

  /** A fold edge: heavy, dash and dot. */
  public Item fold(Point from, Point to) {
    return Item.Lines.open("fold-edge", foldInk(), from, to);
  }

  Ink foldInk() {
    return Ink.line(
        Colour.INK,
        reading.mm(FOLD),
        reading.mm(5),
        reading.mm(1.8),
        reading.mm(0.1),
        reading.mm(1.8));
  }

  /** The grain arrow with a head at the top, and one at the other end where the cloth allows. */
  public List<Item> arrow(Optional<Labelling.Arrow> arrow, boolean oneHeaded) {
    return arrow.map(a -> arrow("grain-line", a, oneHeaded)).orElse(List.of());
  }

  /** The same with one head, which says to who reads it back where the top of the piece is. */
  List<Item> topArrow(Labelling.Arrow arrow) {
    return arrow("top-arrow", arrow, true);
  }

  private List<Item> arrow(String kind, Labelling.Arrow arrow, boolean oneHeaded) {
    Point tail = arrow.tail();
    Point head = arrow.head();
    Point along = head.minus(tail).unit();
    double size = reading.mm(HEAD);
    List<List<Point>> heads = new ArrayList<>();
    heads.add(arrowHead(head, along, size));
    Point shaftStart = tail;
    if (!oneHeaded) {
      heads.add(arrowHead(tail, along.times(-1), size));
      shaftStart = tail.plus(along.times(size * 0.8));
    }
    Ink shaft = Ink.line(Colour.INK, reading.mm(0.3));
    return List.of(
        Item.Lines.open(kind, shaft, shaftStart, head.minus(along.times(size * 0.8))),
        new Item.Lines("grain-head", heads, true, Ink.area(Colour.INK)));
  }

  private static List<Point> arrowHead(Point tip, Point along, double size) {
    Point back = tip.minus(along.times(size));
    Point aside = along.left().times(size * 0.38);
    return List.of(tip, back.plus(aside), back.minus(aside));
  }
}
