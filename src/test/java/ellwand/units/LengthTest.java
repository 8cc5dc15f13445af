package ellwand.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import ellwand.problem.InputException;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class LengthTest {

  private static double mm(String text) {
    return Length.parse(text, Unit.CM).mm();
  }

  @Test
  void theInchAndTheYardAreExact() {
    // 0.9144 m to the yard, 36 inches in it: international yard and pound agreement of 1959.
    assertEquals(914.4, mm("1 yd"));
    assertEquals(25.4, mm("1 in"));
    assertEquals(36 * 25.4, mm("1 yd"), 1e-12);
  }

  @ParameterizedTest
  @CsvSource({
    "4 cm, 40",
    "4, 40",
    "12mm, 12",
    "1.5 m, 1500",
    "'1,5 m', 1500",
    "'.5 cm', 5",
    "5/8 in, 15.875",
    "1 1/2 yd, 1371.6",
    "44\", 1117.6",
    "-7 cm, -70",
    "+7 cm, 70",
    "' 2 IN ', 50.8",
  })
  void lengthsAreReadAsPeopleWriteThem(String text, double wanted) {
    assertEquals(wanted, mm(text), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({
    "413, CM, 41.3 cm",
    "412.96, CM, 41.3 cm",
    "412.4, MM, 412 mm",
    "1500, M, 1.50 m",
    "-0.2, MM, 0 mm",
    "0, INCH, 0 in",
    "15.875, INCH, 5/8 in",
    "19.05, INCH, 3/4 in",
    "12.7, INCH, 1/2 in",
    "38.1, INCH, 1 1/2 in",
    "-38.1, INCH, -1 1/2 in",
    "1371.6, YARD, 1 1/2 yd",
    "1485.9, YARD, 1 5/8 yd",
    "910, YARD, 1 yd",
  })
  void lengthsAreShownToTheStepOfTheirUnit(double mm, Unit unit, String wanted) {
    assertEquals(wanted, new Length(mm).show(unit));
  }

  @ParameterizedTest
  @CsvSource({
    // Dressmakers' equivalents are rounded, not exact [common practice].
    "1 cm, 3/8 in",
    "2.2 cm, 7/8 in",
    "5 cm, 2 in",
  })
  void centimetresShownInInchesAreTheNearestEighth(String cm, String inches) {
    assertEquals(inches, Length.parse(cm, Unit.CM).show(Unit.INCH));
  }

  @Property(tries = 200)
  void whatIsShownIsReadAgainToWithinHalfAStep(
      @ForAll @IntRange(min = -2_000_000, max = 2_000_000) int hundredths, @ForAll Unit unit) {
    double mm = hundredths / 100.0;
    Length back = Length.parse(new Length(mm).show(unit), Unit.MM);
    assertEquals(mm, back.mm(), unit.stepMm() / 2 + 1e-9);
    assertEquals(new Length(mm).show(unit), back.show(unit));
  }

  @ParameterizedTest
  @EnumSource(Unit.class)
  void everyUnitIsReadBySymbol(Unit unit) {
    assertEquals(unit, Unit.parse(unit.symbol()));
    assertEquals(1, Length.of(1, unit).in(unit), 1e-15);
  }

  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '`',
      value = {
        "long, 'long' cannot be read as a length. Write for example 2 cm; 12 mm; 5/8 in; 1 1/2 yd.",
        "``, '' cannot be read as a length. Write for example 2 cm; 12 mm; 5/8 in; 1 1/2 yd.",
        "2 ells, 'ells' is not a unit of length. Use mm; cm; m; in; yd.",
        "1/0 in, '1/0 in' divides by 0. Write for example 5/8 in or 1 1/2 yd.",
        "1 2/0 in, '1 2/0 in' divides by 0. Write for example 5/8 in or 1 1/2 yd.",
        "1 1/2 1/2 in, '1 1/2 1/2 in' cannot be read as a length. Write for example 2 cm; 12 mm; 5/8 in; 1 1/2 yd.",
      })
  void whatIsNoLengthIsRefusedWithTheRemedy(String text, String wanted) {
    String message = assertThrows(InputException.class, () -> mm(text)).getMessage();
    assertEquals(wanted.replace(';', ','), message);
  }

  @Test
  void aLengthIsANumber() {
    assertThrows(IllegalArgumentException.class, () -> new Length(Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> new Length(Double.POSITIVE_INFINITY));
    assertThrows(InputException.class, () -> mm("1" + "0".repeat(400) + " cm"));
  }
}
