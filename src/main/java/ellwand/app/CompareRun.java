package ellwand.app;

import ellwand.cloth.Cloth;
import ellwand.cloth.Fold;
import ellwand.cloth.Wishes;
import ellwand.figures.Bottleneck;
import ellwand.figures.Buying;
import ellwand.figures.Comparison;
import ellwand.figures.Comparison.WidthTried;
import ellwand.figures.FoldTried;
import ellwand.job.Job;
import ellwand.lay.Lay;
import ellwand.lay.Marker;
import ellwand.nest.Tried;
import ellwand.problem.InputException;
import ellwand.units.Length;
import ellwand.units.Unit;
import ellwand.work.Progress;
import ellwand.work.Request;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Lays one cloth of a job in several widths. */
public final class CompareRun {

  /** Widths that dress cloth is sold in, mm; common practice. */
  private static final List<Double> USUAL_MM = List.of(900.0, 1150.0, 1400.0, 1500.0);

  /**
   * Which part of the effort is kept to lay widths that take more than their share in the folds
   * that were not asked for; our own choice.
   */
  private static final double FOR_OTHER_FOLDS = 0.2;

  /** What going on from the markers of narrower cloth may take beyond the effort; ours. */
  private static final double FROM_NARROWER = 0.2;

  private final Job job;
  private final Cloth cloth;
  private final Hands hands;

  private CompareRun(Job job, Cloth cloth, Hands hands) {
    this.job = job;
    this.cloth = cloth;
    this.hands = hands;
  }

  /**
   * Of one cloth of a job.
   *
   * @param cloth its name; the job's first if absent
   * @throws InputException if there is none of that name
   */
  public static CompareRun of(Job job, Optional<String> cloth) {
    return new CompareRun(
        job,
        cloth.map(name -> Shelf.cloth(job, name)).orElseGet(() -> job.cloths().get(0)),
        Hands.OWN);
  }

  /** The same by others. */
  public CompareRun by(Hands others) {
    return new CompareRun(job, cloth, others);
  }

  /**
   * A width that the cloth can have, mm.
   *
   * @param text as the user wrote it
   * @throws InputException if it is no width, or none that the cloth can have
   */
  public double widthMm(String text) {
    double mm = Length.parse(text, job.unit()).mm();
    cloth.wide(mm);
    return mm;
  }

  /**
   * The cloth's own width with those that it has prices for, or with the usual ones if it has none,
   * narrowest first.
   */
  private List<Double> usualWidths() {
    TreeSet<Double> widths =
        new TreeSet<>(cloth.widthPrices().isEmpty() ? USUAL_MM : cloth.widthPrices().keySet());
    widths.add(cloth.widthMm());
    return List.copyOf(widths);
  }

  /**
   * Every width in every way in which the cloth may lie. As many widths are laid at once as there
   * are threads; the effort is shared out evenly between the widths. Some of it is kept to try
   * other folds on widths that take more than their share, so as to know whether the fold is why.
   * Wishes are left aside: what they cost would blur what the widths do.
   *
   * @param asked widths as bought, mm, each once and more than the selvedges take; if none, those
   *     that are usual
   * @param unit that lengths are shown in
   */
  public ComparedWidths make(List<Double> asked, Unit unit, Request request) {
    return new ComparedWidths(
        compared(asked.isEmpty() ? usualWidths() : asked, unit, request), unit);
  }

  private Comparison compared(List<Double> widthsMm, Unit unit, Request request) {
    List<Fold> unasked =
        Cloth.anyFold(cloth.tubular(), cloth.direction()).stream()
            .filter(fold -> !cloth.folds().contains(fold))
            .toList();
    double first = unasked.isEmpty() ? 1 : 1 - FOR_OTHER_FOLDS;
    List<Folded> laid =
        carried(
            sideBySide(
                widthsMm,
                request,
                first,
                (width, part) -> Folded.make(lay(cloth.wide(width)), unit, part, hands)),
            unit);
    if (!request.stop().wanted()) {
      laid =
          carried(
              sideBySide(
                  laid, request, FROM_NARROWER, (folded, part) -> folded.goneOn(unit, part, hands)),
              unit);
    }
    Comparison comparison = comparison(laid);
    List<WidthTried> lavish = request.stop().wanted() ? List.of() : comparison.lavish();
    if (unasked.isEmpty() || lavish.isEmpty()) {
      return comparison;
    }
    List<Folded> otherwise =
        sideBySide(
            lavish,
            request,
            FOR_OTHER_FOLDS,
            (row, part) ->
                Folded.make(
                    lay(row.cloth().lying(unasked)), unit, part.with(onlyMishaps(part)), hands));
    return explained(carried(laid, otherwise, unit), otherwise);
  }

  /** No width takes more than a narrower one that is laid in the same way. */
  private static List<Folded> carried(List<Folded> laid, Unit unit) {
    List<Folded> kept = new ArrayList<>(laid);
    List<Integer> narrowestFirst =
        IntStream.range(0, laid.size())
            .boxed()
            .sorted(Comparator.comparingDouble(i -> widthMm(laid.get(i))))
            .toList();
    for (int i = 1; i < narrowestFirst.size(); i++) {
      Folded narrower = kept.get(narrowestFirst.get(i - 1));
      int wider = narrowestFirst.get(i);
      kept.set(wider, kept.get(wider).noLongerThan(narrower, unit));
    }
    return kept;
  }

  /** What was folded otherwise than asked for can be laid open, where that was asked for. */
  private static List<Folded> carried(List<Folded> laid, List<Folded> otherwise, Unit unit) {
    Map<Double, Folded> byWidth =
        otherwise.stream().collect(Collectors.toMap(CompareRun::widthMm, folded -> folded));
    return carried(
        laid.stream()
            .map(
                folded ->
                    Optional.ofNullable(byWidth.get(widthMm(folded)))
                        .map(other -> folded.noLongerThan(other, unit))
                        .orElse(folded))
            .toList(),
        unit);
  }

  private static double widthMm(Folded folded) {
    return folded.lay().cloth().widthMm();
  }

  /** With the best way of those that were not asked for beside the best of its width. */
  private Comparison explained(List<Folded> laid, List<Folded> otherwise) {
    Comparison comparison = comparison(laid);
    Map<WidthTried, WidthTried> instead = new HashMap<>();
    for (Folded other : otherwise) {
      Optional<FoldTried> best =
          other.tried().stream()
              .filter(FoldTried::possible)
              .min(Comparator.comparingDouble(FoldTried::clothLengthMm));
      for (WidthTried row : comparison.bestOfEach()) {
        if (row.widthMm() == widthMm(other)) {
          best.ifPresent(way -> instead.put(row, row.withUnasked(way)));
        }
      }
    }
    return comparison.with(
        comparison.rows().stream().map(row -> instead.getOrDefault(row, row)).toList());
  }

  private Comparison comparison(List<Folded> laid) {
    return new Comparison(
        job.style().name(),
        cloth.name(),
        job.garmentCount(),
        laid.stream().flatMap(folded -> rows(folded).stream()).toList());
  }

  /** What is tried beside what was asked for is no news, unless it fails. */
  private static Progress onlyMishaps(Request request) {
    return news -> {
      if (news instanceof Progress.Mishap) {
        request.progress().hear(news);
      }
    };
  }

  /** Lays several things, as many at once as there are threads or hands. */
  private <T> List<Folded> sideBySide(
      List<T> things, Request request, double share, BiFunction<T, Request, Folded> work) {
    int atOnce = Math.min(Math.max(request.threads(), hands.atOnce(request)), things.size());
    Request part =
        request
            .with(request.progress().ofSeveral())
            .part(share * (request.effort().repeats() ? 1.0 : atOnce) / things.size())
            .onThreads(Math.max(1, request.threads() / atOnce));
    return SideBySide.each(things, atOnce, thing -> work.apply(thing, part));
  }

  private Lay lay(Cloth laid) {
    return JobLays.of(job, laid.wishing(Wishes.NONE));
  }

  private List<WidthTried> rows(Folded folded) {
    Lay lay = folded.lay();
    Cloth laid = lay.cloth().wishing(cloth.wishes());
    List<WidthTried> rows = new ArrayList<>();
    for (FoldTried tried : folded.tried()) {
      double utilisation =
          tried.possible()
              ? lay.wantedAreaMm2() / (laid.usableWidthMm() * tried.clothLengthMm())
              : 0;
      rows.add(
          new WidthTried(
              laid,
              tried,
              utilisation,
              Buying.cost(laid, tried.toBuyMm()),
              marker(folded, tried).flatMap(Bottleneck::of),
              Optional.empty()));
    }
    return rows;
  }

  private static Optional<Marker> marker(Folded folded, FoldTried tried) {
    return folded.all().stream()
        .filter(t -> t.fold() == tried.fold())
        .findFirst()
        .flatMap(Tried::marker);
  }
}
