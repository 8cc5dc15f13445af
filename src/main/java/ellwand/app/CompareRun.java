package ellwand.app;

import ellwand.cloth.Cloth;
import ellwand.cloth.Wishes;
import ellwand.draw.ComparisonChart;
import ellwand.figures.Binding;
import ellwand.figures.Buying;
import ellwand.figures.Comparison;
import ellwand.figures.Comparison.Row;
import ellwand.figures.ComparisonText;
import ellwand.figures.FoldTried;
import ellwand.file.ComparisonWriter;
import ellwand.file.Job;
import ellwand.file.WholeFile;
import ellwand.lay.Lay;
import ellwand.lay.Marker;
import ellwand.nest.Tried;
import ellwand.units.Unit;
import ellwand.work.Effort;
import ellwand.work.Progress;
import ellwand.work.Stop;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/** Lays one cloth of a job in several widths. */
public final class CompareRun {

  /** Widths that dress cloth is sold in, mm; common practice. */
  private static final List<Double> USUAL_MM = List.of(900.0, 1150.0, 1400.0, 1500.0);

  private CompareRun() {}

  /** The cloth's own width and the usual ones, narrowest first. */
  public static List<Double> usualWidths(Cloth cloth) {
    TreeSet<Double> widths = new TreeSet<>(USUAL_MM);
    widths.add(cloth.widthMm());
    widths.addAll(cloth.widthPrices().keySet());
    return List.copyOf(widths);
  }

  /**
   * The cloth of a job to compare.
   *
   * @param name the job's first cloth if absent
   * @throws ellwand.pattern.InputException if there is none of that name
   */
  public static Cloth cloth(Job job, Optional<String> name) {
    return name.map(n -> Shelf.cloth(job, n)).orElseGet(() -> job.cloths().get(0));
  }

  /**
   * Every width in every way in which the cloth may lie. As many widths are laid at once as there
   * are threads; the effort is shared out evenly between the widths. Wishes are left aside: what
   * they cost would blur what the widths do.
   *
   * @param widthsMm as bought, each more than the selvedges take
   */
  public static Comparison make(
      Job job,
      Cloth cloth,
      List<Double> widthsMm,
      Unit unit,
      SearchOptions options,
      Stop stop,
      Progress progress) {
    int atOnce = Math.min(options.threads(), widthsMm.size());
    Effort each =
        options.effort().repeats()
            ? options.effort().share(widthsMm.size())
            : options.effort().part(Math.min(1, (double) atOnce / widthsMm.size()));
    SearchOptions shared =
        new SearchOptions(each, options.seed(), Math.max(1, options.threads() / atOnce));
    ExecutorService workers = Executors.newFixedThreadPool(atOnce);
    try {
      List<CompletableFuture<List<Row>>> running =
          widthsMm.stream()
              .map(
                  width ->
                      CompletableFuture.supplyAsync(
                          () ->
                              rows(
                                  job,
                                  cloth.wide(width).wishing(Wishes.NONE),
                                  unit,
                                  shared,
                                  stop,
                                  progress),
                          workers))
              .toList();
      List<Row> rows = new ArrayList<>();
      running.forEach(r -> rows.addAll(r.join()));
      int garments = job.garments().values().stream().mapToInt(Integer::intValue).sum();
      return new Comparison(job.style().name(), cloth.name(), garments, rows);
    } finally {
      workers.shutdown();
    }
  }

  private static List<Row> rows(
      Job job, Cloth cloth, Unit unit, SearchOptions options, Stop stop, Progress progress) {
    Lay lay = Lays.of(job, cloth);
    Folded folded = Folded.make(lay, unit, options, stop, progress);
    List<Row> rows = new ArrayList<>();
    for (FoldTried tried : folded.tried()) {
      double utilisation =
          tried.possible()
              ? lay.wantedAreaMm2() / (cloth.usableWidthMm() * tried.clothLengthMm())
              : 0;
      rows.add(
          new Row(
              cloth,
              tried,
              utilisation,
              Buying.cost(cloth, tried.toBuyMm()),
              marker(folded, tried).flatMap(Binding::of)));
    }
    return rows;
  }

  private static Optional<Marker> marker(Folded folded, FoldTried tried) {
    return folded.all().stream()
        .filter(t -> t.fold().words().equals(tried.fold()))
        .findFirst()
        .flatMap(Tried::marker);
  }

  /**
   * Writes table, chart and figures.
   *
   * @return the files written
   */
  public static List<Path> write(Comparison comparison, Unit unit, Path folder) {
    Map<Path, byte[]> files = new LinkedHashMap<>();
    files.put(
        folder.resolve("compare.txt"),
        ComparisonText.of(comparison, unit).getBytes(StandardCharsets.UTF_8));
    files.put(folder.resolve("compare.svg"), ComparisonChart.svg(comparison, unit));
    files.put(folder.resolve("compare.json"), ComparisonWriter.bytes(comparison));
    files.forEach(WholeFile::write);
    return List.copyOf(files.keySet());
  }
}
