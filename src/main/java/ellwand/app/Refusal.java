package ellwand.app;

import ellwand.file.figures.CheckWriter;
import ellwand.problem.Problem;
import java.util.List;
import java.util.stream.Collectors;

/** Why something could not even be begun. */
public record Refusal(List<Problem> problems) implements Answer {

  public Refusal {
    problems = List.copyOf(problems);
  }

  @Override
  public boolean achieved() {
    return false;
  }

  @Override
  public String text() {
    return problems.stream().map(Problem::toString).collect(Collectors.joining("\n"));
  }

  @Override
  public byte[] json() {
    return CheckWriter.problems(problems, List.of(), List.of());
  }
}
