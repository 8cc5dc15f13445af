package ellwand.draw.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.geometry.Point;
import ellwand.units.Unit;
import java.util.List;
import org.junit.jupiter.api.Test;

class ShownTest {

  @Test
  void clothIsBoughtInMetresOrYards() {
    assertEquals("1.20 m", new Shown(Unit.CM).bought(1200));
    assertEquals("1 3/8 yd", new Shown(Unit.INCH).bought(1.375 * 914.4));
  }

  @Test
  void aLengthToBuyIsNeverRoundedDown() {
    // 1.2 m is 47.24 inches: 1 yd 11 1/4 in is enough, 1 1/4 yd (45 in) would not be.
    assertEquals("1 yd 11 1/4 in", new Shown(Unit.INCH).bought(1200));
    assertEquals("120.3 cm", new Shown(Unit.CM).bought(1202.1));
  }

  @Test
  void tableIsWorkedInSmallUnits() {
    assertEquals(Unit.CM, new Shown(Unit.M).atTable().unit());
    assertEquals(Unit.INCH, new Shown(Unit.YARD).atTable().unit());
    assertEquals(Unit.MM, new Shown(Unit.MM).atTable().unit());
  }

  @Test
  void rulersAreNumberedInTensOrFeet() {
    assertEquals(List.of("0", "10", "20", "30"), numbers(Unit.CM, 8, 320));
    assertEquals(List.of("0", "6", "12"), numbers(Unit.INCH, 8, 320));
    assertEquals(List.of("0", "12"), numbers(Unit.YARD, 25, 350));
    assertEquals(List.of("0", "100", "200", "300"), numbers(Unit.MM, 8, 320));
    assertEquals(List.of("0", "50", "100"), numbers(Unit.CM, 40, 1200));
  }

  @Test
  void numbersKeepWithinTheirRuler() {
    // 30 cm would stand half beyond a ruler of 30.2 cm.
    assertEquals(List.of("0", "10", "20"), numbers(Unit.CM, 8, 302));
  }

  @Test
  void rulerOfALaterZoneCountsFromTheCutEnd() {
    Ruler ruler = new Ruler("ruler", new Point(0, 5), new Point(1, 0), new Point(0, 1), 955, 1120);
    Item.Group drawn = (Item.Group) ruler.draw(new Reading(8), Unit.CM);
    Item.Text first =
        (Item.Text) drawn.items().stream().filter(Item.Text.class::isInstance).findFirst().get();
    assertEquals("100", first.words());
    assertEquals(1000, first.at().x(), 1e-9);
    assertTrue(first.at().y() > 5);
  }

  private static List<String> numbers(Unit unit, double scale, double lengthMm) {
    Ruler ruler =
        new Ruler("ruler", new Point(0, 0), new Point(1, 0), new Point(0, 1), 0, lengthMm);
    Item.Group drawn = (Item.Group) ruler.draw(new Reading(scale), unit);
    return drawn.items().stream()
        .filter(Item.Text.class::isInstance)
        .map(t -> ((Item.Text) t).words())
        .toList();
  }
}
