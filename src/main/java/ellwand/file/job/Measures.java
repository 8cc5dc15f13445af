package ellwand.file.job;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.DecimalNode;
import ellwand.file.source.Json;
import ellwand.geometry.Point;
import ellwand.units.Unit;
import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Writes lengths as bare numbers of a unit, true to less than a millionth of a mm.
 *
 * @param unit that the file says bare numbers stand for
 */
record Measures(Unit unit) {

  private static final int DECIMALS = 10;

  DecimalNode number(double mm) {
    BigDecimal plain =
        BigDecimal.valueOf(mm / unit.mm())
            .setScale(DECIMALS, RoundingMode.HALF_EVEN)
            .stripTrailingZeros();
    return DecimalNode.valueOf(plain.scale() < 0 ? plain.setScale(0) : plain);
  }

  ArrayNode place(Point mm) {
    return Json.object().arrayNode().add(number(mm.x())).add(number(mm.y()));
  }
}
