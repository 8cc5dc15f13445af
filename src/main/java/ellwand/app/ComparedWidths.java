package ellwand.app;

import ellwand.figures.Comparison;
import ellwand.figures.ComparisonText;
import ellwand.file.figures.ComparisonWriter;
import ellwand.units.Unit;
import java.util.List;

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
