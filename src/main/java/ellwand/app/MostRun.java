package ellwand.app;

import ellwand.cloth.Cloth;
import ellwand.cloth.Remnant;
import ellwand.cloth.Wishes;
import ellwand.job.Job;
import ellwand.lay.Lay;
import ellwand.lay.Marker;
import ellwand.nest.EndToEnd;
import ellwand.nest.Tried;
import ellwand.work.Effort;
import ellwand.work.Request;
import ellwand.work.Seed;
import ellwand.work.Spending;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.IntFunction;

/** Answers how many garments come out of a piece of cloth that is there. */
public final class MostRun {

  /** More copies than this in one lay are not tried, as a job cannot ask for more. */
  private static final int MOST_COPIES = 2_000;

  /** What is laid several times over, one behind the other, has about so many copies; ours. */
  private static final int COPIES_IN_A_ROW = 80;

  /** What of the effort for one number goes to what is laid in a row, and to the end of it. */
  private static final double ROW = 0.5;

  private static final double REST = 0.25;

  /** With less than this many copies are hardly laid shorter at once than in a row; measured. */
  private static final double SECONDS_A_COPY = 0.02;

  private static final double STEPS_A_COPY = 10;

  private final Request request;
  private final Hands hands;
  private final Cloth cloth;
  private final int orderCount;
  private final IntFunction<Lay> lay;
  private final double copiesEach;
  private final Map<Integer, Marker> shortest = new HashMap<>();
  private int searches;

  private MostRun(Job job, Cloth cloth, List<String> smallestFirst, Request request, Hands hands) {
    this.request = request;
    this.hands = hands;
    this.cloth = cloth;
    this.orderCount = job.garmentCount();
    this.lay = n -> JobLays.of(job, garments(job, smallestFirst, n), cloth);
    this.copiesEach = JobLays.of(job, cloth).wanted().size() / (double) orderCount;
  }

  /**
   * How many garments of the job can be cut from the remnant: the order as often as it goes, and
   * the smallest of another. The number is bounded by area and found by halving; all tries together
   * have the effort of the request, and what one has shown the next begins with.
   *
   * @param on name of a remnant of the job, or width x length
   * @param from the cloth that a width x length is a piece of; the job's first if absent
   * @throws ellwand.problem.InputException if there is no such remnant or cloth
   */
  public static FitTimes most(Job job, String on, Optional<String> from, Request request) {
    return most(job, on, from, request, Hands.OWN);
  }

  /**
   * The same by others.
   *
   * @see #most(Job, String, Optional, Request)
   */
  public static FitTimes most(
      Job job, String on, Optional<String> from, Request request, Hands hands) {
    Remnant remnant = Shelf.remnant(job, on, from);
    Cloth laid = remnant.laidAs(Shelf.cloth(job, remnant.cloth()).wishing(Wishes.NONE));
    MostRun run = new MostRun(job, laid, smallestFirst(job, laid), request, hands);
    Spending effort = new Spending(request.effort().whole());
    int most =
        most(
            run.bound(Math.min(FitRun.room(laid), remnant.areaMm2())),
            () -> request.stop().wanted() || !request.effort().repeats() && effort.over(),
            (number, tries) -> run.shown(number, effort.take(effort.left() / tries)));
    return new FitTimes(
        on, most, run.orderCount, request.stop().wanted(), FitRun.taken(job, remnant));
  }

  /** The order as often as it goes into so many garments, and the smallest of another. */
  private static Map<String, Integer> garments(Job job, List<String> smallestFirst, int number) {
    int left = number % job.garmentCount();
    Map<String, Integer> garments = new LinkedHashMap<>();
    for (String size : smallestFirst) {
      int wanted = job.garments().get(size);
      int more = Math.min(left, wanted);
      garments.put(size, number / job.garmentCount() * wanted + more);
      left -= more;
    }
    garments.values().removeIf(n -> n == 0);
    return garments;
  }

  private static List<String> smallestFirst(Job job, Cloth cloth) {
    return job.garments().keySet().stream()
        .sorted(
            Comparator.comparingDouble(
                size -> JobLays.of(job, Map.of(size, 1), cloth).wantedAreaMm2()))
        .toList();
  }

  /** How many garments can come out of so much cloth at the most. */
  private int bound(double areaMm2) {
    Lay once = lay.apply(orderCount);
    if (once.wanted().isEmpty()) {
      return 0;
    }
    int orders =
        (int)
            Math.min(
                areaMm2 / once.wantedAreaMm2() + 1e-9, MOST_COPIES / (double) once.wanted().size());
    int bound = orders * orderCount;
    for (int more = 1;
        more < orderCount && lay.apply(bound + 1).wantedAreaMm2() <= areaMm2;
        more++) {
      bound++;
    }
    return bound;
  }

  /**
   * How many garments a try shows to fit; told how many tries there are left, this one with them.
   */
  interface Shown {
    int of(int number, int tries);
  }

  /**
   * The greatest number that is shown to fit, by halving; what was shown by then when it has to
   * end.
   *
   * @param bound more cannot
   */
  static int most(int bound, BooleanSupplier ends, Shown shown) {
    int most = 0;
    int tooMany = bound + 1;
    int tries = Integer.SIZE - Integer.numberOfLeadingZeros(bound);
    while (tooMany - most > 1 && !ends.getAsBoolean()) {
      int middle = (most + tooMany) / 2;
      int fit = shown.of(middle, Math.max(1, tries--));
      most = Math.max(most, Math.min(fit, bound));
      if (fit < middle) {
        tooMany = middle;
      }
    }
    return most;
  }

  /** How many are shown to fit by a search for a number, fewer or more. */
  private int shown(int number, Effort effort) {
    int times = (int) Math.max(1, Math.round(number * copiesEach / COPIES_IN_A_ROW));
    if (times == 1) {
      return search(number, effort).filter(FitRun::fits).isPresent() ? number : 0;
    }
    // Of whole orders, or the row would lack sizes.
    int each = (int) Math.ceil(number / (double) times / orderCount) * orderCount;
    Optional<Marker> one = search(each, effort.part(ROW)).filter(FitRun::fits);
    int most = one.map(marker -> inRow(marker, each, number, effort)).orElse(0);
    boolean worthWhile =
        effort.repeats()
            ? effort.steps() >= STEPS_A_COPY * number * copiesEach
            : effort.seconds() >= SECONDS_A_COPY * number * copiesEach;
    if (most >= number || most > 0 && !worthWhile) {
      return most;
    }
    return search(number, effort.part(1 - ROW)).filter(FitRun::fits).isPresent() ? number : most;
  }

  /**
   * How many come out of a marker as often as there is room for it, and of a smaller one behind
   * these; 0 if they cannot be laid so.
   */
  private int inRow(Marker one, int each, int number, Effort effort) {
    double next = cloth.wholeRepeatsMm(one.clothLengthMm() + cloth.gapMm());
    int times = 1 + (int) Math.floor((cloth.lengthMm() - one.clothLengthMm()) / next);
    int rest = number - times * each;
    if (rest > 0 && rest < each) {
      Optional<Marker> last =
          search(rest, effort.part(REST))
              .filter(m -> times * next + m.clothLengthMm() <= cloth.lengthMm());
      List<Marker> row = new ArrayList<>(Collections.nCopies(times, one));
      last.ifPresent(row::add);
      if (last.isPresent() && fits(number, row)) {
        return number;
      }
    }
    return fits(times * each, Collections.nCopies(times, one)) ? times * each : 0;
  }

  private boolean fits(int number, List<Marker> row) {
    return EndToEnd.of(lay.apply(number), row, Double.POSITIVE_INFINITY)
        .filter(FitRun::fits)
        .isPresent();
  }

  /** The shortest marker of so many that was found by now. */
  private Optional<Marker> search(int number, Effort effort) {
    if (!request.stop().wanted()) {
      searches++;
      Request other = request.with(effort).with(new Seed(request.seed().value() + searches - 1));
      Tried.shortest(hands.nest(lay.apply(number), cloth.possibleFolds(), other))
          .ifPresent(
              marker ->
                  shortest.merge(
                      number, marker, (a, b) -> b.clothLengthMm() < a.clothLengthMm() ? b : a));
    }
    return Optional.ofNullable(shortest.get(number));
  }
}
