package ellwand.file.source;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.DecimalNode;
import ellwand.geometry.Point;
import ellwand.units.Unit;
import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Writes lengths as bare numbers of a unit, true to less than a millionth of a mm.
 *
 * @param unit that the file says bare numbers stand for
 */
public record Measures(Unit unit) {

  private static final int DECIMALS = 10;

  /** A length. */
  public DecimalNode number(double mm) {
    BigDecimal plain =
        BigDecimal.valueOf(mm / unit.mm())
            .setScale(DECIMALS, RoundingMode.HALF_EVEN)
            .stripTrailingZeros();
    return DecimalNode.valueOf(plain.scale() < 0 ? plain.setScale(0) : plain);
  }

  /** A place. */
  public ArrayNode place(Point mm) {
    return Json.object().arrayNode().add(number(mm.x())).add(number(mm.y()));
  }
}
