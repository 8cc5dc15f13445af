package ellwand.file.svg;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.cutting.CutPiece;
import ellwand.cutting.Cutter;
import ellwand.file.drawn.FoundStyle;
import ellwand.file.drawn.Label;
import ellwand.file.job.StyleFile;
import ellwand.file.job.StyleWriter;
import ellwand.file.source.Yaml;
import ellwand.geometry.Box;
import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.geometry.Segment;
import ellwand.pattern.Draft;
import ellwand.pattern.Notch;
import ellwand.pattern.Outlined;
import ellwand.pattern.Piece;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Writes a style as a drawing that holds all of it: what can be drawn as lines, which may be
 * changed in any drawing program, everything else as words of the drawing and of each piece, as
 * they would stand in a job. Tops up, 1:1, pieces in rows.
 */
public final class StyleSvg {

  private static final double ROW_MM = 1200;
  private static final double GAP_MM = 40;
  private static final double MARGIN_MM = 10;

  /** Between the two strokes of a double notch as drawn, mm. */
  private static final double DOUBLE_MM = 4;

  private final StyleFile file;
  private final ObjectNode tree;
  private final SvgOut out = new SvgOut();

  /** A piece and what of its entry remains to be said in words. */
  private record Drawn(Draft draft, Optional<CutPiece> cut, ObjectNode words, Box box) {}

  private StyleSvg(StyleFile file) {
    this.file = file;
    this.tree = StyleWriter.tree(file.design(), file.wear());
  }

  /** The bytes of the file; the same style gives the same. */
  public static byte[] bytes(StyleFile file) {
    return new StyleSvg(file).bytes();
  }

  private byte[] bytes() {
    List<Drawn> pieces = new ArrayList<>();
    ObjectNode entries = (ObjectNode) tree.get("style").get("pieces");
    for (Outlined piece : file.design().outlined()) {
      piece
          .start()
          .draft()
          .ifPresent(draft -> pieces.add(drawn(draft, (ObjectNode) entries.get(piece.name()))));
    }
    pieces.forEach(p -> entries.put(p.draft.name(), FoundStyle.DRAWN));
    List<Point> places = places(pieces);
    Box page = page(pieces, places);
    out.begin(page.length(), page.width());
    out.words("title", file.design().name());
    out.words("desc", yaml(tree));
    for (int i = 0; i < pieces.size(); i++) {
      piece(pieces.get(i), places.get(i), i + 1);
    }
    return out.bytes();
  }

  private static String yaml(JsonNode node) {
    return new String(Yaml.bytes(node), StandardCharsets.UTF_8);
  }

  private Drawn drawn(Draft draft, ObjectNode entry) {
    ObjectNode words = entry.deepCopy();
    words.remove("outline");
    words.remove("lines");
    Optional<CutPiece> cut = Optional.empty();
    if (!words.has("alter")) {
      if (draft.piece().notches().size() == draft.notches().size()) {
        words.remove("notches");
      }
      cut =
          file.style().pieces(file.style().drawnSize()).stream()
              .filter(p -> p.name().equals(draft.name()))
              .findFirst()
              .map(p -> Cutter.cut(p, 1, 1));
    }
    List<Point> all = new ArrayList<>(outline(draft).flattened(0.1));
    draft.innerLines().forEach(l -> all.addAll(l.line().flattened(0.1)));
    cut.ifPresent(c -> all.addAll(c.cutting().points()));
    all.add(new Point(0, 0));
    return new Drawn(draft, cut, words, Box.around(all));
  }

  private static Path outline(Draft draft) {
    List<Segment> segments = new ArrayList<>();
    List<Draft.Node> nodes = draft.nodes();
    for (int i = 0; i < nodes.size(); i++) {
      segments.add(nodes.get((i + 1) % nodes.size()).from(nodes.get(i).at()));
    }
    return new Path(segments);
  }

  /** Where the origin of each piece lies on the page, x to the right and y down. */
  private static List<Point> places(List<Drawn> pieces) {
    List<Point> places = new ArrayList<>();
    double right = MARGIN_MM;
    double top = MARGIN_MM;
    double bottom = top;
    for (Drawn piece : pieces) {
      if (right > MARGIN_MM && right + piece.box.width() > ROW_MM) {
        right = MARGIN_MM;
        top = bottom + GAP_MM;
      }
      places.add(new Point(Math.ceil(right + piece.box.maxY()), Math.ceil(top + piece.box.maxX())));
      right += piece.box.width() + GAP_MM;
      bottom = Math.max(bottom, top + piece.box.length());
    }
    return places;
  }

  private static Box page(List<Drawn> pieces, List<Point> places) {
    List<Point> corners = new ArrayList<>(List.of(new Point(0, 0), new Point(100, 100)));
    for (int i = 0; i < pieces.size(); i++) {
      Box box = pieces.get(i).box;
      Point at = places.get(i);
      corners.add(
          new Point(
              Math.ceil(at.x() - box.minY() + MARGIN_MM),
              Math.ceil(at.y() - box.minX() + MARGIN_MM)));
    }
    return Box.around(corners);
  }

  private void piece(Drawn piece, Point place, int number) {
    Draft draft = piece.draft;
    out.group("piece-" + number, Label.PIECE);
    out.words("title", draft.name());
    out.words("desc", yaml(piece.words));
    SvgPen pen = new SvgPen(place);
    piece.cut.ifPresent(c -> out.path("cutting-line", pen.closed(c.cutting().points()), ""));
    out.path("sewing-line", pen.closed(outline(draft)), "");
    Point middle = piece.cut.map(c -> c.cutting().box()).orElse(piece.box).centre();
    double half = piece.box.length() / 4;
    boolean along = !piece.words.has("grain");
    out.path(
        along ? "grain" : "axis",
        pen.line(middle.plus(new Point(-half, 0)), middle.plus(new Point(half, 0))),
        "");
    out.path("origin", pen.cross(new Point(0, 0)), "");
    for (Draft.Node node : draft.nodes()) {
      node.name()
          .ifPresent(
              name ->
                  out.path("point", pen.line(node.at(), node.at().plus(new Point(1, 1))), name));
    }
    if (!piece.words.has("notches")) {
      Piece sewn = draft.piece();
      sewn.notches().forEach(notch -> notch(sewn, notch, pen));
    }
    draft.innerLines().forEach(l -> out.path("inner", pen.open(l.line()), l.name()));
    out.text(draft.name(), pen.x(middle), pen.y(middle));
    out.end();
  }

  private void notch(Piece piece, Notch notch, SvgPen pen) {
    Path.Tangent tangent = piece.edge(notch.edge()).line().tangent(notch.atMm());
    Point outward = tangent.direction().left().times(-notch.depthMm());
    String strokes = pen.line(tangent.at(), tangent.at().plus(outward));
    if (notch.strokes() == 2) {
      Point twin = tangent.at().plus(tangent.direction().times(DOUBLE_MM));
      strokes += pen.line(twin, twin.plus(outward));
    }
    out.path(notch.strokes() == 2 ? "notch double" : "notch", strokes, notch.edge());
  }
}
