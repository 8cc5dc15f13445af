package ellwand.app;

import ellwand.file.figures.CheckWriter;
import ellwand.job.Origin;
import java.util.List;

/**
 * A job in which nothing is wrong.
 *
 * @param cautions what a cutter should know about its pieces, one sentence each
 */
public record CheckedJob(Origin origin, List<String> cautions) implements Answer {

  public CheckedJob {
    cautions = List.copyOf(cautions);
  }

  @Override
  public boolean achieved() {
    return true;
  }

  @Override
  public String text() {
    String nothing = "Nothing wrong with " + origin.path() + ".";
    return cautions.isEmpty() ? nothing : String.join("\n", cautions) + "\n" + nothing;
  }

  @Override
  public byte[] json() {
    return CheckWriter.problems(List.of(), cautions);
  }
}
