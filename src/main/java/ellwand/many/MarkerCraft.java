package ellwand.many;

import ellwand.app.Hands;
import ellwand.job.Job;
import ellwand.lay.Lay;
import ellwand.problem.InputException;
import ellwand.work.Stop;
import java.util.function.Consumer;

/** Searches for the markers that tasks ask for. */
public final class MarkerCraft implements Craft {

  /** The job of the task before: most ask for lays of one. */
  private volatile Known known;

  private record Known(JobFiles files, Job job) {}

  @Override
  public byte[] work(Task task, Stop stop, Consumer<byte[]> news) {
    if (!task.kind().equals(MarkerTask.KIND)) {
      throw new TaskFailed("nobody here can do a task of the kind " + task.kind());
    }
    MarkerTask asked = MarkerTask.of(task.asked());
    try {
      Job job = job(asked.job());
      Lay lay = asked.lay().lay(job);
      return MarkerReply.of(
          job,
          Hands.OWN.nest(
              lay,
              asked.folds(),
              asked.request(stop, told -> news.accept(SearchNews.bytes(told)))));
    } catch (InputException e) {
      return MarkerReply.refusing(e.problems());
    }
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
