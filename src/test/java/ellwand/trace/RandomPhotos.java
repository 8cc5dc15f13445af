package ellwand.trace;

import ellwand.geometry.Box;
import ellwand.geometry.Motion;
import ellwand.geometry.Outline;
import ellwand.geometry.Path;
import ellwand.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/**
 * A photo as it may come, at random: piece, paper, ground, sheets, camera, light and what is wrong
 * with it.
 *
 * @param said what it is, for whoever reads the results
 * @param truth the piece as it lies
 */
record RandomPhotos(String said, Outline truth, Scene scene, List<SimulatedCamera> cameras) {

  /** Photo number {@code seed}; the same for everyone. */
  static RandomPhotos of(long seed) {
    Random dice = new Random(seed * 7919 + 13);
    String shape = List.of("pocket", "front", "front", "leg").get(dice.nextInt(4));
    List<Path> path =
        switch (shape) {
          case "pocket" -> PaperShapes.pocket();
          case "front" -> PaperShapes.front();
          default -> PaperShapes.leg();
        };
    boolean leg = shape.equals("leg");
    double turn = (leg ? 90 : 0) + between(dice, -25, 25);
    Outline truth =
        Outline.of(PaperShapes.round(path).flattened(0.01)).moved(new Motion(false, turn, 0, 0));
    Scene.Paper paper = one(dice, Scene.Paper.values());
    Scene.Ground ground = one(dice, Scene.Ground.values());
    Scene.Flaws flaws =
        new Scene.Flaws(
            between(dice, 0.4, 1.8),
            dice.nextInt(3) == 0 ? between(dice, 1, 6) : 0,
            between(dice, 0.005, 0.03),
            between(dice, 0, 0.7),
            dice.nextInt(3) == 0 ? between(dice, 0.15, 0.6) : 0,
            60 + dice.nextInt(36),
            seed);
    List<Scene.LaidSheet> sheets =
        sheets(dice, truth.box(), leg ? 2 + dice.nextInt(3) : Math.min(2, 1 + dice.nextInt(6)));
    List<Scene.Arrow> arrows = dice.nextBoolean() ? List.of(arrow(dice, truth)) : List.of();
    Scene scene =
        new Scene(
            ground,
            sheets,
            List.of(new Scene.PaperPiece(truth, paper, dice.nextBoolean(), arrows)),
            flaws);
    double share = between(dice, 0.45, 0.75);
    double tilt = between(dice, 0, 35);
    Box all = truth.box();
    for (Scene.LaidSheet sheet : sheets) {
      all = all.union(sheet.sheet().outline().moved(sheet.where()).box());
    }
    double distance =
        Math.max(all.length(), all.width() * 4 / 3) * between(dice, 0.88, 1.2) * (1 + tilt / 120);
    double k1 = between(dice, -0.08, 0.06);
    int photos = leg && dice.nextBoolean() ? 2 : 1;
    List<SimulatedCamera> cameras = new ArrayList<>();
    for (int i = 0; i < photos; i++) {
      Point aim = all.centre().plus(new Point(between(dice, -30, 30), between(dice, -30, 30)));
      cameras.add(
          SimulatedCamera.phone(aim, distance * between(dice, 0.95, 1.05))
              .tilted(tilt, between(dice, 60, 120))
              .lens(k1, -k1 / 3, 0.005)
              .scaled(share));
    }
    String said =
        String.format(
            Locale.ROOT,
            "%d %s, %s on %s, %d sheets, %d x %.1f MP, tilt %.0f, blur %.1f, moved %.1f, noise"
                + " %.3f, shadow %.1f, hard %.2f, k1 %.2f%s",
            seed,
            shape,
            paper.toString().toLowerCase(Locale.ROOT),
            ground.toString().toLowerCase(Locale.ROOT).replace('_', ' '),
            sheets.size(),
            photos,
            12 * share * share,
            tilt,
            flaws.blurPx(),
            flaws.movedPx(),
            flaws.noise(),
            flaws.shadow(),
            flaws.hardShadow(),
            k1,
            arrows.isEmpty() ? "" : ", arrow");
    return new RandomPhotos(said, truth, scene, cameras);
  }

  /** Beside the piece: left, right, above, below, in an order of their own. */
  private static List<Scene.LaidSheet> sheets(Random dice, Box box, int count) {
    List<Scene.LaidSheet> sheets = new ArrayList<>();
    Point middle = box.centre();
    boolean wide = box.length() > 500;
    int first = dice.nextInt(2);
    for (int i = 0; i < count; i++) {
      double shift = between(dice, -0.15, 0.15);
      double turn = between(dice, -8, 8);
      double gap = between(dice, 25, 60);
      boolean one = (i + first) % 2 == 0;
      Point at;
      if (wide) {
        double x = middle.x() + (i / 2 == 0 ? -0.3 : 0.25) * box.length() + shift * 200 - 105;
        at = new Point(x, one ? box.maxY() + gap : box.minY() - gap - 320);
      } else {
        double y = middle.y() - 150 + shift * box.width();
        at = new Point(one ? box.minX() - gap - 250 : box.maxX() + gap + 40, y);
      }
      sheets.add(Scene.LaidSheet.a4(i + 1, at.x(), at.y(), turn));
    }
    return sheets;
  }

  /** Somewhere about the middle of the piece, in any direction that has room. */
  private static Scene.Arrow arrow(Random dice, Outline truth) {
    Point middle = truth.box().centre();
    double turn = between(dice, 0, 2 * Math.PI);
    Point way = new Point(Math.cos(turn), Math.sin(turn));
    double half = 10;
    while (half < 150
        && truth.contains(middle.plus(way.times(half + 20)))
        && truth.contains(middle.minus(way.times(half + 20)))) {
      half += 5;
    }
    return new Scene.Arrow(
        middle.minus(way.times(half)),
        middle.plus(way.times(half)),
        between(dice, 6, 14),
        dice.nextBoolean(),
        dice.nextBoolean(),
        between(dice, 0.4, 1.2));
  }

  private static double between(Random dice, double least, double most) {
    return least + dice.nextDouble() * (most - least);
  }

  private static <T> T one(Random dice, T[] of) {
    return of[dice.nextInt(of.length)];
  }
}
