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
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.BiFunction;

/** Lays one cloth of a job in several widths. */
public final class CompareRun {

  /** Widths that dress cloth is sold in, mm; common practice. */
  private static final List<Double> USUAL_MM = List.of(900.0, 1150.0, 1400.0, 1500.0);

  /**
   * Which part of the effort is kept to lay widths that take more than their share in the folds
   * that were not asked for; our own choice.
   */
  private static final double FOR_OTHER_FOLDS = 0.2;

  private final Job job;
  private final Cloth cloth;

  private CompareRun(Job job, Cloth cloth) {
    this.job = job;
    this.cloth = cloth;
  }

  /**
   * Of one cloth of a job.
   *
   * @param cloth its name; the job's first if absent
   * @throws InputException if there is none of that name
   */
  public static CompareRun of(Job job, Optional<String> cloth) {
    return new CompareRun(
        job, cloth.map(name -> Shelf.cloth(job, name)).orElseGet(() -> job.cloths().get(0)));
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
    List<WidthTried> rows =
        sideBySide(widthsMm, request, first, (width, part) -> rows(cloth.wide(width), unit, part))
            .stream()
            .flatMap(List::stream)
            .toList();
    int garments = job.garmentCount();
    Comparison comparison = new Comparison(job.style().name(), cloth.name(), garments, rows);
    List<WidthTried> lavish = request.stop().wanted() ? List.of() : comparison.lavish();
    if (unasked.isEmpty() || lavish.isEmpty()) {
      return comparison;
    }
    List<WidthTried> explained =
        sideBySide(
            lavish,
            request,
            FOR_OTHER_FOLDS,
            (row, part) ->
                rows(row.cloth().lying(unasked), unit, part.with(onlyMishaps(part))).stream()
                    .map(WidthTried::tried)
                    .filter(FoldTried::possible)
                    .min(Comparator.comparingDouble(FoldTried::clothLengthMm))
                    .map(row::withUnasked)
                    .orElse(row));
    Map<WidthTried, WidthTried> instead = new HashMap<>();
    for (int i = 0; i < lavish.size(); i++) {
      instead.put(lavish.get(i), explained.get(i));
    }
    return new Comparison(
        job.style().name(),
        cloth.name(),
        garments,
        rows.stream().map(row -> instead.getOrDefault(row, row)).toList());
  }

  /** What is tried beside what was asked for is no news, unless it fails. */
  private static Progress onlyMishaps(Request request) {
    return news -> {
      if (news instanceof Progress.Mishap) {
        request.progress().hear(news);
      }
    };
  }

  /** Does some work for each of several things, as many at once as there are threads. */
  private static <T, R> List<R> sideBySide(
      List<T> things, Request request, double share, BiFunction<T, Request, R> work) {
    int atOnce = Math.min(request.threads(), things.size());
    Request part =
        request
            .part(share * (request.effort().repeats() ? 1.0 : atOnce) / things.size())
            .onThreads(Math.max(1, request.threads() / atOnce));
    ExecutorService workers = Executors.newFixedThreadPool(atOnce);
    try {
      List<CompletableFuture<R>> running =
          things.stream()
              .map(t -> CompletableFuture.supplyAsync(() -> work.apply(t, part), workers))
              .toList();
      return running.stream().map(CompletableFuture::join).toList();
    } catch (CompletionException e) {
      throw e.getCause() instanceof RuntimeException known ? known : e;
    } finally {
      workers.shutdown();
    }
  }

  private List<WidthTried> rows(Cloth laid, Unit unit, Request request) {
    Lay lay = JobLays.of(job, laid.wishing(Wishes.NONE));
    Folded folded = Folded.make(lay, unit, request);
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
