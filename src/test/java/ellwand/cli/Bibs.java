package ellwand.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** An order of bibs: a pair, a piece without hand and one with, in two cloths. */
final class Bibs {

  private Bibs() {}

  static final String YAML =
      """
      ellwand: 1
      unit: cm
      style:
        name: Bib
        size: M
        allowance: 0
        pieces:
          side: {cut: {felt: pair}, outline: [[0, 0], [30, 0], [30, 40], [0, 35]]}
          middle: {cut: {felt: 1}, outline: [[0, 0], [20, 0], [20, 20], [0, 20]]}
          flap: {cut: {felt: 1, lawn: 2}, outline: [[0, 0], [10, 0], [10, 8], [0, 4]]}
      cloths: {felt: {width: 100, fold: open, price: 4 per m}, lawn: {width: 40, fold: open}}
      order:
        colours: {red: {M: 4}, blue: {M: 3}}
        max-plies: 8
        max-garments: 4
      """;

  /** The job in a folder, with more lines of its order. */
  static Path job(Path folder, String more) throws IOException {
    return Files.writeString(folder.resolve("bibs.yaml"), YAML + more);
  }

  /** Runs an order briefly; its results are in the same folder. */
  static Ran order(Path folder, Path job) {
    return Ran.of("order", job, "--json", "--effort", "60steps", "--threads", 1, "--out", folder);
  }
}
