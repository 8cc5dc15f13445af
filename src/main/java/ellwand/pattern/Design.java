package ellwand.pattern;

import ellwand.problem.InputException;
import ellwand.problem.Problem;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A garment as its maker describes it: what is drawn, what is computed from that, and how sizes
 * differ. {@link #in} makes the finished pieces of a size.
 *
 * @param unit that its maker reckons in
 * @param outlined pieces with an outline, in the base size
 * @param computed pieces without one; each measures the drawn ones and those before it
 * @param seams which edges are sewn together, where that is to be checked
 * @param matches places that are to lie alike in a cloth's repeat
 */
public record Design(
    String name,
    Unit unit,
    Sizes sizes,
    List<Outlined> outlined,
    List<Computed> computed,
    List<Seam> seams,
    List<Match> matches) {

  public Design {
    outlined = List.copyOf(outlined);
    computed = List.copyOf(computed);
    seams = List.copyOf(seams);
    matches = List.copyOf(matches);
    Set<String> names = new LinkedHashSet<>();
    List<Problem> problems = new ArrayList<>();
    outlined.forEach(piece -> checkOnce(piece.name(), names, problems));
    computed.forEach(piece -> checkOnce(piece.name(), names, problems));
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
  }

  private static void checkOnce(String piece, Set<String> names, List<Problem> problems) {
    if (!names.add(piece)) {
      problems.add(
          Problem.inPiece(piece, "two pieces have this name", "Give each piece a name of its own"));
    }
  }

  /** The same with these seams. */
  public Design sewn(List<Seam> other) {
    return new Design(name, unit, sizes, outlined, computed, other, matches);
  }

  /**
   * Every piece in a size, finished.
   *
   * @throws InputException with every problem found, each with its piece
   */
  public PieceSet in(String size) {
    List<Piece> pieces = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    for (Outlined piece : outlined) {
      try {
        pieces.add(draw(piece, size));
      } catch (InputException e) {
        problems.addAll(e.problems());
      }
    }
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
    return completed(pieces, size);
  }

  /**
   * A drawn piece in a size, with the marks that it and the matches speak of.
   *
   * @throws InputException with every problem found, each with its piece
   */
  public Piece draw(Outlined piece, String size) {
    try {
      Draft draft = sizes.graded(piece.draft(), size);
      Piece bare = draft.piece();
      List<Mark> marks = marks(piece, draft, bare);
      return bare.asking(new Asks(piece.value(), piece.place(), marks));
    } catch (InputException e) {
      throw in(piece.name(), e);
    }
  }

  private List<Mark> marks(Outlined piece, Draft draft, Piece bare) {
    Map<String, Optional<Match>> asked = new LinkedHashMap<>();
    piece.place().ifPresent(place -> asked.put(place.mark(), Optional.empty()));
    for (Match match : matches) {
      if (match.piece().equals(piece.name())) {
        asked.putIfAbsent(match.mark(), Optional.of(match));
      }
      if (match.otherPiece().equals(piece.name())) {
        asked.putIfAbsent(match.otherMark(), Optional.of(match));
      }
    }
    List<Mark> marks = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    asked.forEach(
        (words, match) -> {
          try {
            marks.add(Mark.of(words, unit, draft, bare));
          } catch (InputException e) {
            e.problems().forEach(p -> problems.add(match.map(m -> m.located(p)).orElse(p)));
          }
        });
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
    return marks;
  }

  /**
   * The drawn pieces of a size and what is computed from them.
   *
   * @throws InputException with every problem found, each with its piece
   */
  public PieceSet completed(List<Piece> drawn, String size) {
    PieceSet pieces = new PieceSet(drawn, List.of(), List.of());
    List<Problem> problems = new ArrayList<>();
    for (Computed piece : computed) {
      try {
        pieces = piece.addedTo(pieces, size);
      } catch (InputException e) {
        problems.addAll(in(piece.name(), e).problems());
      }
    }
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
    return pieces;
  }

  private static InputException in(String piece, InputException e) {
    return new InputException(e.problems().stream().map(p -> p.piece(piece)).toList());
  }
}
