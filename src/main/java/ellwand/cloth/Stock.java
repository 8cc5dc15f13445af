package ellwand.cloth;

/**
 * Cloth that is there already, so that its length is given.
 *
 * @param name of the remnant, as the user gave it
 * @param lengthMm along the warp, as it comes to the table
 */
public record Stock(String name, double lengthMm) {

  public Stock {
    if (!(lengthMm > 0)) {
      throw new IllegalArgumentException("remnant " + name + " must be longer than 0");
    }
  }
}
