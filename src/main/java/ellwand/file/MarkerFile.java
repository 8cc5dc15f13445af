package ellwand.file;

import ellwand.cloth.Direction;
import ellwand.cloth.Fold;
import ellwand.cloth.KeepOut;
import ellwand.cloth.Stock;
import ellwand.cloth.Zone;
import ellwand.lay.Copy;
import ellwand.lay.Lay;
import ellwand.lay.Marker;
import ellwand.pattern.Cut;
import ellwand.rule.Stated;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a marker.json says; nothing of it has been compared with a job.
 *
 * @param jobPath the job it was made from, as it was named then
 * @param jobSha256 see {@link Job#sha256}
 * @param cloth name of the cloth
 * @param remnant what the marker lies on, as given to fit, if it is no cloth bought by length
 * @param inOrder the garments of a marker that is one of an order, by size
 * @param stated its figures
 * @param keepOuts flaws where they bar the laid cloth; the check works them out anew
 */
public record MarkerFile(
    String jobPath,
    String jobSha256,
    String cloth,
    Optional<String> remnant,
    Optional<Map<String, Integer>> inOrder,
    Fold fold,
    Direction direction,
    Stated stated,
    Marker.Search search,
    List<Zone> zones,
    List<KeepOut> keepOuts,
    List<Demand> demand,
    List<Copy> copies) {

  /** One piece that it says a garment needs from the cloth. */
  public record Demand(String piece, String size, int garment, Cut.How how) {}

  public MarkerFile {
    zones = List.copyOf(zones);
    keepOuts = List.copyOf(keepOuts);
    demand = List.copyOf(demand);
    copies = List.copyOf(copies);
  }

  /** What a marker's file is to say. */
  static MarkerFile of(Marker marker, Job job, Optional<Map<String, Integer>> inOrder) {
    Lay lay = marker.lay();
    return new MarkerFile(
        job.path().toString(),
        job.sha256(),
        lay.cloth().name(),
        lay.cloth().stock().map(Stock::name),
        inOrder,
        marker.fold(),
        lay.cloth().direction(),
        new Stated(
            marker.markerWidthMm(),
            marker.lengthMm(),
            marker.clothLengthMm(),
            marker.utilisation(),
            lay.cloth().gapMm()),
        marker.search(),
        marker.zones(),
        marker.keepOuts(),
        lay.wanted().stream()
            .map(w -> new Demand(w.cut().name(), w.size(), w.garment(), w.how()))
            .toList(),
        marker.copies());
  }

  /** The marker that it would be of a lay made anew from the job. */
  public Marker on(Lay lay) {
    return new Marker(lay, fold, zones, copies, search);
  }
}
