package ellwand.nest.repeat;

/**
 * A choice of place in the repeat: how far from the middle of a bar the first mark of some pieces
 * that match each other lies.
 *
 * @param garment which garment of the lay
 * @param size its size
 * @param axis along or across the cloth
 * @param group which of the garment's groups of matched pieces
 */
public record Free(int garment, String size, Axis axis, int group) {

  /** A direction on the cloth. */
  enum Axis {
    ALONG,
    ACROSS
  }
}
