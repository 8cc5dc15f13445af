package ellwand.app;

import ellwand.cloth.Cloth;
import ellwand.cloth.Remnant;
import ellwand.cloth.Wishes;
import ellwand.cutting.CutPiece;
import ellwand.figures.Figures;
import ellwand.figures.Fitting;
import ellwand.job.Job;
import ellwand.lay.Lay;
import ellwand.lay.Marker;
import ellwand.lay.Wanted;
import ellwand.pattern.Cut;
import ellwand.problem.InputException;
import ellwand.units.Unit;
import ellwand.work.Effort;
import ellwand.work.Request;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Uses up the remnants of a job first and buys cloth for the rest. All pieces that a garment needs
 * of one cloth come from one piece of it, since shades differ from bolt to bolt, unless the job
 * allows several bolts: then piece by piece.
 */
public final class ShelfRun {

  private final Job job;
  private final Unit unit;
  private final Request request;
  private final Hands hands;

  private ShelfRun(Job job, Unit unit, Request request, Hands hands) {
    this.job = job;
    this.unit = unit;
    this.request = request;
    this.hands = hands;
  }

  /**
   * Makes the markers: for each cloth those on its remnants that take a garment, in the job's
   * order, then one of what is bought for the others.
   *
   * @throws InputException if a piece is wider than its cloth
   */
  public static LaidJob make(Job job, Unit unit, Request request) {
    return make(job, unit, request, Hands.OWN);
  }

  /**
   * The same by others.
   *
   * @see #make(Job, Unit, Request)
   */
  public static LaidJob make(Job job, Unit unit, Request request, Hands hands) {
    Stream<String> cloths = job.cloths().stream().map(Cloth::name);
    Stream<String> remnants = job.remnants().stream().map(r -> LaidJob.name(r.cloth(), r.name()));
    Format.refuseClashes(job, Stream.concat(cloths, remnants).toList(), Format.JOB);
    // All of a cloth's pieces may go on remnants, which may be wider.
    Set<String> onShelf = job.remnants().stream().map(Remnant::cloth).collect(Collectors.toSet());
    Foreseen.refuse(
        job,
        job.cloths().stream()
            .filter(cloth -> !onShelf.contains(cloth.name()))
            .map(cloth -> JobLays.of(job, cloth))
            .toList(),
        unit);
    ShelfRun run = new ShelfRun(job, unit, request, hands);
    Map<Marker, Figures> made = new LinkedHashMap<>();
    job.cloths().forEach(cloth -> made.putAll(run.markers(cloth)));
    return LaidJob.of(job, List.copyOf(made.keySet()), List.copyOf(made.values()), unit);
  }

  private Map<Marker, Figures> markers(Cloth cloth) {
    return job.severalBolts().contains(cloth.name()) ? piecewise(cloth) : wholeGarments(cloth);
  }

  /**
   * Piece by piece, the largest remnant first, so that as much as can be comes from remnants; on
   * each whole garments first, then single pieces, the most valuable first.
   */
  private Map<Marker, Figures> piecewise(Cloth cloth) {
    Lay all = JobLays.of(job, cloth);
    List<Wanted> left = new ArrayList<>(all.wanted());
    List<Remnant> remnants =
        job.remnants().stream()
            .filter(r -> r.cloth().equals(cloth.name()))
            .sorted(Comparator.comparingDouble(r -> -r.areaMm2()))
            .toList();
    Effort share = request.effort().share(remnants.size() + 1);
    Map<Marker, Figures> made = new LinkedHashMap<>();
    for (Remnant remnant : remnants) {
      List<Wanted> taken = new ArrayList<>();
      Optional<Marker> best = Optional.empty();
      List<List<Wanted>> groups = new ArrayList<>(byGarment(left).values());
      left.stream().sorted(Fitting.MOST_VALUABLE_FIRST).map(List::of).forEach(groups::add);
      Effort each = share.share(Math.max(1, groups.size()));
      Set<List<Alike>> refused = new HashSet<>();
      for (List<Wanted> group : groups) {
        List<Wanted> tried = new ArrayList<>(taken);
        tried.addAll(group);
        List<Alike> alike = group.stream().map(Alike::of).toList();
        if (left.containsAll(group) && !refused.contains(alike)) {
          Optional<Marker> found =
              FitRun.fitting(on(all, laidOn(remnant, cloth), tried), request.with(each), hands);
          if (found.isPresent()) {
            best = found;
            taken = tried;
            group.forEach(left::remove);
          } else {
            refused.add(alike);
          }
        }
      }
      best.ifPresent(m -> made.put(m, Figures.of(m, cautions(cloth))));
    }
    if (!left.isEmpty()) {
      Folded folded = Folded.make(on(all, cloth, left), unit, request.with(share), hands);
      Marker best = folded.best(job, unit);
      made.put(best, folded.figures(best, JobLays.bindings(job, cloth, unit)));
    }
    return made;
  }

  /** What copies of several garments have in common: where one found no room no other will. */
  private record Alike(CutPiece cut, String size, Cut.How how) {
    static Alike of(Wanted wanted) {
      return new Alike(wanted.cut(), wanted.size(), wanted.how());
    }
  }

  /** What is left on the shelf is to be used up, whatever else the cutter wishes. */
  private static Cloth laidOn(Remnant remnant, Cloth cloth) {
    return remnant.laidAs(cloth.wishing(Wishes.NONE));
  }

  /** What is to be known of a marker on a remnant. */
  private List<String> cautions(Cloth cloth) {
    List<String> cautions = new ArrayList<>(JobLays.bindings(job, cloth, unit));
    if (cloth.wishes().any()) {
      cautions.add("The cutter's wishes are left aside here, so that all of the remnant is used.");
    }
    return cautions;
  }

  private static Lay on(Lay all, Cloth cloth, List<Wanted> wanted) {
    return all.on(cloth).part(wanted);
  }

  private static Map<Integer, List<Wanted>> byGarment(List<Wanted> wanted) {
    return wanted.stream()
        .collect(Collectors.groupingBy(Wanted::garment, TreeMap::new, Collectors.toList()));
  }

  private Map<Marker, Figures> wholeGarments(Cloth cloth) {
    Map<String, Integer> left = new LinkedHashMap<>(job.garments());
    List<Remnant> remnants =
        job.remnants().stream().filter(r -> r.cloth().equals(cloth.name())).toList();
    Effort share = request.effort().share(remnants.size() + 1);
    Map<Marker, Figures> made = new LinkedHashMap<>();
    for (Remnant remnant : remnants) {
      onto(laidOn(remnant, cloth), left, share)
          .ifPresent(m -> made.put(m, Figures.of(m, cautions(cloth))));
    }
    if (left.values().stream().anyMatch(n -> n > 0)) {
      Lay rest = JobLays.of(job, wanted(left), cloth);
      Folded folded = Folded.make(rest, unit, request.with(share), hands);
      Marker best = folded.best(job, unit);
      made.put(best, folded.figures(best, JobLays.bindings(job, cloth, unit)));
    }
    return made;
  }

  /** As many garments as are found to fit, taken off those that are left. */
  private Optional<Marker> onto(Cloth remnant, Map<String, Integer> left, Effort effort) {
    Map<String, Integer> taken = new LinkedHashMap<>();
    Optional<Marker> best = Optional.empty();
    for (String size : List.copyOf(left.keySet())) {
      boolean fits = true;
      while (fits && left.get(size) > 0) {
        Map<String, Integer> more = new LinkedHashMap<>(taken);
        more.merge(size, 1, Integer::sum);
        Lay lay = JobLays.of(job, more, remnant);
        Optional<Marker> found =
            FitRun.fitting(lay, request.with(effort.share(job.garmentCount())), hands);
        fits = found.isPresent();
        if (fits) {
          best = found;
          taken = more;
          left.merge(size, -1, Integer::sum);
        }
      }
    }
    return best;
  }

  private static Map<String, Integer> wanted(Map<String, Integer> left) {
    Map<String, Integer> wanted = new LinkedHashMap<>(left);
    wanted.values().removeIf(n -> n == 0);
    return wanted;
  }
}
