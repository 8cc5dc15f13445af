package ellwand.order;

import ellwand.cloth.Cloth;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import java.util.Optional;

/**
 * What a plan is charged with; all in the user's money.
 *
 * @param lay for making, spreading and cutting one lay, whatever its plies
 * @param clothPerMetre price of the cloth as bought
 * @param goods what is bought of each colour; empty if no cloth is known, then what is cut is paid
 */
public record Cost(double lay, double clothPerMetre, Optional<Cloth> goods) {

  /** No cost given: plans are compared by cloth, then by lays. */
  public static final Cost NONE = new Cost(0, 0);

  /** Of cloth that is not known. */
  public Cost(double lay, double clothPerMetre) {
    this(lay, clothPerMetre, Optional.empty());
  }

  public Cost {
    if (!(lay >= 0 && clothPerMetre >= 0 && lay < 1e9 && clothPerMetre < 1e9)) {
      throw new InputException(
          Problem.of(
              "a lay costs " + lay + " and a metre of cloth " + clothPerMetre,
              "Give costs of 0 or more"));
    }
  }

  /** What is bought for so much that is cut of one colour, end loss included; mm. */
  public double boughtMm(double cutMm) {
    return goods.map(cloth -> cloth.boughtMm(cutMm)).orElse(cutMm);
  }
}
