package ellwand.app;

import ellwand.draw.marker.MarkerHead;
import ellwand.figures.Figures;
import ellwand.figures.OrderCloth.OrderMarker;
import ellwand.figures.OrderFigures;
import ellwand.figures.OrderText;
import ellwand.file.figures.OrderWriter;
import ellwand.job.Job;
import ellwand.job.OrderJob;
import ellwand.lay.Marker;
import ellwand.order.CutOrderPlan;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A planned order with its markers.
 *
 * @param plans one for each cloth
 * @param markers by name, none if lengths were given
 * @param unit that lengths are shown in
 */
public record PlannedOrder(
    OrderJob job,
    List<CutOrderPlan> plans,
    Map<String, Marker> markers,
    OrderFigures figures,
    Unit unit)
    implements Answer {

  /** Whether every garment wanted is cut, within the order's tolerance. */
  @Override
  public boolean achieved() {
    return figures.misses().isEmpty();
  }

  @Override
  public String text() {
    return OrderText.of(figures, unit);
  }

  /** What {@code order.json} holds. */
  @Override
  public byte[] json() {
    return OrderWriter.json(plans, figures);
  }

  @Override
  public List<String> remarks() {
    return figures.misses().stream().map(miss -> "Not met: " + miss + ".").toList();
  }

  /** Drawings and marker file of each marker, plan, cut tickets, report and bundle labels. */
  @Override
  public List<Output> outputs() {
    List<Output> outputs = new ArrayList<>();
    markers.forEach(
        (name, marker) -> {
          Job style = job.style().orElseThrow();
          LaidMarker laid = LaidMarker.of(style, marker, figures(name), head(name), unit);
          outputs.addAll(Format.outputs(Format.ORDERED_MARKER, name, laid));
        });
    outputs.addAll(Format.outputs(Format.ORDER, "", this));
    if (job.style().isPresent()) {
      outputs.addAll(Format.outputs(Format.STYLED_ORDER, "", this));
    }
    return outputs;
  }

  /** Everything to buy for an order of a style. */
  ShoppingList shopping() {
    return new ShoppingList(
        figures.title(), figures.garments(), figures.buy(), job.style().orElseThrow().wear(), unit);
  }

  private MarkerHead head(String marker) {
    return new MarkerHead(
        figures.title(),
        Optional.of(marker),
        figures.lays().stream().filter(lay -> lay.marker().equals(marker)).toList());
  }

  private Figures figures(String marker) {
    return figures.markers().stream()
        .filter(m -> m.name().equals(marker))
        .findFirst()
        .flatMap(OrderMarker::figures)
        .orElseThrow();
  }
}
