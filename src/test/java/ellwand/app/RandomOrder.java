package ellwand.app;

import ellwand.file.job.OrderJobReader;
import ellwand.file.source.Folder;
import ellwand.job.OrderJob;
import java.nio.charset.StandardCharsets;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Orders made at random, of smocks that are laid in a moment. */
final class RandomOrder {

  private final SplittableRandom random;

  private RandomOrder(long seed) {
    this.random = new SplittableRandom(seed);
  }

  /** 4 to 6 sizes in two colours, 60 to 300 garments or so. */
  static OrderJob of(long seed) {
    byte[] yaml = new RandomOrder(seed).yaml().getBytes(StandardCharsets.UTF_8);
    return OrderJobReader.read("order.yaml", Folder.DISK.with("order.yaml", yaml));
  }

  private String yaml() {
    int sizes = upTo(4, 6);
    String names =
        IntStream.rangeClosed(1, sizes).mapToObj(s -> "S" + s).collect(Collectors.joining(", "));
    int along = upTo(1, 4);
    String grade = "{far: [%d, 0], corner: [%d, %d]}".formatted(along, along, upTo(1, 3));
    int most = upTo(60, 300) / sizes;
    return """
    ellwand: 1
    unit: cm
    sizes: {names: [%s], grade: {back: %s, sleeve: %s}}
    style:
      name: Smock
      size: S1
      allowance: 0
      pieces:
        back: {cut: {main: 1}, outline: %s}
        sleeve: {cut: {main: pair}, outline: %s}
    cloths: {main: {width: %d, fold: open, gap: 2 mm}}
    order:
      colours: {red: {%s}, blue: {%s}}
      max-plies: %d
      max-garments: %d
      end-loss: 2
      table: %d
      cost: {lay: %d, cloth: %d per m}
    """
        .formatted(
            names,
            grade,
            grade,
            outline(upTo(30, 70), upTo(20, 50)),
            outline(upTo(20, 40), upTo(10, 30)),
            upTo(80, 150),
            garments(sizes, most),
            garments(sizes, most),
            upTo(10, 40),
            upTo(3, 4),
            upTo(220, 400),
            upTo(0, 20),
            upTo(4, 14));
  }

  private String garments(int sizes, int most) {
    return IntStream.rangeClosed(1, sizes)
        .mapToObj(s -> "S%d: %d".formatted(s, upTo(1, most)))
        .collect(Collectors.joining(", "));
  }

  private String outline(int along, int across) {
    return ("[[0, 0], {point: far, at: [%d, 0]}, {point: corner, at: [%d, %d]},"
            + " {point: near, at: [0, %d]}]")
        .formatted(along, along, across, across + upTo(0, 10));
  }

  private int upTo(int least, int most) {
    return random.nextInt(least, most + 1);
  }
}
