package ellwand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** A job whose pieces are printed. */
final class Wedge {

  /** Both lines of a slanting piece lie at places that are easily worked out. */
  static final String JOB =
      """
      ellwand: 1
      unit: cm
      style:
        name: Wedge
        allowance: 1
        pieces:
          gore: {cut: {main: 2}, outline: [[0, 0], [0, 40], [50, 30], [50, 10]]}
          tab: {cut: {main: 1}, outline: [[0, 0], [0, 5], [6, 5], [6, 0]]}
      cloths:
        main: {width: 140}
      order: {garments: 1}
      """;

  private Wedge() {}

  /** Printed into the folder, with no remark. */
  static Path print(Path folder, String... options) throws IOException {
    Path job = Files.writeString(folder.resolve("job.yaml"), JOB);
    Path out = folder.resolve("out.pdf");
    List<Object> args = new ArrayList<>(List.of("print", job));
    args.addAll(List.of(options));
    args.addAll(List.of("--out", out));
    Ran ran = Ran.of(args.toArray());
    assertEquals(0, ran.code(), ran.err());
    return out;
  }
}
