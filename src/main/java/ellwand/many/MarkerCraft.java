package ellwand.many;

import ellwand.cloth.Fold;
import ellwand.job.Job;
import ellwand.lay.Lay;
import ellwand.lay.Marker;
import ellwand.nest.Nester;
import ellwand.nest.Tried;
import ellwand.problem.InputException;
import ellwand.work.Request;
import ellwand.work.Stop;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** Searches for the markers that tasks ask for. */
public final class MarkerCraft implements Craft {

  /** The job of the task before: most ask for lays of one. */
  private volatile Known known;

  private record Known(JobFiles files, Job job) {}

  /** For the tasks of any job. */
  public MarkerCraft() {}

  /** The same for whoever has read the job of the first tasks already. */
  public MarkerCraft(JobFiles.Read<?> read) {
    known = read.style().map(job -> new Known(read.files(), job)).orElse(null);
  }

  @Override
  public byte[] work(Task task, Stop stop, Consumer<byte[]> news) {
    if (!task.kind().equals(MarkerTask.KIND)) {
      throw new TaskFailed("nobody here can do a task of the kind " + task.kind());
    }
    MarkerTask asked = MarkerTask.of(task.asked());
    try {
      Job job = job(asked.job());
      Lay lay = asked.lay().lay(job);
      Request request = asked.request(stop, told -> news.accept(SearchNews.bytes(told)));
      return MarkerReply.of(
          job,
          asked.from().isPresent()
              ? goneOn(asked.from().get(), lay, asked.folds().get(0), request)
              : Nester.nest(lay, asked.folds(), request));
    } catch (InputException e) {
      return MarkerReply.refusing(e.problems());
    }
  }

  /** A shorter marker, or none. */
  private static List<Tried> goneOn(byte[] from, Lay lay, Fold fold, Request request) {
    Marker start = MarkerReply.marker(from, fold, lay);
    return List.of(
        new Tried(fold, Nester.goOn(start, request), Optional.empty(), Optional.empty(), false));
  }

  private Job job(JobFiles files) {
    Known before = known;
    if (before != null && before.files.same(files)) {
      return before.job;
    }
    Job job = files.style();
    known = new Known(files, job);
    return job;
  }
}
