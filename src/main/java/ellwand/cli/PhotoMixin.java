package ellwand.cli;

import ellwand.file.photo.HowCut;
import java.util.Optional;
import java.util.OptionalInt;
import picocli.CommandLine.Option;

/** Options of {@code convert} that say how a photographed piece is meant. */
final class PhotoMixin {

  @Option(
      names = "--piece",
      paramLabel = "N",
      description = "Of the pieces to be seen in a photo, the one with this number.")
  private Integer piece;

  @Option(
      names = "--on-fold",
      paramLabel = "EDGE",
      description =
          "The edge of a photographed half piece that lies on the fold, such as 'A to B' in its"
              + " control picture.")
  private String onFold;

  @Option(
      names = "--half",
      paramLabel = "EDGE",
      description = "The edge at which a photographed half piece is mirrored, to be drawn whole.")
  private String half;

  @Option(
      names = "--grain",
      paramLabel = "EDGE",
      description =
          "The edge of a photographed piece that runs along the grain, or 'up' for up the picture."
              + " Default: an arrow drawn on the piece, the fold, or up the picture.")
  private String grain;

  /** Whether anything of this is said. */
  boolean asked() {
    return piece != null || onFold != null || half != null || grain != null;
  }

  /** The number of the piece that is wanted, if one is named. */
  OptionalInt piece() {
    return piece == null ? OptionalInt.empty() : OptionalInt.of(piece);
  }

  /** How it is cut, as far as that is said. */
  HowCut how() {
    return new HowCut(
        Optional.ofNullable(onFold), Optional.ofNullable(half), Optional.ofNullable(grain));
  }
}
