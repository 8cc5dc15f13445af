package ellwand.rule;

import ellwand.geometry.Point;
import ellwand.units.Unit;
import java.util.List;
import java.util.Optional;

/**
 * One place where a marker breaks a rule.
 *
 * @param pieces names of the pieces concerned, perhaps none
 * @param copies the copies concerned, by their places in {@link ellwand.lay.Marker#copies}, from 0;
 *     none for what is missing or concerns all of it
 * @param place where on the laid cloth, mm; empty for what is missing or concerns all of it
 * @param amount by how much, above 0, in {@link Rule#unit}
 * @param words says it to people
 */
public record Finding(
    Rule rule,
    List<String> pieces,
    List<Integer> copies,
    Optional<Point> place,
    double amount,
    Words words) {

  /** A sentence that shows its lengths in the unit asked for. */
  @FunctionalInterface
  public interface Words {
    String in(Unit unit);
  }

  public Finding {
    pieces = List.copyOf(pieces);
    copies = List.copyOf(copies);
    // What cannot be measured is as wrong as can be.
    amount = Double.isNaN(amount) ? Double.POSITIVE_INFINITY : amount;
    if (!(amount > 0)) {
      throw new IllegalArgumentException("rule " + rule.id() + " is kept where nothing is amiss");
    }
  }

  /** Of the marker as a whole; none where the amount is 0. */
  static List<Finding> ofWhole(Rule rule, double amount, Words words) {
    return amount > 0
        ? List.of(new Finding(rule, List.of(), List.of(), Optional.empty(), amount, words))
        : List.of();
  }

  /** {@code Left back overlaps front by 3.2 mm near x = 41.0 cm.} */
  public String sentence(Unit unit) {
    return words.in(unit);
  }
}
