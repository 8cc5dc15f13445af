package ellwand.many;

import ellwand.app.AskedLay;
import ellwand.app.Hands;
import ellwand.cloth.Fold;
import ellwand.job.Job;
import ellwand.lay.Lay;
import ellwand.nest.Tried;
import ellwand.work.Request;
import java.util.List;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/** Has the markers of a job made by a workshop, one task for each search. */
final class TaskHands implements Hands {

  private static final long POLL_MILLIS = 20;

  private final Workshop workshop;
  private final JobFiles files;
  private final Job job;

  /**
   * @param job as read from the files, or the style of the order that they hold
   */
  TaskHands(Workshop workshop, JobFiles files, Job job) {
    this.workshop = workshop;
    this.files = files;
    this.job = job;
  }

  @Override
  public List<Tried> nest(Lay lay, List<Fold> folds, Request request) {
    MarkerTask asked =
        new MarkerTask(
            files,
            AskedLay.of(job, lay),
            folds,
            request.effort(),
            request.seed(),
            request.threads());
    Errand errand =
        workshop.give(asked.task(), news -> request.progress().hear(SearchNews.of(news)));
    return MarkerReply.read(brought(errand, request), lay, folds);
  }

  /** What comes back; where a stop is wanted, the best by then. */
  private static byte[] brought(Errand errand, Request request) {
    boolean hurried = false;
    while (true) {
      if (!hurried && request.stop().wanted()) {
        hurried = true;
        errand.hurry();
      }
      try {
        return errand.done().get(POLL_MILLIS, TimeUnit.MILLISECONDS);
      } catch (TimeoutException e) {
        // Not yet.
      } catch (ExecutionException e) {
        if (e.getCause() instanceof Error error) {
          throw error;
        }
        throw e.getCause() instanceof RuntimeException known ? known : new CompletionException(e);
      } catch (InterruptedException e) {
        errand.withdraw();
        Thread.currentThread().interrupt();
        throw new CompletionException(e);
      }
    }
  }
}
