package ellwand.bench;

import ellwand.geometry.Outline;
import java.util.List;

/**
 * One instance of strip packing, in its own unit of length.
 *
 * @param width of the strip, across
 */
record Instance(String name, double width, List<Item> items) {

  Instance {
    items = List.copyOf(items);
    if (!(width > 0) || items.isEmpty()) {
      throw new IllegalArgumentException(name + ": a strip needs a width and something to lay");
    }
  }

  /**
   * @param rotations allowed, degrees
   */
  record Item(Outline outline, int demand, List<Double> rotations) {

    Item {
      rotations = List.copyOf(rotations);
      if (demand < 1 || rotations.isEmpty()) {
        throw new IllegalArgumentException("an item needs a demand and a rotation");
      }
    }
  }

  /** Of all copies together. */
  double area() {
    return items.stream().mapToDouble(i -> i.demand() * i.outline().area()).sum();
  }

  int copies() {
    return items.stream().mapToInt(Item::demand).sum();
  }

  /** The same with other rotations allowed for every item. */
  Instance turned(List<Double> rotations) {
    return new Instance(
        name,
        width,
        items.stream().map(i -> new Item(i.outline(), i.demand(), rotations)).toList());
  }

  /** With every demand raised so that there are about {@code copies} copies. */
  Instance enlarged(int copies) {
    double factor = (double) copies / copies();
    return new Instance(
        name + " x" + copies,
        width,
        items.stream()
            .map(
                i ->
                    new Item(
                        i.outline(),
                        (int) Math.max(1, Math.round(i.demand() * factor)),
                        i.rotations()))
            .toList());
  }
}
