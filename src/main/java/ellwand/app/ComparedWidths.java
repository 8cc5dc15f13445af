package ellwand.app;

import ellwand.figures.Comparison;
import ellwand.figures.ComparisonText;
import ellwand.file.figures.ComparisonWriter;
import ellwand.units.Length;
import ellwand.units.Unit;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A cloth in several widths and ways of laying.
 *
 * @param unit that lengths are shown in
 */
public record ComparedWidths(Comparison comparison, Unit unit) implements Answer {

  /** Whether any width will do. */
  @Override
  public boolean achieved() {
    return comparison.possible();
  }

  @Override
  public String text() {
    return ComparisonText.of(comparison, unit);
  }

  /** How much each width takes. */
  @Override
  public String headline() {
    return comparison.style()
        + comparison.bestOfEach().stream()
            .map(
                row ->
                    new Length(row.tried().clothLengthMm()).show(unit)
                        + " where "
                        + new Length(row.widthMm()).show(unit)
                        + " wide")
            .collect(Collectors.joining(", ", ": " + comparison.cloth() + " ", ""));
  }

  /** What {@code compare.json} holds. */
  @Override
  public byte[] json() {
    return ComparisonWriter.bytes(comparison);
  }

  /** Table, chart and figures. */
  @Override
  public List<Output> outputs() {
    return Format.outputs(Format.COMPARISON, "", this);
  }
}
