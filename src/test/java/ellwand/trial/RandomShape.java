package ellwand.trial;

import java.util.List;

/** Corners of pieces, mm: some of them their own mirror images, or nearly so. */
final class RandomShape {

  private RandomShape() {}

  /** Above its fold along y = 0, which is its first edge. */
  static double[][] half(Dice dice, double l, double w) {
    return switch (dice.nextInt(4)) {
      case 0 -> new double[][] {{0, 0}, {l, 0}, {l, w}, {0, w}};
      case 1 -> new double[][] {{0, 0}, {l, 0}, {l * dice.share(0.5, 1), w}, {l * 0.1, w * 0.8}};
      case 2 -> new double[][] {{0, 0}, {l, 0}, {l * 0.6, w}};
      default ->
          new double[][] {{0, 0}, {l, 0}, {l, w}, {l * 0.7, w}, {l * 0.7, w * 0.4}, {0, w * 0.4}};
    };
  }

  static double[][] whole(Dice dice, double l, double w) {
    double slip = dice.any(List.of(0.0, 0.0, 0.01, 0.06, 0.3, 2.0, 8.0));
    return switch (dice.nextInt(9)) {
      case 0 -> new double[][] {{0, 0}, {l, 0}, {l, w}, {0, w}};
      // Its own mirror image, or not quite.
      case 1 -> new double[][] {{0, 0}, {l, w * 0.2}, {l, w * 0.8 + slip}, {0, w}};
      case 2 -> new double[][] {{0, 0}, {l, w * 0.3}, {l * 0.5, w}};
      // All mirrored corners of a U lie on its line.
      case 3 ->
          new double[][] {
            {0, 0},
            {l, 0},
            {l, w},
            {l * 0.7, w},
            {l * 0.7, w * 0.25},
            {l * 0.15, w * 0.25},
            {l * 0.15, w},
            {0, w}
          };
      case 4 ->
          new double[][] {{0, 0}, {l, 0}, {l, w * 0.3}, {l * 0.4, w * 0.3}, {l * 0.4, w}, {0, w}};
      case 5 -> {
        double cut = w * 0.2;
        yield new double[][] {{0, cut}, {cut, 0}, {l, 0}, {l, w}, {cut + slip, w}, {0, w - cut}};
      }
      case 6 ->
          new double[][] {
            {0, 0},
            {l, 0},
            {l, w},
            {l * 0.8, w * 0.3},
            {l * 0.6, w},
            {l * 0.4, w * 0.3},
            {l * 0.2, w},
            {0, w}
          };
      case 7 -> star(dice, l, w);
      default -> new double[][] {{0, 0}, {l, w * 0.1}, {l * 1.1, w * 0.9}, {l * 0.1, w}};
    };
  }

  private static double[][] star(Dice dice, double l, double w) {
    double[][] points = new double[5 + dice.nextInt(5)][];
    for (int i = 0; i < points.length; i++) {
      double angle = 2 * Math.PI * i / points.length;
      double far = 0.5 * dice.share(0.4, 1);
      points[i] = new double[] {l * far * Math.cos(angle), w * far * Math.sin(angle)};
    }
    return points;
  }
}
