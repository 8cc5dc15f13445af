package ellwand.problem;

import java.util.List;
import java.util.stream.Collectors;

/** What was read cannot be used; carries every problem found. */
public final class InputException extends RuntimeException {

  private final transient List<Problem> problems;

  public InputException(List<Problem> problems) {
    super(problems.stream().map(Problem::toString).collect(Collectors.joining("\n")));
    this.problems = List.copyOf(problems);
  }

  public InputException(Problem problem) {
    this(List.of(problem));
  }

  public List<Problem> problems() {
    return problems;
  }
}
