package ellwand.trial;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import ellwand.app.LaidJob;
import ellwand.app.LayRun;
import ellwand.app.Output;
import ellwand.file.job.JobReader;
import ellwand.file.marker.MarkerWriter;
import ellwand.file.source.Folder;
import ellwand.job.Job;
import ellwand.lay.Marker;
import ellwand.problem.InputException;
import ellwand.work.Effort;
import ellwand.work.Request;
import ellwand.work.Seed;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;

/**
 * What became of a job made at random.
 *
 * @param number of the job
 * @param said why it was refused, what is wrong with its markers, or where the program failed
 */
record JobTrial(long number, Ending ending, List<String> said) {

  enum Ending {
    /** With a marker for each cloth, and the judge has nothing to say. */
    LAID,
    /** With a reason and a remedy. */
    REFUSED,
    /** The judge finds a marker illegal. */
    ILLEGAL,
    /** A bug: neither a marker nor a reason. */
    FAILED
  }

  private static final ObjectMapper JSON = new ObjectMapper();

  boolean wrong() {
    return ending == Ending.ILLEGAL || ending == Ending.FAILED;
  }

  /**
   * Reads, lays and judges one job.
   *
   * @param drawn whether all its files are made, too
   */
  static JobTrial of(long number, int steps, boolean drawn) {
    return of(number, RandomJob.of(number), steps, drawn);
  }

  /**
   * The same of a job that another has made.
   *
   * @param number the seed, too
   */
  static JobTrial of(long number, JsonNode made, int steps, boolean drawn) {
    try {
      Job job =
          JobReader.read("job.yaml", Folder.EMPTY.with("job.yaml", JSON.writeValueAsBytes(made)));
      LaidJob laid =
          LayRun.make(job, job.unit(), Request.of(Effort.ofSteps(steps), new Seed(number)));
      List<String> faults = new ArrayList<>();
      for (Marker marker : laid.markers()) {
        JsonNode written = JSON.readTree(MarkerWriter.bytes(marker, job));
        String cloth = marker.lay().cloth().name();
        Judge.faults(made, written).forEach(f -> faults.add(cloth + ": " + f));
      }
      if (drawn) {
        laid.outputs().forEach(Output::bytes);
      }
      return new JobTrial(number, faults.isEmpty() ? Ending.LAID : Ending.ILLEGAL, faults);
    } catch (InputException e) {
      List<String> said = e.problems().stream().map(Object::toString).toList();
      boolean remedied = e.problems().stream().noneMatch(p -> p.remedy().isBlank());
      return new JobTrial(number, remedied ? Ending.REFUSED : Ending.FAILED, said);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (RuntimeException | StackOverflowError | AssertionError e) {
      StringWriter trace = new StringWriter();
      e.printStackTrace(new PrintWriter(trace));
      return new JobTrial(number, Ending.FAILED, trace.toString().lines().limit(12).toList());
    }
  }
}
