package ellwand.draw.piece;

import ellwand.cutting.CutPiece;
import ellwand.draw.sheet.Colour;
import ellwand.draw.sheet.Item;
import ellwand.draw.sheet.Palette;
import ellwand.draw.sheet.Reading;
import ellwand.draw.sheet.Shown;
import ellwand.geometry.Box;
import ellwand.geometry.Motion;
import ellwand.geometry.Outline;
import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.geometry.Segment;
import ellwand.pattern.Edge;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** One piece by itself, its top up, with the names of its edges round it. */
final class PieceCell {

  /** Patterns are drawn with the top towards +x; people look at them with the top up. */
  private static final Motion TOP_UP = new Motion(false, 90, 0, 0);

  private static final double FLATTENING_MM = 0.05;

  private final CutPiece drawn;
  private final CutPiece cut;
  private final String kind;
  private final boolean lengths;
  private final String style;
  private final String size;
  private final Reading reading;
  private final EdgeNames names;
  private final Labelling.Lettered lettering;
  private final Labelling.Arrow arrow;

  /**
   * @param grain as drawn
   * @param kind its name, and its form where it has several
   * @param lengths whether it says how long edges are when sewn, and not their allowances
   */
  PieceCell(
      CutPiece drawn,
      GrainLine grain,
      String kind,
      String style,
      String size,
      Reading reading,
      Shown shown,
      boolean lengths) {
    this.lengths = lengths;
    this.drawn = drawn;
    this.kind = kind;
    this.cut = drawn.moved(TOP_UP);
    this.style = style;
    this.size = size;
    this.reading = reading;
    this.names = new EdgeNames(reading, cut.cutting());
    Labelling labelling =
        new Labelling(
            reading,
            cut.sewing(),
            grain.moved(TOP_UP),
            cut.innerLines().stream().map(CutPiece.Drawn::points).toList());
    this.lettering = labelling.place(wordings());
    this.arrow = lettering.arrow().orElseGet(() -> labelling.across(lettering.label()));
    names.keepOff(arrow.tail(), arrow.head());
    for (Edge edge : drawn.piece().edges()) {
      names.name(words(edge, shown), inPlace(edge), edge.allowanceMm());
    }
    if (lettering.label().isEmpty()) {
      Edge first = drawn.piece().edges().get(0);
      names.name(title(), inPlace(first), first.allowanceMm());
    }
  }

  String name() {
    return kind;
  }

  /** From which cloth it is cut and how, as far as its label has no room for it. */
  List<String> untold() {
    String told = lettering.label().map(l -> String.join(" ", l.wording().lines())).orElse("");
    return cuts().stream().allMatch(told::contains) ? List.of() : cuts();
  }

  private List<String> cuts() {
    return drawn.piece().cuts().stream().map(c -> c.cloth() + ": cut " + c).toList();
  }

  String title() {
    return kind + ", size " + size;
  }

  /** What it covers with the words round it. */
  Box box() {
    Rectangle2D covered = names.covered();
    return new Box(covered.getMinX(), covered.getMinY(), covered.getMaxX(), covered.getMaxY());
  }

  List<Item> items(Palette palette) {
    Colour fill = palette.fill(drawn.name());
    PieceLines lines = new PieceLines(reading);
    List<Item> items = new ArrayList<>(lines.cutting(cut.cutting(), cut.fold(), fill));
    items.addAll(palette.hatching(drawn.name(), cut.cutting().points(), reading));
    items.addAll(lines.inside(cut));
    cut.fold().ifPresent(f -> items.add(lines.fold(f.from(), f.to())));
    items.addAll(lines.arrow(Optional.of(arrow), true));
    lettering
        .label()
        .ifPresent(
            label -> {
              items.add(label.ground(fill, reading));
              items.addAll(label.items(reading));
            });
    items.addAll(names.items());
    return items;
  }

  private List<Wording> wordings() {
    List<String> main = new ArrayList<>(List.of("size " + size));
    main.addAll(cuts());
    boolean allowance = drawn.piece().edges().stream().anyMatch(e -> e.allowanceMm() > 0);
    return Wording.choices(
        "",
        Optional.empty(),
        drawn.name(),
        main,
        List.of(style, allowance ? "allowance included" : "no allowance"));
  }

  private String words(Edge edge, Shown shown) {
    if (lengths) {
      return edge.name() + " " + shown.length(edge.sewnMm());
    }
    if (drawn.piece().fold().equals(Optional.of(edge.name()))) {
      return edge.name() + ": fold";
    }
    return edge.name() + " " + (edge.allowanceMm() > 0 ? shown.length(edge.allowanceMm()) : "0");
  }

  /** An edge as the piece is cut: stretched like it, where cloth shrinks after cutting. */
  private Path inPlace(Edge edge) {
    List<Point> ring = new ArrayList<>();
    drawn.piece().edges().forEach(e -> ring.addAll(e.line().flattened(FLATTENING_MM)));
    Box before = Outline.of(ring).box();
    Box after = drawn.sewing().box();
    double along = after.length() / before.length();
    double across = after.width() / before.width();
    List<Point> points =
        edge.line().flattened(FLATTENING_MM).stream()
            .map(p -> new Point(p.x() * along, p.y() * across))
            .toList();
    List<Segment> segments = new ArrayList<>();
    for (int i = 1; i < points.size(); i++) {
      segments.add(new Segment.Line(points.get(i - 1), points.get(i)));
    }
    return new Path(segments).moved(TOP_UP);
  }
}
