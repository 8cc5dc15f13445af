package ellwand.order;

import ellwand.problem.InputException;
import ellwand.problem.Problem;

/**
 * How far the garments cut of one size and colour may be from those wanted. What isn't wanted at
 * all is never cut.
 *
 * @param over garments too many
 * @param under garments too few
 */
public record Tolerance(int over, int under) {

  public static final Tolerance NONE = new Tolerance(0, 0);

  public Tolerance {
    if (over < 0 || under < 0) {
      throw new InputException(
          Problem.of(
              "the tolerance is " + over + " over and " + under + " under",
              "Give both in garments, 0 or more"));
    }
  }

  int least(int wanted) {
    return Math.max(0, wanted - under);
  }

  int most(int wanted) {
    return wanted == 0 ? 0 : wanted + over;
  }
}
