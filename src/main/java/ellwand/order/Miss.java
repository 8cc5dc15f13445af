package ellwand.order;

/**
 * A size and colour that no plan can cut within tolerance, and what the nearest plan cuts.
 *
 * @param why a sentence without full stop
 */
public record Miss(String colour, String size, int wanted, int cut, String why) {

  static final String COUPLES =
      "this spreading cuts every size in even numbers;"
          + " allow a garment over or under, or spread with all faces up";

  @Override
  public String toString() {
    return "colour %s, size %s: %d wanted, %d cut: %s".formatted(colour, size, wanted, cut, why);
  }
}
