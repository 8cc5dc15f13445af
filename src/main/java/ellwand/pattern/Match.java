package ellwand.pattern;

import ellwand.problem.Problem;
import java.util.Optional;

/**
 * Two places on sewing lines that are to lie alike in the repeat.
 *
 * @param piece name of the one piece
 * @param mark its mark, by its words
 * @param otherPiece name of the other
 * @param otherMark its mark, by its words
 * @param bars which bars run on from one piece to the other
 * @param written where it is asked for, if that was in a file
 */
public record Match(
    String piece,
    String mark,
    String otherPiece,
    String otherMark,
    Bars bars,
    Optional<Written> written) {

  /** One that stands in no file. */
  public Match(String piece, String mark, String otherPiece, String otherMark, Bars bars) {
    this(piece, mark, otherPiece, otherMark, bars, Optional.empty());
  }

  /** Something wrong with it, told where it is written. */
  public Problem problem(String what, String remedy) {
    return located(Problem.inPiece(piece, what, remedy));
  }

  /** A problem of one of its marks, told where it is written. */
  Problem located(Problem problem) {
    return written.map(w -> problem.at(w.file(), w.line())).orElse(problem);
  }
}
