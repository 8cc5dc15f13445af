package ellwand.file.marker;

import ellwand.cloth.Direction;
import ellwand.cloth.Fold;
import ellwand.cloth.KeepOut;
import ellwand.cloth.Stock;
import ellwand.cloth.Zone;
import ellwand.job.Job;
import ellwand.lay.Copy;
import ellwand.lay.Lay;
import ellwand.lay.Marker;
import ellwand.lay.Scope;
import ellwand.lay.Wanted;
import ellwand.pattern.Cut;
import ellwand.rule.Stated;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What a marker.json says; nothing of it has been compared with a job.
 *
 * @param jobPath the job it was made from, as it was named then
 * @param jobSha256 see {@link ellwand.job.Origin}
 * @param cloth name of the cloth
 * @param remnant what the marker lies on, as given to fit, if it is no cloth bought by length
 * @param scope what of the job it holds; a part is what it demands
 * @param stated its figures
 * @param search how it was found; empty if it was laid by hand
 * @param keepOuts flaws where they bar the laid cloth; the check works them out anew
 * @param pinned copies, by their places among them, that a cutter wants to stay where they are
 */
public record MarkerFile(
    String jobPath,
    String jobSha256,
    String cloth,
    Optional<String> remnant,
    Scope scope,
    Fold fold,
    Direction direction,
    Stated stated,
    Optional<Marker.Search> search,
    List<Zone> zones,
    List<KeepOut> keepOuts,
    List<Demand> demand,
    List<Copy> copies,
    Set<Integer> pinned) {

  /** One piece that it says a garment needs from the cloth. */
  public record Demand(String piece, String size, int garment, Cut.How how) {

    static Demand of(Wanted wanted) {
      return new Demand(wanted.cut().name(), wanted.size(), wanted.garment(), wanted.how());
    }
  }

  public MarkerFile {
    zones = List.copyOf(zones);
    keepOuts = List.copyOf(keepOuts);
    demand = List.copyOf(demand);
    copies = List.copyOf(copies);
    pinned = Set.copyOf(pinned);
  }

  /** What a marker's file is to say. */
  static MarkerFile of(Marker marker, Set<Integer> pinned, Job job) {
    Lay lay = marker.lay();
    return new MarkerFile(
        job.origin().path(),
        job.origin().sha256(),
        lay.cloth().name(),
        lay.cloth().stock().map(Stock::name),
        lay.scope(),
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
        lay.wanted().stream().map(Demand::of).toList(),
        marker.copies(),
        pinned);
  }

  /** What it has of a lay made anew from the job: all, or its part. */
  public Lay of(Lay whole) {
    if (!(scope instanceof Scope.Part)) {
      return whole;
    }
    List<Demand> left = new ArrayList<>(demand);
    List<Wanted> wanted = whole.wanted().stream().filter(w -> left.remove(Demand.of(w))).toList();
    return whole.part(wanted).of(scope);
  }

  /** The marker that it would be of a lay made anew from the job. */
  public Marker on(Lay lay) {
    return new Marker(lay, fold, zones, copies, search);
  }
}
