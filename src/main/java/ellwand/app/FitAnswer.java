package ellwand.app;

import ellwand.figures.Fitting;
import ellwand.file.figures.FittingWriter;
import ellwand.units.Unit;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Whether all that is wanted fits on a remnant.
 *
 * @param laid all of it on the remnant, as the cutter wishes; empty if it does not fit
 * @param fitting the answer in figures
 * @param taken how the remnant is taken, one sentence each
 * @param unit that lengths are shown in
 */
public record FitAnswer(Optional<LaidJob> laid, Fitting fitting, List<String> taken, Unit unit)
    implements Answer {

  /** Whether it fits. */
  @Override
  public boolean achieved() {
    return fitting.fits();
  }

  @Override
  public String text() {
    return fitting.sentences(unit)
        + taken.stream().map(sentence -> "\n" + sentence).collect(Collectors.joining())
        + laid.map(l -> "\n" + l.text()).orElse("");
  }

  @Override
  public byte[] json() {
    return FittingWriter.bytes(fitting);
  }

  /** Those of a lay if it fits, none if not. */
  @Override
  public List<Output> outputs() {
    return laid.map(LaidJob::outputs).orElse(List.of());
  }
}
