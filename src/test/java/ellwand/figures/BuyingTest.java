package ellwand.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.cloth.Cloth;
import ellwand.cloth.Fold;
import ellwand.cloth.Goods;
import ellwand.cloth.Laying;
import ellwand.cloth.Selling;
import ellwand.cloth.Shrinkage;
import ellwand.units.Unit;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class BuyingTest {

  private static final double EIGHTH_YARD = Unit.YARD.mm() / 8;

  private static Cloth cloth(Shrinkage shrinkage, double ends, double step) {
    return new Cloth(
        "main",
        Goods.wide(1400).selvedge(10).shrinking(shrinkage),
        Laying.in(Fold.OPEN).ends(ends),
        Selling.inSteps(step).at(12.5, "EUR"));
  }

  @Test
  void endsAreAddedAndTheStepIsRoundedUpTo() {
    Cloth cloth = cloth(Shrinkage.NONE, 40, 50);
    assertEquals(1050, Buying.lengthMm(cloth, 961), 1e-9);
    assertEquals(1050, Buying.lengthMm(cloth, 1010), 1e-9);
    assertEquals(1100, Buying.lengthMm(cloth, 1010.1), 1e-9);
  }

  @Test
  void exactMultiplesBuyNoFurtherStep() {
    Cloth decimetres = cloth(Shrinkage.NONE, 0, 100);
    Cloth centimetres = cloth(Shrinkage.NONE, 0, 10);
    Cloth eighths = cloth(Shrinkage.NONE, 0, EIGHTH_YARD);
    double tenths = 0;
    double inches = 0;
    for (int n = 1; n <= 400; n++) {
      // Added up in small parts, these miss the multiple by floating error.
      for (int i = 0; i < 10; i++) {
        tenths += 0.1 * 10;
        inches += 4.5 * 25.4 / 10;
      }
      assertEquals(n * 10, Buying.lengthMm(centimetres, tenths), 1e-6);
      assertEquals(n * EIGHTH_YARD, Buying.lengthMm(eighths, inches), 1e-6);
      assertEquals(n * 100, Buying.lengthMm(decimetres, 0.1 * n * 1000), 1e-6);
    }
  }

  /** Length to buy = length needed / (1 - s), common practice. */
  @Test
  void clothWashedFirstIsBoughtLongerAndWider() {
    Cloth cloth = cloth(new Shrinkage(0.04, 0.03, Shrinkage.When.BEFORE_CUTTING), 40, 1);
    // 960 mm + 40 mm of ends is 1000 / 0.96 = 1041.67 mm; the shop cuts whole mm here.
    assertEquals(1042, Buying.lengthMm(cloth, 960), 1e-9);
    // The 1400 mm come to 1358 on the table, of which 1338 lie between the selvedges.
    assertEquals(1338, cloth.usableWidthMm(), 1e-9);
    assertEquals(1400, Buying.widthMm(cloth, 1338), 1e-9);
  }

  @Test
  void clothWashedAsAGarmentIsBoughtAsLaid() {
    Cloth cloth = cloth(new Shrinkage(0.04, 0.03, Shrinkage.When.AFTER), 40, 1);
    assertEquals(1000, Buying.lengthMm(cloth, 960), 1e-9);
    assertEquals(1400, Buying.widthMm(cloth, 1380), 1e-9);
  }

  @Test
  void costIsOfWhatIsBought() {
    assertEquals(13.125, Buying.cost(cloth(Shrinkage.NONE, 40, 50), 1050), 1e-12);
  }

  @Property
  void enoughIsBoughtButLessThanAStepTooMuch(
      @ForAll @DoubleRange(min = 0, max = 30_000) double length,
      @ForAll @DoubleRange(min = 0.5, max = 1000) double step,
      @ForAll @DoubleRange(min = 0, max = 0.3) double along) {
    Cloth cloth = cloth(new Shrinkage(along, 0, Shrinkage.When.BEFORE_CUTTING), 20, step);
    double bought = Buying.lengthMm(cloth, length);
    double needed = (length + 20) / (1 - along);
    assertTrue(bought >= needed - 0.0101 && bought < needed + step);
    assertEquals(0, Math.IEEEremainder(bought, step), 1e-6);
  }
}
