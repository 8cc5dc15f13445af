package ellwand.draw.marker;

import ellwand.draw.sheet.Shown;
import ellwand.draw.sheet.TitleBlock.Cell;
import ellwand.figures.LayTicket;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What heads a marker.
 *
 * @param title of the job or order
 * @param marker its name, in an order
 * @param lays that are cut with it, in an order
 */
public record MarkerHead(String title, Optional<String> marker, List<LayTicket> lays) {

  public MarkerHead {
    lays = List.copyOf(lays);
  }

  /** Of a job's only marker of its cloth. */
  public static MarkerHead of(String title) {
    return new MarkerHead(title, Optional.empty(), List.of());
  }

  /** Its lays with their plies and cloth; none for a job. */
  List<Cell> cells(Shown shown) {
    List<Cell> cells = new ArrayList<>();
    marker.ifPresent(name -> cells.add(new Cell("marker", name)));
    for (LayTicket lay : lays) {
      int plies = lay.totalPlies();
      String colours =
          lay.plies().entrySet().stream()
              .map(e -> e.getValue() + " " + e.getKey())
              .collect(Collectors.joining(", "));
      cells.add(
          new Cell(
              "lay " + lay.number() + ", " + (plies == 1 ? "1 ply" : plies + " plies"), colours));
      cells.add(
          new Cell("cloth of lay " + lay.number(), shown.inBulk().bought(lay.totalClothMm())));
    }
    return cells;
  }
}
