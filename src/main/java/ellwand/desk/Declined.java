package ellwand.desk;

import ellwand.problem.InputException;
import ellwand.problem.Problem;
import java.util.List;

/** What can be understood, but cannot be done as things are now. */
final class Declined extends InputException {

  private static final int NOT_FOUND = 404;
  private static final int CONFLICT = 409;

  private final int status;

  private Declined(int status, List<Problem> problems) {
    super(problems);
    this.status = status;
  }

  /** There is nothing of this name. */
  static Declined notThere(String what, String remedy) {
    return new Declined(NOT_FOUND, List.of(Problem.of(what, remedy)));
  }

  /** The file or the table is not as this takes it to be. */
  static Declined asItIsNow(String what, String remedy) {
    return asItIsNow(List.of(Problem.of(what, remedy)));
  }

  static Declined asItIsNow(List<Problem> problems) {
    return new Declined(CONFLICT, problems);
  }

  /** In HTTP: RFC 9110, sections 15.5.5 and 15.5.10. */
  int status() {
    return status;
  }
}
