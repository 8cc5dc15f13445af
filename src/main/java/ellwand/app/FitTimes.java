package ellwand.app;

import ellwand.figures.Fitting;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;

/**
 * How many garments of a job come out of a remnant.
 *
 * @param remnant as the user named it
 * @param cut how many garments, 0 or more
 * @param garments in the order
 * @param stoppedEarly by the user, before the effort was spent
 * @param taken how the remnant is taken, one sentence each
 */
public record FitTimes(
    String remnant, int cut, int garments, boolean stoppedEarly, List<String> taken)
    implements Answer {

  /** Whether one comes out at all. */
  @Override
  public boolean achieved() {
    return cut > 0;
  }

  @Override
  public String text() {
    return Fitting.most(remnant, cut, garments)
        + taken.stream().map(sentence -> "\n" + sentence).collect(Collectors.joining());
  }

  @Override
  public List<String> remarks() {
    return stoppedEarly
        ? List.of("The search was stopped early; more may be cut from " + remnant + ".")
        : List.of();
  }

  /** The number. */
  @Override
  public byte[] json() {
    return Integer.toString(cut).getBytes(StandardCharsets.UTF_8);
  }
}
