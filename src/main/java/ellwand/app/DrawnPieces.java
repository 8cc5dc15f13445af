package ellwand.app;

import ellwand.draw.piece.PieceDrawing;
import ellwand.job.Job;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The pieces of a job drawn.
 *
 * @param scale mm of piece for one mm of paper in a PDF; where absent, to fit on A4
 */
public record DrawnPieces(Job job, PieceDrawing drawing, Optional<Double> scale) {

  /** What the name of a file may end with that they can be drawn in. */
  public static List<String> endings() {
    return Format.PIECES.stream().map(Format::ending).toList();
  }

  /**
   * The file of the format that its name ends with.
   *
   * @throws IllegalArgumentException if it ends with none of {@link #endings}
   */
  public Output output(String name) {
    String lower = name.toLowerCase(Locale.ROOT);
    return Format.PIECES.stream()
        .filter(format -> lower.endsWith(format.ending()))
        .findFirst()
        .map(format -> new Output(name, () -> format.writer().apply(this)))
        .orElseThrow(() -> new IllegalArgumentException(name + " ends with no known format"));
  }

  byte[] pdf() {
    return scale.map(drawing::pdf).orElseGet(drawing::pdf);
  }

  /** Which words a PDF or PNG cannot show in full, as a sentence. */
  public Optional<String> unprinted() {
    return JobCautions.unprinted(job);
  }
}
