package ellwand.figures;

import ellwand.pattern.Style;
import ellwand.units.Length;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.List;

/**
 * How long an edge of a piece is when it is sewn: darts closed, pleats folded, gathers drawn up.
 *
 * @param half whether the piece is drawn to a fold, so that this is the length of one side
 */
public record EdgeLength(String size, String piece, String edge, double mm, boolean half) {

  /** Of every edge in every size, computed pieces whole. */
  public static List<EdgeLength> of(Style style) {
    List<EdgeLength> lengths = new ArrayList<>();
    for (String size : style.sizes()) {
      style
          .pieces(size)
          .forEach(
              piece ->
                  piece
                      .edges()
                      .forEach(
                          edge ->
                              lengths.add(
                                  new EdgeLength(
                                      size,
                                      piece.name(),
                                      edge.name(),
                                      edge.sewnMm(),
                                      piece.fold().isPresent()))));
    }
    return lengths;
  }

  /** A line for each piece in each size. */
  public static String text(List<EdgeLength> lengths, Unit unit) {
    StringBuilder text = new StringBuilder();
    EdgeLength before = null;
    for (EdgeLength length : lengths) {
      boolean next =
          before == null || !before.piece.equals(length.piece) || !before.size.equals(length.size);
      if (next) {
        text.append(text.isEmpty() ? "" : "\n")
            .append(length.piece)
            .append(", size ")
            .append(length.size)
            .append(length.half ? ", half: " : ": ");
      } else {
        text.append(", ");
      }
      text.append(length.edge).append(' ').append(new Length(length.mm).show(unit));
      before = length;
    }
    return text.toString();
  }
}
