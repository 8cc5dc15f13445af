package ellwand.cli;

import ellwand.app.Outcome;
import ellwand.problem.InputException;
import ellwand.units.Unit;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** Options for how results are shown. */
final class ShowMixin {

  @Option(
      names = "--units",
      paramLabel = "UNIT",
      converter = UnitConverter.class,
      description = "Show lengths in mm, cm, m, in or yd. Default: the unit of the job.")
  private Unit unit;

  @Option(names = "--json", description = "Print the figures as JSON and nothing else.")
  private boolean json;

  /** The unit asked for, if any; otherwise that of the job serves. */
  Optional<Unit> unit() {
    return Optional.ofNullable(unit);
  }

  boolean json() {
    return json;
  }

  /** Prints the result as it is asked for. */
  void print(PrintWriter results, Outcome outcome) {
    results.println(
        json
            ? new String(outcome.json(), StandardCharsets.UTF_8).strip()
            : outcome.text().stripTrailing());
  }

  /** Reads a unit. */
  static final class UnitConverter implements ITypeConverter<Unit> {
    @Override
    public Unit convert(String text) {
      try {
        return Unit.parse(text);
      } catch (InputException e) {
        throw new TypeConversionException(e.getMessage());
      }
    }
  }
}
