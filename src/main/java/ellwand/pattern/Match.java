package ellwand.pattern;

/**
 * Two places on sewing lines that are to lie alike in the repeat.
 *
 * @param piece name of the one piece
 * @param mark its mark, by its words
 * @param otherPiece name of the other
 * @param otherMark its mark, by its words
 * @param bars which bars run on from one piece to the other
 */
public record Match(String piece, String mark, String otherPiece, String otherMark, Bars bars) {}
