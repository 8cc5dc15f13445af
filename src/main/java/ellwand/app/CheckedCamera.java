package ellwand.app;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import ellwand.file.source.Folder;
import ellwand.trace.CameraCheck;
import ellwand.units.Length;
import ellwand.units.Unit;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;

/**
 * How well a camera measured one reference sheet by the others.
 *
 * @param unit that lengths are shown in
 */
public record CheckedCamera(CameraCheck check, Unit unit) implements Answer {

  private static final int MOST_BYTES = 50_000_000;

  /**
   * Measures photos.
   *
   * @param files their paths
   */
  public static CheckedCamera of(List<String> files, Folder from, Unit unit) {
    return new CheckedCamera(
        CameraCheck.of(files, files.stream().map(f -> from.read(f, MOST_BYTES)).toList()), unit);
  }

  /** Whether no corner is farther off than was expected of it. */
  @Override
  public boolean achieved() {
    return check.findings().stream().allMatch(f -> f.offMm() <= f.expectedMm());
  }

  @Override
  public String text() {
    StringBuilder text = new StringBuilder();
    for (CameraCheck.Finding f : check.findings()) {
      text.append(
          ("%s: %s is measured by the others as %s x %s, printed are %s x %s; its farthest corner"
                  + " is off by %s, expected was up to %s.\n")
              .formatted(
                  f.file(),
                  f.sheet(),
                  fine(f.widthMm()),
                  fine(f.heightMm()),
                  fine(CameraCheck.WIDTH_MM),
                  fine(CameraCheck.HEIGHT_MM),
                  fine(f.offMm()),
                  fine(f.expectedMm())));
    }
    return text.toString();
  }

  /** Tenths of a millimetre, or thousandths of an inch, which is what this is about. */
  private String fine(double mm) {
    boolean inches = unit == Unit.INCH || unit == Unit.YARD;
    return inches
        ? String.format(Locale.ROOT, "%.3f in", new Length(mm).in(Unit.INCH))
        : String.format(Locale.ROOT, "%.1f mm", mm);
  }

  @Override
  public byte[] json() {
    try {
      return new ObjectMapper().writeValueAsBytes(check);
    } catch (JsonProcessingException e) {
      throw new UncheckedIOException(e);
    }
  }
}
