package ellwand.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.file.job.JobReader;
import ellwand.file.marker.MarkerWriter;
import ellwand.file.source.Folder;
import ellwand.job.Job;
import ellwand.lay.Marker;
import ellwand.problem.InputException;
import ellwand.units.Unit;
import ellwand.work.Effort;
import ellwand.work.Request;
import ellwand.work.Seed;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Jobs and markers that are in no file can be checked as well. */
class CheckInMemoryTest {

  private static final Folder JOB =
      Folder.EMPTY.with(
          "cushion.yaml",
          """
          ellwand: 1
          unit: cm
          style:
            name: cushion
            allowance: 1
            pieces:
              face: {cut: {main: 2}, outline: [[0, 0], [40, 0], [40, 40], [0, 40]]}
          cloths:
            main: {width: 140}
          order:
            garments: 1
          """
              .getBytes(StandardCharsets.UTF_8));

  private static Folder withMarker() {
    Job job = JobReader.read("cushion.yaml", JOB);
    Marker marker =
        LayRun.make(job, Unit.CM, Request.of(Effort.ofSteps(20), new Seed(1))).markers().get(0);
    return JOB.with("main.marker.json", MarkerWriter.bytes(marker, job));
  }

  @Test
  void aJob() {
    assertTrue(JobCheck.of("cushion.yaml", JOB, Optional.empty()).achieved());
  }

  @Test
  void aMarkerWithTheJobThatItNames() {
    CheckedMarker checked =
        CheckRun.marker("main.marker.json", withMarker(), Optional.empty(), Optional.empty());
    assertTrue(checked.achieved(), checked.text());
  }

  @Test
  void aMarkerWithAnotherJob() {
    String message =
        assertThrows(
                InputException.class,
                () ->
                    CheckRun.marker(
                        "main.marker.json",
                        withMarker(),
                        Optional.of("other.yaml"),
                        Optional.empty()))
            .getMessage();
    assertEquals("other.yaml: there is no such file. See that its path is right.", message);
  }
}
