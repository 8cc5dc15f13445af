package ellwand.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.figures.ToBuy.Kind;
import ellwand.pattern.Design;
import ellwand.pattern.Extent;
import ellwand.pattern.Sizes;
import ellwand.pattern.Style;
import ellwand.pattern.Trim;
import ellwand.units.Unit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Trims to buy, reckoned by hand. */
class TrimmingsTest {

  private static final Sizes SIZES = new Sizes(List.of("S", "L"), "S", Map.of());

  private static Trim elastic(double share, double plus, double step) {
    return new Trim(
        "elastic",
        new Trim.Lengths(new Extent.BySize(Map.of("S", 600.0, "L", 700.0)), share, plus, step),
        List.of(),
        Optional.of(25.0),
        new Trim.Price(1.2, 1000, "EUR"));
  }

  private static Trim pieces(Map<String, Integer> bySize, int garments, double pack) {
    return new Trim(
        "buttons",
        new Trim.Pieces(bySize, garments, Optional.empty()),
        List.of(),
        Optional.empty(),
        new Trim.Price(2.1, pack, "EUR"));
  }

  private static Trimmings of(Trim... trims) {
    Design design =
        new Design("shorts", Unit.CM, SIZES, List.of(), List.of(), List.of(), List.of())
            .trimmed(List.of(trims));
    return new Trimmings(Style.of(design));
  }

  @Test
  void elasticIsAShareOfItsEdgeAndMoreForItsEnds() {
    // 3 x (60 cm x 85 % + 2 cm) + 2 x (70 cm x 85 % + 2 cm) = 282 cm, sold by 10 cm.
    ToBuy bought = of(elastic(0.85, 20, 100)).toBuy(Map.of("S", 3, "L", 2)).get(0);
    assertEquals(2900, bought.lengthMm().get(), 1e-9);
    assertEquals(3.48, bought.cost(), 1e-9);
    assertEquals("2.90 m", bought.amount(Unit.CM));
    assertEquals("1.20 EUR a metre", bought.price(Unit.CM));
  }

  @Test
  void nobodyBuysAnotherStepForARoundingError() {
    ToBuy bought = of(elastic(0.1 + 0.2, 0, 180)).toBuy(Map.of("S", 1)).get(0);
    assertEquals(180, bought.lengthMm().get(), 1e-9);
  }

  @Test
  void buttonsComeInPacks() {
    // 3 x 4 + 2 x 5 = 22: four packs of 6.
    ToBuy bought = of(pieces(Map.of("S", 4, "L", 5), 1, 6)).toBuy(Map.of("S", 3, "L", 2)).get(0);
    assertEquals(24, bought.count().getAsInt());
    assertEquals(8.4, bought.cost(), 1e-9);
    assertEquals("2.10 EUR for 6", bought.price(Unit.CM));
  }

  @Test
  void threadDoesForSeveralGarments() {
    Trim thread = pieces(Map.of("S", 1, "L", 1), 4, 1);
    assertEquals(1, of(thread).toBuy(Map.of("S", 4)).get(0).count().getAsInt());
    assertEquals(2, of(thread).toBuy(Map.of("S", 3, "L", 2)).get(0).count().getAsInt());
    assertEquals(2.1 / 4, of(thread).costBySize().get("S"), 1e-9);
  }

  @Test
  void zipsOfDifferentLengthsAreBoughtApart() {
    Trim zip =
        new Trim(
            "zip",
            new Trim.Pieces(
                Map.of("S", 1, "L", 1),
                1,
                Optional.of(new Extent.BySize(Map.of("S", 180.0, "L", 200.0)))),
            List.of(),
            Optional.empty(),
            Trim.Price.UNKNOWN);
    List<ToBuy> bought = of(zip).toBuy(new java.util.TreeMap<>(Map.of("L", 2, "S", 3)));
    assertEquals(
        List.of("zip, 20.0 cm long: 2", "zip, 18.0 cm long: 3"),
        bought.stream().map(b -> b.words(Unit.CM) + ": " + b.amount(Unit.CM)).toList());
    Shopping buy = new Shopping(bought);
    assertFalse(buy.known());
    assertEquals(List.of("zip"), buy.unpriced());
  }

  @Test
  void onlyTheSizesNamedTakeIt() {
    Trim loop =
        new Trim(
            "loop",
            new Trim.Lengths(new Extent.Given(240), 1, 0, 1),
            List.of("L"),
            Optional.empty(),
            Trim.Price.UNKNOWN);
    assertEquals(List.of(), of(loop).toBuy(Map.of("S", 9)));
    assertEquals(240, of(loop).toBuy(Map.of("S", 9, "L", 1)).get(0).lengthMm().get());
  }

  @Test
  void moneyInTwoCurrenciesIsNotAddedUp() {
    ToBuy wool = Shopping.cloth("wool", "", 1400, 1000, 22, "EUR");
    ToBuy felt = Shopping.cloth("felt", "", 900, 1000, 5, "GBP");
    assertEquals(0, new Shopping(List.of(wool, felt)).cost());
    assertFalse(new Shopping(List.of(wool, felt)).known());
    assertTrue(new Shopping(List.of(wool)).known());
    assertEquals(22, new Shopping(List.of(wool)).cost(Kind.CLOTH));
  }

  @Property(tries = 200)
  void enoughIsBoughtAndNoStepTooMuch(
      @ForAll @IntRange(min = 0, max = 30) int small,
      @ForAll @IntRange(min = 1, max = 30) int large,
      @ForAll @IntRange(min = 1, max = 12) int pack,
      @ForAll @IntRange(min = 1, max = 9) int each) {
    ToBuy bought =
        of(pieces(Map.of("S", each, "L", each + 1), 1, pack))
            .toBuy(Map.of("S", small, "L", large))
            .get(0);
    int needed = 0;
    for (int i = 0; i < small; i++) {
      needed += each;
    }
    for (int i = 0; i < large; i++) {
      needed += each + 1;
    }
    int count = bought.count().getAsInt();
    assertTrue(count >= needed && count - pack < needed, needed + " wanted, " + count);
    assertEquals(0, count % pack);
  }
}
