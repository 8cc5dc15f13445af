package ellwand.problem;

import java.util.List;
import java.util.stream.Collectors;

/** What was read cannot be used; carries every problem found. */
public class InputException extends RuntimeException {

  /** Not written out with the exception, which nobody does: problems are for people. */
  private final transient List<Problem> problems;

  public InputException(List<Problem> problems) {
    super(problems.stream().map(Problem::toString).collect(Collectors.joining("\n")));
    this.problems = List.copyOf(problems);
  }

  public InputException(Problem problem) {
    this(List.of(problem));
  }

  /** One problem, whose place is not known yet; see {@link Problem#of}. */
  public static InputException of(String what, String remedy) {
    return new InputException(Problem.of(what, remedy));
  }

  /**
   * What a value asks for when it is made.
   *
   * @throws InputException if it does not hold
   */
  public static void unless(boolean holds, String what, String remedy) {
    if (!holds) {
      throw of(what, remedy);
    }
  }

  public List<Problem> problems() {
    return problems;
  }
}
