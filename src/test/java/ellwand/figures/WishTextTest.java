package ellwand.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;

import ellwand.cloth.Direction;
import ellwand.cloth.Wish;
import ellwand.rule.Handling;
import ellwand.rule.LegalMarkers;
import ellwand.units.Unit;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the cutter's wishes cost, in words. */
class WishTextTest {

  private static String price(double mm, double toBuyMm, double price) {
    Handling handling = Handling.of(LegalMarkers.open(Direction.ONE_WAY));
    Served served = new Served(List.of(Wish.STRAIGHT_CUTS), mm, toBuyMm, price, 2000, handling);
    return WishText.price(served, "EUR", Unit.CM);
  }

  @Test
  void whatIsHardlyAnythingIsSaidSo() {
    assertEquals("hardly any cloth (0.0 %), nothing more to buy", price(0.3, 0, 0));
  }

  @Test
  void clothAndMoneyAreTold() {
    assertEquals("5.0 cm of cloth (2.5 %), 10.0 cm more to buy: 1.20 EUR", price(50, 100, 1.2));
    assertEquals("none, the marker is as short as without them", price(0, 0, 0));
  }
}
