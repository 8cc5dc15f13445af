package ellwand.app;

import ellwand.figures.EdgeLength;
import ellwand.file.figures.CheckWriter;
import ellwand.job.Origin;
import ellwand.units.Unit;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A job that can be laid.
 *
 * @param notes how its pieces come about, one sentence each
 * @param doubts what of it its maker may not have meant, one sentence each
 * @param lengths of its edges, where they are asked for
 * @param unit that lengths are shown in
 */
public record CheckedJob(
    Origin origin, List<String> notes, List<String> doubts, List<EdgeLength> lengths, Unit unit)
    implements Answer {

  public CheckedJob {
    lengths = List.copyOf(lengths);
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
    Stream<String> measured =
        lengths.isEmpty() ? Stream.of() : Stream.of(EdgeLength.text(lengths, unit));
    return Stream.of(measured, notes.stream(), doubts.stream(), Stream.of(end))
        .flatMap(lines -> lines)
        .collect(Collectors.joining("\n"));
  }

  @Override
  public byte[] json() {
    return CheckWriter.job(notes, doubts, lengths);
  }
}
