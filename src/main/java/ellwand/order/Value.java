package ellwand.order;

import java.util.Comparator;

/**
 * What a plan is judged by, most important first.
 *
 * @param cost what is to be paid, in ten-thousand-millionths of the user's money, 0 if no cost was
 *     given
 * @param cloth that is cut, in thousandths of a mm
 * @param lays how many
 * @param deviation garments away from those wanted
 */
record Value(long cost, long cloth, long lays, long deviation) implements Comparable<Value> {

  private static final Comparator<Value> ORDER =
      Comparator.comparingLong(Value::cost)
          .thenComparingLong(Value::cloth)
          .thenComparingLong(Value::lays)
          .thenComparingLong(Value::deviation);

  @Override
  public int compareTo(Value other) {
    return ORDER.compare(this, other);
  }
}
