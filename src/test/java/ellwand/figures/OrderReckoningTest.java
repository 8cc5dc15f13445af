package ellwand.figures;

import static ellwand.units.Unit.CM;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.cloth.Cloth;
import ellwand.cloth.Direction;
import ellwand.cloth.Fold;
import ellwand.cloth.Selling;
import ellwand.figures.OrderCloth.SizeCost;
import ellwand.figures.OrderCloth.Sum;
import ellwand.order.Cost;
import ellwand.order.CutOrderPlan;
import ellwand.order.GarmentLengths;
import ellwand.order.Limits;
import ellwand.order.Order;
import ellwand.order.OrderPlanner;
import ellwand.order.Spreading;
import ellwand.order.Tolerance;
import ellwand.rule.Trial;
import ellwand.work.Effort;
import ellwand.work.Request;
import ellwand.work.Seed;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** What the report of an order says adds up. */
class OrderReckoningTest {

  private static final GarmentLengths LENGTHS =
      new GarmentLengths(Map.of("S", 800.0, "M", 1000.0, "L", 1250.0));

  private static CutOrderPlan plan(Order order) {
    return OrderPlanner.plan(order, LENGTHS, Request.of(Effort.ofSteps(50), new Seed(1)));
  }

  private static OrderCloth cloth(Order order, Sum plain) {
    return new OrderReckoning("", plan(order), Map.of(), LENGTHS)
        .figures(1, plain, Optional.empty());
  }

  private static OrderFigures of(OrderCloth... cloths) {
    return new OrderFigures("Aprons", "EUR", List.of(cloths), List.of());
  }

  private static OrderFigures figures(Order order) {
    return of(cloth(order, Sum.NOTHING));
  }

  private static Order order(Map<String, Map<String, Integer>> wanted, Spreading spreading) {
    return new Order(
        wanted, new Limits(12, 3, 4000, 40), new Tolerance(1, 0), new Cost(7, 5), spreading);
  }

  @Property(tries = 40)
  void costsAndClothAddUp(
      @ForAll @IntRange(max = 20) int s,
      @ForAll @IntRange(min = 1, max = 20) int m,
      @ForAll @IntRange(max = 20) int l,
      @ForAll boolean folded) {
    Spreading folds =
        new Spreading(
            Spreading.Faces.FOLDED,
            Spreading.PlyHeadings.ONE_WAY,
            ellwand.cloth.Direction.ANY_WAY,
            false,
            false);
    OrderFigures figures =
        figures(
            order(
                Map.of("red", Map.of("S", s, "M", m), "blue", Map.of("M", m, "L", l)),
                folded ? folds : Spreading.PLAIN));
    List<SizeCost> sizes = figures.cloths().get(0).sizes();
    double cost = sizes.stream().mapToDouble(z -> z.cut() * z.cost()).sum();
    double cloth = sizes.stream().mapToDouble(z -> z.cut() * z.clothMm()).sum();
    assertEquals(figures.total().cost(), cost, 1e-6);
    assertEquals(figures.total().clothMm(), cloth, 1e-6);
    assertEquals(
        figures.total().clothMm(),
        figures.clothByColour().values().stream().mapToDouble(Double::doubleValue).sum(),
        1e-6);
    assertEquals(figures.garments(), sizes.stream().mapToInt(SizeCost::cut).sum());
    for (LayTicket lay : figures.lays()) {
      int layers = folded ? lay.totalPlies() / 2 : lay.totalPlies();
      assertEquals(layers * 40, lay.endLossMm(), 1e-6);
      assertEquals(layers * (lay.lengthMm() + 40), lay.totalClothMm(), 1e-6);
    }
  }

  @Test
  void aGarmentCostsWhatAllItsClothsDo() {
    Order order = order(Map.of("red", Map.of("S", 5, "M", 10)), Spreading.PLAIN);
    OrderCloth main = cloth(order, Sum.NOTHING);
    CutOrderPlan lining =
        plan(
            order(
                Map.of("sand", Map.of("S", 6, "M", 12)), // one S and two M too many
                Spreading.PLAIN));
    OrderCloth second =
        new OrderReckoning("lining", lining, Map.of(), LENGTHS)
            .figures(2, Sum.NOTHING, Optional.empty());
    OrderFigures figures = of(main, second);
    assertEquals(15, figures.garments());
    assertEquals(List.of(1, 2), figures.lays().stream().map(LayTicket::number).toList());
    double cost = figures.sizes().stream().mapToDouble(z -> z.cut() * z.cost()).sum();
    assertEquals(figures.total().cost(), cost, 1e-6);
    assertEquals(main.total().cost() + second.total().cost(), cost, 1e-6);
    assertEquals("lining-1", second.markers().get(0).name());
  }

  @Test
  void oneLayWorkedOutByHand() {
    // 2 x M and 1 x S in one marker of 2.8 m, 5 plies: 5 x 2.84 m at 5 a metre, and 7 for the lay.
    OrderFigures figures = figures(order(Map.of("red", Map.of("S", 5, "M", 10)), Spreading.PLAIN));
    assertEquals(new Sum(1, 14200, 7, 71, 71), figures.total());
    SizeCost small =
        figures.cloths().get(0).sizes().stream()
            .filter(z -> z.size().equals("S"))
            .findFirst()
            .orElseThrow();
    // A third of the lay, and 800 of 2800 of its cloth, over five garments.
    assertEquals((7 / 3.0 + 14.2 * 5 * 800 / 2800) / 5, small.cost(), 1e-9);
    String text = OrderText.of(figures, ellwand.units.Unit.CM);
    assertTrue(
        text.startsWith("Aprons: 15 garments in 1 lay, 14.20 m of cloth for 78.00 EUR\n"), text);
    OrderCloth dearer =
        cloth(
            order(Map.of("red", Map.of("S", 5, "M", 10)), Spreading.PLAIN),
            new Sum(3, 14000, 0, 91, 91));
    assertTrue(
        OrderText.sentences(of(dearer), dearer, ellwand.units.Unit.CM)
            .contains(
                "One size a lay would take 3 lays and 14.00 m of cloth, 91.00 EUR; this plan takes"
                    + " 2 lays fewer, 0.20 m more cloth and 13.00 EUR less."));
  }

  @Test
  void whatIsPaidIsForClothAsBought() {
    // The same lay, of cloth that is sold by the half metre: 14.5 m at 5, and 7 for the lay.
    Cloth plain = Trial.cloth(1400, 0, Direction.ANY_WAY, Fold.OPEN);
    Cloth serge = new Cloth("serge", plain.goods(), plain.laying(), Selling.inSteps(500));
    Order cut = order(Map.of("red", Map.of("S", 5, "M", 10)), Spreading.PLAIN);
    Cost cost = new Cost(7, 5, Optional.of(serge));
    Order order = new Order(cut.wanted(), cut.limits(), cut.tolerance(), cost, cut.spreading());
    OrderCloth cloth =
        new OrderReckoning("serge", plan(order), Map.of(), LENGTHS)
            .figures(1, Sum.NOTHING, Optional.empty());
    assertEquals(new Sum(1, 14200, 7, 71, 72.5), cloth.total());
    assertEquals(79.5, cloth.total().cost(), 1e-9);
    assertEquals(79.5, cloth.sizes().stream().mapToDouble(z -> z.cut() * z.cost()).sum(), 1e-9);
    String text = OrderText.of(of(cloth), CM);
    assertTrue(
        text.startsWith(
            "Aprons: 15 garments in 1 lay, 14.20 m of cloth, 14.50 m to buy, for 79.50 EUR\n"
                + "  Of that 72.50 EUR for cloth as bought (71.00 EUR for what is cut of it), lays"
                + " 7.00 EUR.\n"),
        text);
  }

  private static OrderCloth known(OrderCloth cloth, int laysAtLeast, boolean proved) {
    return new OrderCloth(
        cloth.cloth(),
        cloth.colours(),
        cloth.lays(),
        cloth.markers(),
        cloth.clothByColour(),
        cloth.toBuyByColour(),
        cloth.sizes(),
        cloth.utilisation(),
        cloth.total(),
        laysAtLeast,
        proved,
        cloth.plain(),
        cloth.revision(),
        cloth.misses());
  }

  @Test
  void fewestLaysAreToldOnlyWhereTheyAreNotProved() {
    OrderCloth cloth =
        cloth(
            order(Map.of("red", Map.of("S", 20, "M", 3, "L", 11)), Spreading.PLAIN),
            new Sum(3, 0, 0, 0, 0));
    int lays = cloth.total().lays();
    assertTrue(lays > 1, lays + " lays");
    String open = "At least 1 lay is needed; that " + lays + " are the fewest is not proved.";
    assertTrue(sentences(known(cloth, 1, false)).contains(open));
    // Neither where the plan has no more than are needed, nor where it is proved as a whole.
    assertTrue(sentences(known(cloth, lays, false)).stream().noneMatch(s -> s.contains("needed")));
    assertTrue(sentences(known(cloth, 1, true)).stream().noneMatch(s -> s.contains("needed")));
    assertEquals("No plan is better: this is proved.", sentences(known(cloth, 1, true)).get(0));
  }

  private static List<String> sentences(OrderCloth cloth) {
    return OrderText.sentences(of(cloth), cloth, ellwand.units.Unit.CM);
  }

  @Test
  void pliesAreToldByColour() {
    String one = OrderText.of(figures(order(Map.of("red", Map.of("S", 5)), Spreading.PLAIN)), CM);
    assertTrue(one.contains(" plies of red\n") || one.contains(" ply of red\n"), one);
    Map<String, Map<String, Integer>> two =
        new LinkedHashMap<>(Map.of("red", Map.of("S", 5, "M", 5)));
    two.put("blue", Map.of("S", 4, "M", 4));
    String both = OrderText.of(figures(order(two, Spreading.PLAIN)), CM);
    assertTrue(both.contains("9 plies: 5 of red, 4 of blue\n"), both);
  }

  @Test
  void whatTrueLengthsChangedIsToldInPlainWords() {
    OrderCloth cloth =
        cloth(order(Map.of("red", Map.of("S", 5)), Spreading.PLAIN), new Sum(1, 0, 0, 0, 0));
    OrderCloth revised =
        new OrderCloth(
            cloth.cloth(),
            cloth.colours(),
            cloth.lays(),
            cloth.markers(),
            cloth.clothByColour(),
            cloth.toBuyByColour(),
            cloth.sizes(),
            cloth.utilisation(),
            cloth.total(),
            1,
            true,
            cloth.plain(),
            Optional.of(
                new OrderCloth.Revision(
                    3,
                    new Sum(4, 90_000, 0, 900, 900),
                    new Sum(4, 87_810, 0, 900.54, 900.54),
                    false,
                    true,
                    0.073,
                    6,
                    2)),
            List.of());
    List<String> told = sentences(revised);
    assertTrue(
        told.contains("Estimated marker lengths were 7.3 % too long (6 markers and 3 plans made)."),
        told::toString);
    assertTrue(
        told.contains(
            "The true marker lengths changed the plan: the first, of 4 lays, would have taken 87.81"
                + " m of cloth, 900.54 EUR, and some of its markers do not fit on the table."),
        told::toString);
    assertTrue(
        told.get(1).endsWith(" (estimated: 2 markers for one size a lay were not made)."),
        told::toString);
  }
}
