package ellwand.draw.photo;

import ellwand.draw.sheet.Colour;
import ellwand.draw.sheet.Drawing;
import ellwand.draw.sheet.Ink;
import ellwand.draw.sheet.Item;
import ellwand.draw.sheet.Lettering;
import ellwand.draw.sheet.SvgWriter;
import ellwand.geometry.Box;
import ellwand.geometry.Outline;
import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.trace.DrawnArrow;
import ellwand.trace.NamedEdge;
import ellwand.trace.Nick;
import ellwand.trace.PaperPiece;
import ellwand.trace.SharedCross;
import ellwand.trace.Straightened;
import ellwand.trace.TracedPaper;
import ellwand.trace.View;
import ellwand.units.Length;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A straightened photo with what was traced in it: the outline with its corners, edges and their
 * lengths, notches, how far off a place may be, and where and why that is too far; of scans that
 * were joined how each lies, and the crosses.
 */
public final class ControlPicture {

  /** Okabe & Ito, Color Universal Design (2008). */
  private static final Colour TRACED = new Colour(0x0072B2);

  private static final Colour NOTCH = new Colour(0xD55E00);

  private static final Colour GRAIN = new Colour(0x009E73);

  private static final Colour JOINED = new Colour(0xCC79A7);

  /** Of the longer side of what is shown. */
  private static final double LETTERS = 0.016;

  private final Straightened straight;
  private final List<TracedPaper> pieces;
  private final Unit unit;
  private final Box shown;
  private final double em;
  private final List<Item> items = new ArrayList<>();
  private final List<String> lines = new ArrayList<>();
  private int doubts;

  private ControlPicture(Straightened straight, List<TracedPaper> pieces, Unit unit) {
    this.straight = straight;
    this.pieces = pieces;
    this.unit = unit;
    Box all = pieces.get(0).rim().box();
    for (TracedPaper piece : pieces) {
      all = all.union(piece.rim().box());
    }
    if (!straight.crosses().isEmpty()) {
      for (View scan : straight.views()) {
        all = all.union(Box.around(scan.corners()));
      }
    }
    double longer = Math.max(all.length(), all.width());
    this.em = longer * LETTERS;
    this.shown = all.grown(longer * 0.08);
  }

  /**
   * The picture as SVG.
   *
   * @param pieces the one that was asked for, or all that may be meant, which are then numbered
   * @param title what stands over it
   * @param remarks further lines under it
   */
  public static byte[] svg(
      Straightened straight,
      List<TracedPaper> pieces,
      Unit unit,
      String title,
      List<String> remarks) {
    ControlPicture picture = new ControlPicture(straight, pieces, unit);
    Drawing drawing = picture.drawing(title, remarks);
    return SvgWriter.bytes(drawing, FadedPhoto.under(straight.picture(), picture.shown));
  }

  private Drawing drawing(String title, List<String> remarks) {
    if (!straight.crosses().isEmpty()) {
      scans();
    }
    for (TracedPaper piece : pieces) {
      draw(piece);
    }
    lines.addAll(remarks);
    double y = shown.minY() - 2 * em;
    for (String line : lines) {
      for (String part : Lettering.wrapped(line, em, shown.length())) {
        items.add(Item.Text.of("note", part, new Point(shown.minX(), y), em, Item.Anchor.START));
        y -= 1.5 * em;
      }
    }
    items.add(
        Item.Text.of(
                "title",
                title,
                new Point(shown.minX(), shown.maxY() + em),
                1.4 * em,
                Item.Anchor.START)
            .strongly());
    Box frame = new Box(shown.minX() - em, y, shown.maxX() + em, shown.maxY() + 3.5 * em);
    return new Drawing(title, frame, items);
  }

  /** The border of each scan, and by how much the crosses miss each other. */
  private void scans() {
    for (View scan : straight.views()) {
      items.add(Item.Lines.closed("scan", Ink.line(JOINED, em / 10), scan.corners()));
    }
    for (SharedCross cross : straight.crosses()) {
      circle("cross", cross.at(), em, JOINED);
      items.add(
          Item.Text.of(
              "cross",
              String.format(Locale.ROOT, "%.1f mm", cross.offMm()),
              cross.at().plus(new Point(1.2 * em, 0.5 * em)),
              em,
              Item.Anchor.START));
    }
  }

  private void draw(TracedPaper traced) {
    boolean several = pieces.size() > 1;
    PaperPiece piece = PaperPiece.of("", traced);
    Outline outline = Outline.of(traced.rim().even(em / 4).points());
    for (NamedEdge edge : piece.edges()) {
      List<Point> line = edge.path().flattened(0.1);
      items.add(new Item.Lines("traced", List.of(line), false, Ink.line(TRACED, em / 8)));
      if (!several) {
        items.add(length(edge));
      }
    }
    if (several) {
      Point at = outline.box().centre();
      items.add(
          Item.Text.of("number", String.valueOf(traced.number()), at, 4 * em, Item.Anchor.MIDDLE)
              .strongly());
      return;
    }
    for (int k = 0; k < piece.edges().size() && piece.edges().size() > 1; k++) {
      corner(piece.edges().get(k).path().start(), PaperPiece.corner(k), outline);
    }
    for (Nick nick : piece.nicks()) {
      items.add(Item.Lines.open("notch", Ink.line(NOTCH, em / 5), nick.mouth(), nick.tip()));
    }
    traced.arrow().filter(DrawnArrow::sure).ifPresent(this::grain);
    lines.add(
        String.format(
            Locale.ROOT,
            "%s x %s. A place is true to %.1f mm or better (95 of 100)%s.",
            new Length(outline.box().length()).show(unit),
            new Length(outline.box().width()).show(unit),
            traced.errorMm(),
            straight.sheets().isEmpty() ? "" : ", by how well the points of the sheets fit"));
    for (TracedPaper.Doubt doubt : traced.doubts()) {
      doubts++;
      ring(doubt.at());
      lines.add(doubts + ": " + doubt.what() + ". " + doubt.remedy() + ".");
    }
  }

  /** The arrow drawn on it, told from the pen's own line by its colour. */
  private void grain(DrawnArrow arrow) {
    items.add(Item.Lines.open("grain", Ink.line(GRAIN, em / 5), arrow.from(), arrow.to()));
    Point middle = arrow.from().towards(arrow.to(), 0.5);
    Point along = arrow.to().minus(arrow.from());
    double turn = Math.toDegrees(Math.atan2(along.y(), along.x()));
    boolean over = turn > 90.5 || turn <= -89.5;
    Point at = middle.plus(along.unit().left().times((over ? -0.5 : 0.5) * em));
    items.add(
        Item.Text.of("grain", "grain", at, em, Item.Anchor.MIDDLE)
            .turned(over ? turn + 180 : turn)
            .in(GRAIN));
  }

  private void circle(String kind, Point at, double radius, Colour colour) {
    List<Point> round = new ArrayList<>();
    for (int i = 0; i < 32; i++) {
      double turn = 2 * Math.PI * i / 32;
      round.add(at.plus(new Point(Math.cos(turn), Math.sin(turn)).times(radius)));
    }
    items.add(Item.Lines.closed(kind, Ink.line(colour, em / 4), round));
  }

  private void ring(Point at) {
    circle("doubt", at, 1.6 * em, NOTCH);
    items.add(
        Item.Text.of(
                "doubt",
                String.valueOf(doubts),
                at.plus(new Point(1.8 * em, em)),
                1.5 * em,
                Item.Anchor.START)
            .strongly()
            .in(NOTCH));
  }

  /** Its name and length inside, along it. */
  private Item length(NamedEdge edge) {
    Path path = edge.path();
    double mm = path.length();
    Path.Tangent middle = path.tangent(mm / 2);
    double turn = Math.toDegrees(Math.atan2(middle.direction().y(), middle.direction().x()));
    boolean over = turn > 90.5 || turn <= -89.5;
    Point at = middle.at().plus(middle.direction().left().times((over ? 1.3 : 0.5) * em));
    return Item.Text.of(
            "edge", edge.name() + "  " + new Length(mm).show(unit), at, em, Item.Anchor.MIDDLE)
        .turned(over ? turn + 180 : turn);
  }

  private void corner(Point at, String letter, Outline outline) {
    List<Point> dot = new ArrayList<>();
    for (int i = 0; i < 12; i++) {
      double turn = 2 * Math.PI * i / 12;
      dot.add(at.plus(new Point(Math.cos(turn), Math.sin(turn)).times(em / 4)));
    }
    items.add(Item.Lines.closed("corner", Ink.area(TRACED), dot));
    Point out = at.minus(outline.box().centre()).unit().times(1.3 * em);
    items.add(
        Item.Text.of(
                "corner",
                letter,
                at.plus(out).plus(new Point(0, -0.35 * em)),
                1.3 * em,
                Item.Anchor.MIDDLE)
            .strongly());
  }
}
