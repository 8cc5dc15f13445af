package ellwand.order;

import ellwand.problem.InputException;
import ellwand.problem.Problem;

/**
 * What a plan is charged with; all in the user's money.
 *
 * @param lay for making, spreading and cutting one lay, whatever its plies
 * @param clothPerMetre price of the cloth
 */
public record Cost(double lay, double clothPerMetre) {

  /** No cost given: plans are compared by cloth, then by lays. */
  public static final Cost NONE = new Cost(0, 0);

  public Cost {
    if (!(lay >= 0 && clothPerMetre >= 0 && lay < 1e9 && clothPerMetre < 1e9)) {
      throw new InputException(
          Problem.of(
              "a lay costs " + lay + " and a metre of cloth " + clothPerMetre,
              "Give costs of 0 or more"));
    }
  }
}
