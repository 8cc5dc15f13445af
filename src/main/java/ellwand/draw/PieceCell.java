package ellwand.draw;

import ellwand.cutting.CutPiece;
import ellwand.draw.Laid.GrainLine;
import ellwand.geometry.Box;
import ellwand.geometry.Motion;
import ellwand.geometry.Outline;
import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.geometry.Segment;
import ellwand.pattern.Cut;
import ellwand.pattern.Edge;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One piece by itself, its top up, with the names of its edges.
 *
 * @param box that it covers with all its words
 */
record PieceCell(String id, String title, Box box, List<Item> items) {

  /** Patterns are drawn with the top towards +x; people look at them with the top up. */
  private static final Motion TOP_UP = new Motion(false, 90, 0, 0);

  static PieceCell of(
      String id,
      CutPiece drawn,
      String style,
      String size,
      Colour fill,
      Reading reading,
      Shown shown) {
    CutPiece cut = drawn.moved(TOP_UP);
    PieceLines lines = new PieceLines(reading);
    List<Item> items = new ArrayList<>(lines.cutting(cut.cutting(), cut.fold(), fill));
    items.addAll(lines.inside(cut));
    cut.fold().ifPresent(f -> items.add(lines.fold(f.from(), f.to())));
    items.addAll(lettering(cut, GrainLine.of(drawn).moved(TOP_UP), style, size, lines, reading));
    EdgeNames names = new EdgeNames(reading, cut.cutting());
    for (Edge edge : cut.piece().edges()) {
      Path line = grown(edge.line(), drawn).moved(TOP_UP);
      names.name(words(edge, cut, shown), line, edge.allowanceMm());
    }
    items.addAll(names.items());
    Rectangle2D covered = names.covered();
    Box box = new Box(covered.getMinX(), covered.getMinY(), covered.getMaxX(), covered.getMaxY());
    return new PieceCell(id, drawn.name() + ", size " + size, box, items);
  }

  private static List<Item> lettering(
      CutPiece cut, GrainLine grain, String style, String size, PieceLines lines, Reading reading) {
    boolean allowance = cut.piece().edges().stream().anyMatch(e -> e.allowanceMm() > 0);
    List<String> main = new ArrayList<>(List.of("size " + size));
    for (Cut one : cut.piece().cuts()) {
      main.add(one.cloth() + ": cut " + one);
    }
    List<String> more = List.of(style, allowance ? "allowance included" : "no allowance");
    List<Wording> choices = Wording.choices("", cut.name(), main, more);
    List<List<Point>> avoid = cut.innerLines().stream().map(CutPiece.Drawn::points).toList();
    Labelling.Found found = new Labelling(reading, cut.sewing(), grain, avoid).place(choices);
    List<Item> items = new ArrayList<>(lines.arrow(found.arrow(), true));
    found.label().map(l -> l.items(reading)).ifPresent(items::addAll);
    return items;
  }

  private static String words(Edge edge, CutPiece cut, Shown shown) {
    if (cut.piece().fold().equals(Optional.of(edge.name()))) {
      return edge.name() + ": fold";
    }
    return edge.name() + " " + (edge.allowanceMm() > 0 ? shown.length(edge.allowanceMm()) : "0");
  }

  /** An edge as the piece is cut: stretched like it, where cloth shrinks after cutting. */
  private static Path grown(Path line, CutPiece cut) {
    List<Point> drawn = new ArrayList<>();
    cut.piece().edges().forEach(e -> drawn.addAll(e.line().flattened(0.05)));
    Box before = Outline.of(drawn).box();
    Box after = cut.sewing().box();
    double gx = after.length() / before.length();
    double gy = after.width() / before.width();
    List<Point> points =
        line.flattened(0.05).stream().map(p -> new Point(p.x() * gx, p.y() * gy)).toList();
    List<Segment> segments = new ArrayList<>();
    for (int i = 1; i < points.size(); i++) {
      segments.add(new Segment.Line(points.get(i - 1), points.get(i)));
    }
    return new Path(segments);
  }
}
