package ellwand.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.job.Wear;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Each statement on safety against what its source says, and no more than that. */
class SafetyTest {

  private static String one(Set<Wear> wear, String of) {
    List<String> about = Safety.of(wear).stream().filter(c -> c.contains(of)).toList();
    assertEquals(1, about.size(), about::toString);
    return about.get(0);
  }

  /** Common practice, without a source. */
  @Test
  void bladesAndPinsAlways() {
    assertEquals(
        List.of(
            "Close a rotary cutter whenever it is down and cut away from your body; a powered knife"
                + " needs its guard down and a chain-mail glove. Count pins and needles back."),
        Safety.of(Set.of()));
  }

  /**
   * Tukes, the Finnish safety agency, 'Cords and drawstrings on children's clothing': up to 7 years
   * or 134 cm none in hood, head or neck area and none tied behind the neck; 7 to 14 years no
   * drawstrings with free ends there. The scope up to 14 years is that of EN 14682's abstract.
   */
  @Test
  void cordsInEuropeGoByAgeOrHeight() {
    assertEquals(
        "Children's clothes, EU and UK (EN 14682): up to 7 years or 134 cm no cords or drawstrings"
            + " in the hood, head or neck area, and none tied behind the neck; from 7 to 14 years"
            + " no drawstrings with free ends there.",
        one(Set.of(Wear.CHILDREN), "EN 14682"));
  }

  /**
   * Scope of ASTM F1816-18 and UL's summary of it: upper outerwear; none at hood or neck in 2T to
   * 12; at waist and bottom in 2T to 16 at most 75 mm (3 in) outside the channel at full width, no
   * toggles or knots, sewn fast at the middle of the back.
   */
  @Test
  void drawstringsInTheUnitedStatesGoBySizeAndAreOfUpperOuterwearOnly() {
    assertEquals(
        "Children's upper outerwear, US (16 CFR 1120 with ASTM F1816): no drawstrings at hood or"
            + " neck in sizes 2T to 12; at waist and bottom in sizes 2T to 16 at most 75 mm (3 in)"
            + " outside the channel at full width, without toggles or knots, sewn fast at the"
            + " middle of the back.",
        one(Set.of(Wear.CHILDREN), "F1816"));
  }

  /**
   * CEN/TC 248 WG 20 lists CEN/TS 17394-1 (requirements), EN 17394-2 (buttons) and CEN/TS 17394-3
   * (metal press fasteners). 16 CFR 1501.3(d) exempts children's clothing and accessories such as
   * buttons, so 16 CFR 1501 is not named.
   */
  @Test
  void attachedPartsAreThoseOfTheEuropeanStandards() {
    assertEquals(
        "Children's clothes: buttons, press fasteners and other attached parts must hold fast"
            + " (CEN/TS 17394-1; buttons EN 17394-2, metal press fasteners CEN/TS 17394-3).",
        one(Set.of(Wear.CHILDREN), "17394"));
    assertFalse(String.join(" ", Safety.of(Set.of(Wear.values()))).contains("1501"));
  }

  /** EN 14878 is for children's nightwear, 16 CFR 1615 and 1616 for US children's sleepwear. */
  @Test
  void nightwearRulesAreThoseOfChildrensOnly() {
    assertEquals(
        "Children's nightwear: ask how cloth and trim burn before you choose them (EN 14878; in the"
            + " US 16 CFR 1615 and 1616).",
        one(Set.of(Wear.CHILDREN, Wear.NIGHTWEAR), "EN 14878"));
    assertFalse(String.join(" ", Safety.of(Set.of(Wear.CHILDREN))).contains("14878"));
    assertEquals(Safety.of(Set.of()), Safety.of(Set.of(Wear.NIGHTWEAR)));
  }

  @Test
  void whatDecidesIsSaidOnceAndLast() {
    List<String> all = Safety.of(Set.of(Wear.CHILDREN, Wear.NIGHTWEAR));
    assertEquals("The law where you sell and licensed practice decide.", all.get(all.size() - 1));
    assertTrue(all.stream().filter(c -> c.contains("licensed practice")).count() == 1);
  }
}
