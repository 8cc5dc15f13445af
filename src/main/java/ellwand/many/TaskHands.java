package ellwand.many;

import ellwand.app.AskedLay;
import ellwand.app.Hands;
import ellwand.cloth.Cloth;
import ellwand.cloth.Fold;
import ellwand.file.marker.MarkerWriter;
import ellwand.job.Job;
import ellwand.lay.Lay;
import ellwand.lay.Marker;
import ellwand.nest.Tried;
import ellwand.work.Effort;
import ellwand.work.Elsewhere;
import ellwand.work.Progress;
import ellwand.work.Request;
import ellwand.work.Seed;
import ellwand.work.Stop;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;

/**
 * Has the markers of a job made by a workshop: one task for each search, or a race of several
 * seeds, whose best marker all go on from in the last part.
 */
final class TaskHands implements Hands {

  private static final long POLL_MILLIS = 20;

  /** What of the effort each seed has to itself, where several race; ours. */
  private static final double ALONE = 0.7;

  private final Workshop workshop;
  private final JobFiles files;
  private final Job job;
  private final int seeds;

  /**
   * @param job as read from the files, or the style of the order that they hold
   * @param seeds how many race for each marker, 1 or more
   */
  TaskHands(Workshop workshop, JobFiles files, Job job, int seeds) {
    this.workshop = workshop;
    this.files = files;
    this.job = job;
    this.seeds = seeds;
  }

  @Override
  public int atOnce(Request request) {
    return Math.max(1, workshop.cores() / (seeds * request.threads()));
  }

  @Override
  public List<Tried> nest(Lay lay, List<Fold> folds, Request request) {
    MarkerTask whole = task(lay, folds, request.effort(), request);
    if (seeds == 1) {
      return all(lay, List.of(whole), request.progress(), request.stop()).get(0);
    }
    Race race = new Race(request.progress());
    if (!canBeGoneOnFrom(lay)) {
      return all(lay, raced(whole), race.part(0, 1), request.stop()).stream()
          .min(Comparator.comparingDouble(TaskHands::shortestMm))
          .map(tried -> foundBy(request, tried))
          .orElseThrow();
    }
    MarkerTask first = task(lay, folds, request.effort().part(ALONE), request);
    List<Tried> best = shortest(all(lay, raced(first), race.part(0, ALONE), request.stop()));
    return foundBy(
        request,
        Tried.shortest(best)
            .filter(marker -> !request.stop().wanted())
            .map(marker -> goneOn(marker, best, request, race))
            .orElse(best));
  }

  /** What serves wishes or lies off its grain belongs to its own search, and so does a repeat. */
  private static boolean canBeGoneOnFrom(Lay lay) {
    Cloth cloth = lay.cloth();
    return !cloth.wishes().any()
        && cloth.repeat().isEmpty()
        && lay.wanted().stream()
            .map(wanted -> wanted.cut().piece().grain().toleranceDegrees())
            .allMatch(own -> own.orElse(cloth.grainToleranceDegrees()) == 0);
  }

  private static double shortestMm(List<Tried> tried) {
    return Tried.shortest(tried).map(Marker::clothLengthMm).orElse(Double.POSITIVE_INFINITY);
  }

  private MarkerTask task(Lay lay, List<Fold> folds, Effort effort, Request request) {
    return new MarkerTask(
        files,
        AskedLay.of(job, lay),
        folds,
        effort,
        request.seed(),
        request.threads(),
        Optional.empty());
  }

  private List<MarkerTask> raced(MarkerTask task) {
    return IntStream.range(0, seeds)
        .mapToObj(i -> task.with(new Seed(task.seed().value() + i)))
        .toList();
  }

  @Override
  public Optional<Marker> goOn(Marker from, Request request) {
    return seeds == 1
        ? Optional.empty()
        : shorter(from, request, new Race(request.progress()).part(0, 1))
            .map(marker -> foundBy(request, marker));
  }

  /** What all seeds find from a marker on. */
  private Optional<Marker> shorter(Marker from, Request request, Progress heard) {
    Lay lay = from.lay();
    MarkerTask last =
        new MarkerTask(
            files,
            AskedLay.of(job, lay),
            List.of(from.fold()),
            request.effort(),
            request.seed().child(1),
            request.threads(),
            Optional.of(MarkerWriter.exactly(from, job)));
    return all(lay, raced(last), heard, request.stop()).stream()
        .flatMap(tried -> tried.get(0).marker().stream())
        .min(Comparator.comparingDouble(Marker::clothLengthMm));
  }

  /** The last part of a race: all from the best. */
  private List<Tried> goneOn(Marker best, List<Tried> found, Request request, Race race) {
    Optional<Marker> shorter = shorter(best, request.part(1 - ALONE), race.part(ALONE, 1 - ALONE));
    return found.stream()
        .map(
            tried ->
                shorter
                    .filter(m -> m.fold() == tried.fold() && tried.isLongerThan(m))
                    .map(m -> with(tried, Optional.of(m), Optional.empty()))
                    .orElse(tried))
        .toList();
  }

  private static Tried with(Tried tried, Optional<Marker> marker, Optional<Marker> pleasing) {
    return new Tried(tried.fold(), marker, pleasing, tried.noRoom(), tried.carried());
  }

  /** Says of the markers how all of them together were searched for. */
  private List<Tried> foundBy(Request request, List<Tried> found) {
    UnaryOperator<Marker> said = marker -> foundBy(request, marker);
    return found.stream()
        .map(tried -> with(tried, tried.marker().map(said), tried.pleasing().map(said)))
        .toList();
  }

  private Marker foundBy(Request request, Marker marker) {
    String effort = request.effort() + " for each of " + seeds + " seeds";
    return marker.foundBy(
        new Marker.Search(
            request.seed().value(), request.threads(), effort, marker.stoppedEarly()));
  }

  /** The shortest of each fold. */
  private static List<Tried> shortest(List<List<Tried>> raced) {
    List<Tried> best = new ArrayList<>(raced.get(0));
    for (List<Tried> other : raced) {
      for (int i = 0; i < best.size(); i++) {
        Optional<Marker> marker = other.get(i).marker();
        if (marker.isPresent() && best.get(i).isLongerThan(marker.get())) {
          best.set(i, other.get(i));
        }
      }
    }
    return best;
  }

  private List<List<Tried>> all(Lay lay, List<MarkerTask> tasks, Progress heard, Stop stop) {
    List<Errand> errands = new ArrayList<>();
    for (MarkerTask task : tasks) {
      errands.add(workshop.give(task.task(), news -> heard.hear(SearchNews.of(news))));
    }
    try {
      List<List<Tried>> all = new ArrayList<>();
      for (int i = 0; i < errands.size(); i++) {
        all.add(answer(errands, i, lay, tasks.get(i).folds(), stop));
      }
      return all;
    } finally {
      // Where one failed nobody waits for the others.
      errands.stream().filter(errand -> !errand.done().isDone()).forEach(Errand::withdraw);
    }
  }

  /** What is no answer is asked for anew. */
  private static List<Tried> answer(
      List<Errand> errands, int which, Lay lay, List<Fold> folds, Stop stop) {
    while (true) {
      byte[] bytes = brought(errands, which, stop);
      try {
        return MarkerReply.read(bytes, lay, folds);
      } catch (TaskFailed e) {
        errands.set(which, errands.get(which).refuse(e.getMessage()));
      }
    }
  }

  /** What comes back of one; where a stop is wanted, the best by then. */
  private static byte[] brought(List<Errand> errands, int which, Stop stop) {
    boolean hurried = false;
    while (true) {
      if (!hurried && stop.wanted()) {
        hurried = true;
        errands.forEach(Errand::hurry);
      }
      try {
        return errands.get(which).done().get(POLL_MILLIS, TimeUnit.MILLISECONDS);
      } catch (TimeoutException e) {
        // Not yet.
      } catch (ExecutionException e) {
        throw Elsewhere.thrown(e);
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        throw new CompletionException(e);
      }
    }
  }
}
