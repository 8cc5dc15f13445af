package ellwand.app;

import ellwand.cloth.Cloth;
import ellwand.cloth.Remnant;
import ellwand.cloth.Wishes;
import ellwand.figures.Figures;
import ellwand.figures.Fitting;
import ellwand.figures.Washing;
import ellwand.job.Job;
import ellwand.lay.Lay;
import ellwand.lay.Marker;
import ellwand.lay.Wanted;
import ellwand.nest.Tried;
import ellwand.nest.pose.NoRoomException;
import ellwand.rule.Check;
import ellwand.units.Unit;
import ellwand.work.Effort;
import ellwand.work.Request;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Answers whether a garment can be cut from a piece of cloth that is there. */
public final class FitRun {

  /** Hair by which a marker may be longer than its cloth and still fit, mm; as the check has it. */
  private static final double HAIR_MM = 0.01;

  private final Request request;
  private final Hands hands;

  private FitRun(Request request, Hands hands) {
    this.hands = hands;
    // Whoever hopes that it fits wants all of the effort.
    this.request = request.with(request.effort().whole()).with(request.progress().ofSeveral());
  }

  /**
   * Seeks a marker on the remnant; if none is found, what can be cut from it all the same.
   *
   * @param on name of a remnant of the job, or width x length
   * @param cloth the cloth that a width x length is a piece of; the job's first if absent
   * @param unit that lengths are shown in
   * @throws ellwand.problem.InputException if there is no such remnant or cloth
   */
  public static FitAnswer fit(
      Job job, String on, Optional<String> cloth, Unit unit, Request request) {
    return fit(job, on, cloth, unit, request, Hands.OWN);
  }

  /**
   * The same by others.
   *
   * @see #fit(Job, String, Optional, Unit, Request)
   */
  public static FitAnswer fit(
      Job job, String on, Optional<String> cloth, Unit unit, Request request, Hands hands) {
    Remnant remnant = Shelf.remnant(job, on, cloth);
    Format.refuseClashes(job, List.of(remnant.cloth()), Format.JOB);
    Cloth laid = remnant.laidAs(Shelf.cloth(job, remnant.cloth()));
    return new FitRun(request, hands).answer(job, remnant, JobLays.of(job, laid), unit);
  }

  /** A marker of all that is wanted on its remnant, if one is found; it has passed the check. */
  static Optional<Marker> fitting(Lay lay, Request request, Hands hands) {
    return lay.wantedAreaMm2() > room(lay.cloth())
        ? Optional.empty()
        : new FitRun(request, hands)
            .shortest(lay, request.effort().whole())
            .filter(FitRun::fits)
            .map(Check::passed);
  }

  private FitAnswer answer(Job job, Remnant remnant, Lay lay, Unit unit) {
    Effort third = request.effort().share(3);
    // Round the flaws, and longer than the remnant if need be.
    List<Tried> tried = tried(lay, request.effort().part(2.0 / 3));
    Optional<Marker> shortest = shortest(tried);
    Optional<Marker> fitting = shortest.filter(FitRun::fits).map(Check::passed);
    if (fitting.isPresent()) {
      Marker marker =
          tried.stream()
              .flatMap(t -> t.pleasing().stream())
              .findFirst()
              .map(Check::passed)
              .orElse(fitting.get());
      return new FitAnswer(
          Optional.of(laid(job, marker, fitting.get(), unit)),
          Fitting.all(lay, remnant.name(), marker.clothLengthMm()),
          // The marker's own cautions say it.
          List.of(),
          unit);
    }
    Optional<Double> needed = shortest.map(Marker::clothLengthMm);
    Optional<Fitting.TooWide> tooWide = shortest.isPresent() ? Optional.empty() : tooWide(tried);
    return new FitAnswer(
        Optional.empty(),
        Fitting.some(lay, remnant.name(), needed, tooWide, chosen(lay, third)),
        taken(job, remnant),
        unit);
  }

  static List<String> taken(Job job, Remnant remnant) {
    return Washing.remnant(remnant.name(), Shelf.cloth(job, remnant.cloth())).stream().toList();
  }

  private static LaidJob laid(Job job, Marker marker, Marker shortest, Unit unit) {
    List<String> bindings = JobLays.bindings(job, marker.lay().cloth(), unit);
    Figures figures = Figures.of(marker, bindings, List.of(), Optional.of(shortest));
    return LaidJob.of(job, List.of(marker), List.of(figures), unit);
  }

  /** What is too wide where the cloth lies widest. */
  private static Optional<Fitting.TooWide> tooWide(List<Tried> tried) {
    return tried.stream()
        .flatMap(t -> t.noRoom().stream())
        .filter(e -> !e.offRepeat())
        .max(Comparator.comparingDouble(NoRoomException::widestMm))
        .map(e -> new Fitting.TooWide(e.piece(), e.neededMm(), e.widestMm()));
  }

  /** Copies taken in one by one, the most valuable first, each if all still fit. */
  private List<Wanted> chosen(Lay lay, Effort effort) {
    List<Wanted> byValue = new ArrayList<>(lay.wanted());
    byValue.sort(Fitting.MOST_VALUABLE_FIRST);
    Effort each = effort.share(Math.max(1, byValue.size()));
    Cloth cloth = lay.cloth().wishing(Wishes.NONE);
    List<Wanted> chosen = new ArrayList<>();
    for (Wanted wanted : byValue) {
      if (request.stop().wanted()) {
        return chosen;
      }
      List<Wanted> tried = new ArrayList<>(chosen);
      tried.add(wanted);
      Lay part = lay.on(cloth).part(tried);
      if (part.wantedAreaMm2() <= room(cloth)
          && shortest(part, each)
              .filter(FitRun::fits)
              .filter(m -> Check.of(m).isEmpty())
              .isPresent()) {
        chosen.add(wanted);
      }
    }
    return chosen;
  }

  /** The shortest marker over the ways in which the cloth may lie; it may be too long. */
  private Optional<Marker> shortest(Lay lay, Effort effort) {
    return shortest(tried(lay, effort));
  }

  private List<Tried> tried(Lay lay, Effort effort) {
    return hands.nest(lay, lay.cloth().possibleFolds(), request.with(effort));
  }

  private static Optional<Marker> shortest(List<Tried> all) {
    return Tried.shortest(all);
  }

  static boolean fits(Marker marker) {
    return marker.clothLengthMm() <= marker.lay().cloth().lengthMm() + HAIR_MM;
  }

  /** Square mm that may be cut, flaws not counted out. */
  static double room(Cloth cloth) {
    return cloth.usableWidthMm() * cloth.lengthMm();
  }
}
