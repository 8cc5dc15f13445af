package ellwand.app;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.cutting.Cutter;
import ellwand.draw.piece.PieceDrawing;
import ellwand.file.drawn.Asked;
import ellwand.file.drawn.FoundPiece;
import ellwand.file.job.StyleFile;
import ellwand.file.job.StyleWriter;
import ellwand.file.source.Json;
import ellwand.geometry.Box;
import ellwand.pattern.Piece;
import ellwand.units.Length;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * A style made of drawings.
 *
 * @param found its drawn pieces by name
 * @param said what of reading them their maker should know, one sentence each
 */
public record Converted(
    StyleFile file, Map<String, FoundPiece> found, Asked asked, List<String> said)
    implements Answer {

  public Converted {
    said = List.copyOf(said);
  }

  @Override
  public boolean achieved() {
    return true;
  }

  /** The style file. */
  byte[] yaml() {
    return StyleWriter.bytes(file.design(), file.wear());
  }

  /** All pieces in the size that is drawn, to be held against the drawing. */
  byte[] control() {
    String size = file.style().drawnSize();
    return PieceDrawing.of(
            "Pieces of " + file.design().name(),
            file.design().name(),
            Map.of(size, pieces().stream().map(p -> Cutter.cut(p, 1, 1)).toList()),
            unit())
        .svg();
  }

  private Unit unit() {
    Unit unit = file.design().unit();
    return unit == Unit.YARD ? Unit.INCH : unit;
  }

  private List<Piece> pieces() {
    return file.style().pieces(file.style().drawnSize());
  }

  /**
   * The style file and the drawing to hold it against.
   *
   * @param name of the style file
   * @param control of the drawing
   */
  public List<Output> outputs(String name, String control) {
    return List.of(new Output(name, this::yaml), new Output(control, this::control));
  }

  @Override
  public String text() {
    return pieces().stream().map(this::line).collect(Collectors.joining("\n"));
  }

  private String line(Piece piece) {
    List<String> clauses = new ArrayList<>();
    Box box =
        Box.around(piece.edges().stream().flatMap(e -> e.line().flattened(0.1).stream()).toList());
    clauses.add(
        "%s x %s along the grain, %d %s"
            .formatted(
                new Length(box.width()).number(unit()),
                new Length(box.length()).show(unit()),
                piece.edges().size(),
                piece.edges().size() == 1 ? "edge" : "edges"));
    piece.cuts().forEach(c -> clauses.add("cut " + c + " from " + c.cloth()));
    if (found.containsKey(piece.name())) {
      clauses.addAll(found.get(piece.name()).said());
    }
    return piece.name() + ": " + String.join("; ", clauses) + ".";
  }

  @Override
  public List<String> remarks() {
    List<String> remarks = new ArrayList<>(said);
    boolean bare =
        pieces().stream()
            .filter(p -> found.containsKey(p.name()))
            .allMatch(p -> p.edges().stream().allMatch(e -> e.allowanceMm() == 0));
    if (bare && asked.allowanceMm().isEmpty() && asked.cuttingLineMm().isEmpty()) {
      remarks.add(
          "The outlines are taken for sewing lines, without seam allowance. Where they lack one,"
              + " say how much (--sewing-line 1cm); where they include it, say that (--cutting-line"
              + " 1cm).");
    }
    return remarks;
  }

  @Override
  public byte[] json() {
    ObjectNode root = Json.object();
    root.put("style", file.design().name());
    ArrayNode list = root.putArray("pieces");
    for (Piece piece : pieces()) {
      ObjectNode node = list.addObject();
      node.put("piece", piece.name());
      FoundPiece from = found.get(piece.name());
      node.put("drawn", from == null ? null : from.calledInDrawing());
      node.put("edges", piece.edges().size());
      ObjectNode cut = node.putObject("cut");
      piece.cuts().forEach(c -> cut.put(c.cloth(), c.toString()));
      ArrayNode notes = node.putArray("notes");
      if (from != null) {
        from.said().forEach(notes::add);
      }
    }
    ArrayNode remarks = root.putArray("remarks");
    remarks().forEach(remarks::add);
    return Json.bytes(root);
  }
}
