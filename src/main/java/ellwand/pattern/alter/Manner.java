package ellwand.pattern.alter;

import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.pattern.Workpiece;
import java.util.Optional;

/**
 * How a line leaves or arrives at its end.
 *
 * @param edge that it keeps to; empty for one that is free
 */
public record Manner(How how, Optional<String> edge) {

  /** Which way it keeps to. */
  public enum How {
    /** At a right angle to the edge. */
    SQUARE_TO,
    /** As the edge runs there, so that both go on smoothly. */
    ALONG,
    /** As it comes. */
    FREE
  }

  /** As it comes. */
  public static final Manner FREE = new Manner(How.FREE, Optional.empty());

  public Manner {
    if (edge.isEmpty() != (how == How.FREE)) {
      throw new IllegalArgumentException("a line that is not free keeps to an edge");
    }
  }

  static Manner squareTo(String edge) {
    return new Manner(How.SQUARE_TO, Optional.of(edge));
  }

  /**
   * The direction in which the line passes its end, either way, length 1.
   *
   * @param end of the line; the edge is looked at where it is nearest
   * @throws ellwand.problem.InputException if there is no such edge
   */
  Optional<Point> direction(Workpiece piece, Point end) {
    return edge.map(
        name -> {
          Path line = piece.edge(name).line();
          Point along = line.tangent(line.nearest(end)).direction();
          return how == How.ALONG ? along : along.left();
        });
  }

  /** As it is written: {@code square to shoulder}. */
  public String words() {
    return switch (how) {
      case SQUARE_TO -> "square to " + edge.orElseThrow();
      case ALONG -> "along " + edge.orElseThrow();
      case FREE -> "free";
    };
  }
}
