package ellwand.cli;

import ellwand.problem.InputException;
import ellwand.units.Unit;
import java.util.Optional;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** The option of every command that shows lengths. */
final class UnitMixin {

  @Option(
      names = "--units",
      paramLabel = "UNIT",
      converter = UnitConverter.class,
      description = "Show lengths in mm, cm, m, in or yd. Default: the unit of the job.")
  private Unit unit;

  /** The unit asked for, if any; otherwise that of the job serves. */
  Optional<Unit> unit() {
    return Optional.ofNullable(unit);
  }

  /** What is measured at the table in yards is shown in inches; what is bought, in yards. */
  static Unit atTable(Unit unit) {
    return unit == Unit.YARD ? Unit.INCH : unit;
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
