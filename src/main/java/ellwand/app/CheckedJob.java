package ellwand.app;

import ellwand.file.figures.CheckWriter;
import ellwand.job.Origin;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A job that can be laid.
 *
 * @param notes how its pieces come about, one sentence each
 * @param doubts what of it its maker may not have meant, one sentence each
 */
public record CheckedJob(Origin origin, List<String> notes, List<String> doubts) implements Answer {

  public CheckedJob {
    notes = List.copyOf(notes);
    doubts = List.copyOf(doubts);
  }

  @Override
  public boolean achieved() {
    return true;
  }

  @Override
  public String text() {
    String end =
        switch (doubts.size()) {
          case 0 -> "Nothing wrong with " + origin.path() + ".";
          case 1 -> origin.path() + " can be laid, with one thing to look at.";
          default -> origin.path() + " can be laid, with " + doubts.size() + " things to look at.";
        };
    return Stream.of(notes.stream(), doubts.stream(), Stream.of(end))
        .flatMap(lines -> lines)
        .collect(Collectors.joining("\n"));
  }

  @Override
  public byte[] json() {
    return CheckWriter.problems(List.of(), notes, doubts);
  }
}
