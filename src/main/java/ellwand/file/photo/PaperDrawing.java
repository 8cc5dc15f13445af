package ellwand.file.photo;

import ellwand.file.drawn.Drawing;
import ellwand.file.drawn.DrawnLine;
import ellwand.file.drawn.Label;
import ellwand.geometry.Path;
import ellwand.geometry.Segment;
import ellwand.problem.InputException;
import ellwand.trace.DrawnArrow;
import ellwand.trace.NamedEdge;
import ellwand.trace.Nick;
import ellwand.trace.PaperPiece;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A paper piece as the drawing that a style is made of. */
public final class PaperDrawing {

  private static final double UP_THE_PAGE = 90;

  private PaperDrawing() {}

  /**
   * The drawing of a piece.
   *
   * @param file that it was found in, as the user named it
   * @param arrow drawn on it, which is its grain unless it is said to run elsewhere
   * @param said what was found and guessed, one sentence each
   * @throws InputException if it has no edge as asked for, or two of one name
   */
  public static Drawing of(
      String file, PaperPiece piece, HowCut how, Optional<DrawnArrow> arrow, List<String> said) {
    for (NamedEdge edge : piece.edges()) {
      InputException.unless(
          piece.edges().stream().filter(e -> e.name().equals(edge.name())).count() == 1,
          "two edges are called '" + edge.name() + "'",
          "Give each a name of its own");
    }
    Optional<Label> whole = Optional.of(Label.NONE);
    Label group = label(Optional.of(piece.name()), List.of(Label.PIECE), whole);
    List<DrawnLine> lines = new ArrayList<>();
    PaperPiece drawn = piece;
    if (how.onFold().isPresent()) {
      int edge = piece.edge(how.onFold().get());
      drawn = drawn.straight(edge);
      lines.add(line(drawn.edges().get(edge).path(), "fold", group));
    }
    if (how.grain().isEmpty() && arrow.isPresent()) {
      lines.add(line(Path.line(arrow.get().from(), arrow.get().to()), "grain", group));
    }
    if (how.grain().isPresent() && !how.grain().get().equalsIgnoreCase(HowCut.UP)) {
      int edge = piece.edge(how.grain().get());
      drawn.straight(edge);
      Path along = drawn.edges().get(edge).path();
      lines.add(line(Path.line(along.start(), along.end()), "grain", group));
    }
    if (how.half().isPresent()) {
      drawn = drawn.whole(piece.edge(how.half().get()));
    }
    lines.add(0, outline(drawn, group));
    for (Nick nick : drawn.nicks()) {
      lines.add(line(Path.line(nick.mouth(), nick.tip()), "notch", group));
    }
    return new Drawing(
        file, Optional.empty(), Unit.CM, UP_THE_PAGE, lines, List.of(), Optional.empty(), said);
  }

  private static DrawnLine outline(PaperPiece piece, Label group) {
    List<Segment> segments = new ArrayList<>();
    List<Optional<String>> names = new ArrayList<>();
    for (NamedEdge edge : piece.edges()) {
      for (Segment segment : edge.path().segments()) {
        segments.add(segment);
        names.add(Optional.of(edge.name()));
      }
    }
    return new DrawnLine(
        new Path(segments),
        true,
        label(Optional.empty(), List.of(), Optional.of(group)),
        piece.edges().size() == 1 ? List.of() : names);
  }

  private static DrawnLine line(Path path, String name, Label group) {
    return new DrawnLine(path, false, label(Optional.of(name), List.of(), Optional.of(group)));
  }

  private static Label label(Optional<String> name, List<String> kinds, Optional<Label> inside) {
    return new Label(name, kinds, Optional.empty(), inside, 0);
  }
}
