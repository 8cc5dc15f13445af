package ellwand.app;

import ellwand.figures.Fitting;
import java.nio.charset.StandardCharsets;

/**
 * How often the order of a job comes out of a remnant.
 *
 * @param remnant as the user named it
 * @param times 0 or more
 * @param garments in the order
 */
public record FitTimes(String remnant, int times, int garments) implements Answer {

  /** Whether it comes out at all. */
  @Override
  public boolean achieved() {
    return times > 0;
  }

  @Override
  public String text() {
    return Fitting.most(remnant, times, garments);
  }

  /** The number. */
  @Override
  public byte[] json() {
    return Integer.toString(times).getBytes(StandardCharsets.UTF_8);
  }
}
