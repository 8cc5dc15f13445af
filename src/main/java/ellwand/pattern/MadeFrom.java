package ellwand.pattern;

import ellwand.problem.InputException;
import ellwand.problem.Problem;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Which pieces are made from which others. */
public final class MadeFrom {

  private final Map<String, Outlined> pieces = new LinkedHashMap<>();
  private final List<Problem> problems = new ArrayList<>();
  private final Set<String> done = new LinkedHashSet<>();
  private final List<Outlined> inOrder = new ArrayList<>();

  private MadeFrom(List<Outlined> pieces) {
    pieces.forEach(p -> this.pieces.put(p.name(), p));
    pieces.forEach(p -> make(p, new LinkedHashSet<>()));
  }

  /** What is wrong, each with its piece: one is made from a piece that is not there, or itself. */
  public static List<Problem> problems(List<Outlined> pieces) {
    return new MadeFrom(pieces).problems;
  }

  /** The pieces in an order in which they can be made. */
  public static List<Outlined> inOrder(List<Outlined> pieces) {
    return new MadeFrom(pieces).inOrder;
  }

  private void make(Outlined piece, Set<String> under) {
    if (done.contains(piece.name())) {
      return;
    }
    if (!under.add(piece.name())) {
      List<String> round = new ArrayList<>(under);
      problems.add(
          Problem.inPiece(
              piece.name(),
              "it would be made from itself: "
                  + String.join(" from ", round.subList(round.indexOf(piece.name()), round.size()))
                  + " from "
                  + piece.name(),
              "Draw the first of them with outline:, or take it from a block"));
      done.add(piece.name());
      return;
    }
    for (String need : piece.needs()) {
      if (pieces.containsKey(need)) {
        make(pieces.get(need), under);
      } else {
        none(need, pieces.values()).problems().forEach(p -> problems.add(p.piece(piece.name())));
      }
    }
    under.remove(piece.name());
    if (done.add(piece.name())) {
      inOrder.add(piece);
    }
  }

  static InputException none(String name, Iterable<Outlined> pieces) {
    List<String> names = new ArrayList<>();
    pieces.forEach(p -> names.add(p.name()));
    return InputException.of(
        "no piece with an outline is called " + Workpiece.printable(name),
        names.isEmpty() ? "Draw it with outline:" : "Use one of " + String.join(", ", names));
  }
}
