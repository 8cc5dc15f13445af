package ellwand.pattern;

/** How a piece that is not computed comes to its lines: drawn and graded, or drafted anew. */
public interface Drafting {

  /** Of the piece. */
  String name();

  /**
   * The piece in a size, before its outline is tried.
   *
   * @param drafts of the other pieces in that size, which it may start from or measure
   * @throws ellwand.problem.InputException if it cannot be made
   */
  Draft in(SizeDrafts drafts);
}
