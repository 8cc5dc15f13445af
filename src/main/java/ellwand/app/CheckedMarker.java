package ellwand.app;

import ellwand.file.figures.CheckWriter;
import ellwand.rule.Finding;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.List;

/**
 * A marker file held against its job.
 *
 * @param findings every hard rule that is broken; none for a legal marker
 * @param jobChanged the job file is not the one that the marker was made from
 * @param unit that lengths are shown in
 */
public record CheckedMarker(List<Finding> findings, boolean jobChanged, Unit unit)
    implements Answer {

  /** Lines that somebody still reads; {@code --json} has all. */
  private static final int MOST_LINES = 100;

  public CheckedMarker {
    findings = List.copyOf(findings);
  }

  /** Whether every hard rule is kept. */
  @Override
  public boolean achieved() {
    return findings.isEmpty();
  }

  @Override
  public String text() {
    if (findings.isEmpty()) {
      return "Every hard rule is kept.";
    }
    List<String> lines = new ArrayList<>();
    int left = 0;
    for (Finding finding : findings) {
      // What concerns the whole marker is always told.
      if (lines.size() < MOST_LINES || finding.copies().isEmpty()) {
        lines.add(finding.sentence(unit));
      } else {
        left++;
      }
    }
    if (left > 0) {
      lines.add("And " + left + " more (--json tells all).");
    }
    return String.join("\n", lines);
  }

  @Override
  public byte[] json() {
    return CheckWriter.findings(findings, jobChanged, unit);
  }

  @Override
  public List<String> remarks() {
    return jobChanged ? List.of("The job has been changed since the marker was made.") : List.of();
  }
}
