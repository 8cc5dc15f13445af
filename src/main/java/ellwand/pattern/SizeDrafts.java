package ellwand.pattern;

import ellwand.problem.InputException;
import ellwand.problem.Problem;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** The drafts of one size, each made when somebody first asks for it. */
public final class SizeDrafts {

  private final Sizes sizes;
  private final String size;
  private final Map<String, Drafting> draftings = new HashMap<>();
  private final Map<String, Draft> made = new HashMap<>();
  private final Set<String> beingMade = new LinkedHashSet<>();

  /**
   * Of these pieces.
   *
   * @param size one of the sizes
   */
  public SizeDrafts(Sizes sizes, String size, List<Outlined> pieces) {
    this.sizes = sizes;
    this.size = size;
    pieces.forEach(piece -> draftings.put(piece.name(), piece.drafting()));
  }

  public Sizes sizes() {
    return sizes;
  }

  public String size() {
    return size;
  }

  /**
   * The draft of a piece.
   *
   * @throws InputException with its piece, if there is none, if it cannot be made, or if it is made
   *     from itself
   */
  public Draft of(String piece) {
    Draft known = made.get(piece);
    if (known != null) {
      return known;
    }
    Drafting drafting = draftings.get(piece);
    if (drafting == null) {
      throw InputException.of(
          "there is no piece " + piece + " with an outline",
          "Use one of " + draftings.keySet().stream().sorted().collect(Collectors.joining(", ")));
    }
    if (!beingMade.add(piece)) {
      throw new InputException(circle(piece));
    }
    try {
      Draft draft = drafting.in(this);
      made.put(piece, draft);
      return draft;
    } catch (InputException e) {
      throw new InputException(
          e.problems().stream().map(p -> p.piece().isPresent() ? p : p.piece(piece)).toList());
    } finally {
      beingMade.remove(piece);
    }
  }

  private Problem circle(String piece) {
    List<String> way = new ArrayList<>(beingMade);
    way.subList(0, way.indexOf(piece) + 1).clear();
    way.add(piece);
    return Problem.inPiece(
        piece,
        way.size() == 1
            ? "it is made from itself"
            : "it is made from " + String.join(", which is made from ", way) + " again",
        "Let one start from something else");
  }
}
