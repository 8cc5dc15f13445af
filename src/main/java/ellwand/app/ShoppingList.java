package ellwand.app;

import ellwand.draw.order.ShoppingSheet;
import ellwand.figures.Safety;
import ellwand.figures.Shopping;
import ellwand.figures.ShoppingText;
import ellwand.job.Wear;
import ellwand.units.Unit;
import java.nio.charset.StandardCharsets;
import java.util.Set;

/**
 * Everything to buy, as it is written.
 *
 * @param heading what it is for
 * @param garments how many garments that makes
 */
record ShoppingList(String heading, int garments, Shopping buy, Set<Wear> wear, Unit unit) {

  byte[] pdf() {
    return ShoppingSheet.pdf(heading, garments, buy, Safety.onTrims(wear), unit);
  }

  byte[] text() {
    StringBuilder text = new StringBuilder(ShoppingText.of(heading, garments, buy, unit));
    Safety.onTrims(wear).forEach(caution -> text.append("! ").append(caution).append('\n'));
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }
}
