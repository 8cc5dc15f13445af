package ellwand;

import ellwand.cutting.CutPiece;
import ellwand.rule.Trial;
import java.util.Random;

/** Pieces of random garments, without allowances. Lengths in mm. */
public final class Garments {

  private Garments() {}

  /**
   * A piece cut in one of the ways given: sloped where one of a kind or a pair, else a rectangle.
   *
   * @param longer by how much it may be longer than 60, at most
   * @param wider by how much it may be wider than 60, at most
   * @param cuts as a job says it: 2, pair, 1 on fold
   */
  public static CutPiece piece(Random random, String name, int longer, int wider, String... cuts) {
    double length = 60 + random.nextInt(longer);
    double width = 60 + random.nextInt(wider);
    String cut = cuts[random.nextInt(cuts.length)];
    return cut.equals("1") || cut.contains("pair")
        ? Trial.sloped(name, cut, length, width)
        : Trial.rectangle(name, cut, length, width);
  }
}
