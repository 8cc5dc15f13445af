package ellwand.pattern.block;

/** An edge of another piece of the style. */
public record PieceEdge(String piece, String edge) {

  /** As in a job: {@code front.armhole}. */
  @Override
  public String toString() {
    return piece + "." + edge;
  }
}
