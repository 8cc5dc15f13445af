package ellwand.pattern;

import ellwand.problem.InputException;
import ellwand.problem.Problem;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
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
 * @param trims what is bought but not cut from cloth, names unique
 */
public record Design(
    String name,
    Unit unit,
    Sizes sizes,
    List<Outlined> outlined,
    List<Computed> computed,
    List<Seam> seams,
    List<Match> matches,
    List<Trim> trims) {

  /** One that takes no trims. */
  public Design(
      String name,
      Unit unit,
      Sizes sizes,
      List<Outlined> outlined,
      List<Computed> computed,
      List<Seam> seams,
      List<Match> matches) {
    this(name, unit, sizes, outlined, computed, seams, matches, List.of());
  }

  public Design {
    outlined = List.copyOf(outlined);
    computed = List.copyOf(computed);
    seams = List.copyOf(seams);
    matches = List.copyOf(matches);
    trims = List.copyOf(trims);
    Set<String> names = new LinkedHashSet<>();
    List<Problem> problems = new ArrayList<>();
    outlined.forEach(piece -> checkOnce(piece.name(), names, problems));
    computed.forEach(piece -> checkOnce(piece.name(), names, problems));
    problems.addAll(MadeFrom.problems(outlined));
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

  /** Whether any piece of it is made to differ from size to size. */
  public boolean sized() {
    return !sizes.rules().isEmpty() || outlined.stream().anyMatch(p -> p.start().sized());
  }

  /** Whether any of it is drafted from body measures. */
  public boolean drafted() {
    return outlined.stream().anyMatch(piece -> piece.start().drafted());
  }

  /** The same with these seams. */
  public Design sewn(List<Seam> other) {
    return new Design(name, unit, sizes, outlined, computed, other, matches, trims);
  }

  /** The same with these trims. */
  public Design trimmed(List<Trim> other) {
    return new Design(name, unit, sizes, outlined, computed, seams, matches, other);
  }

  /**
   * Every piece in a size, finished.
   *
   * @throws InputException with every problem found, each with its piece
   */
  public PieceSet in(String size) {
    Making making = making(size);
    List<Piece> pieces = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    for (Outlined piece : outlined) {
      try {
        pieces.add(making.finished(piece));
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
   * The outlined pieces of a size, each made when it is asked for.
   *
   * @throws InputException if there is no such size
   */
  public Making making(String size) {
    return new Making(this, size);
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

  static InputException in(String piece, InputException e) {
    return new InputException(
        e.problems().stream().map(p -> p.piece().isPresent() ? p : p.piece(piece)).toList());
  }
}
