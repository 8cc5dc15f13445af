package ellwand.draw.tiles;

import ellwand.draw.piece.PaperPiece;
import java.util.ArrayList;
import java.util.List;

/** What to do with what was printed, in sentences. */
public final class PrintWords {

  private static final String MEASURE =
      "Print %s at 100 % ('actual size'), never fitted to the page. Measure both squares from line"
          + " to line before you %s.";

  private PrintWords() {}

  /**
   * @param joined whether pages are joined
   */
  public static List<String> paper(boolean joined) {
    List<String> sentences = new ArrayList<>();
    sentences.add(
        measured(joined ? "this page first," : "this", joined ? "print the rest" : "cut"));
    if (joined) {
      sentences.add("Pages are called by row (A, B, ...) and column (1, 2, ...), as on the map.");
      sentences.add(
          "Where a page has a full grey line at its left or top, cut it off there. Lay that edge on"
              + " the dashed grey line of its neighbour, so that the halves of the diamonds with"
              + " the same number meet, and tape it down. A side without a diamond is not joined.");
    }
    return sentences;
  }

  private static String measured(String what, String before) {
    return MEASURE.replaceFirst("%s", what).replaceFirst("%s", before);
  }

  /** For one page that is thrown on the cloth. */
  public static List<String> projector() {
    return List.of(
        "Show this page at 100 % and set the projector up so that both squares measure what they"
            + " say, each way, at every corner of the cloth.",
        "Each size is a layer by itself: show only the one that you cut.");
  }

  /**
   * @param half whether there are half pieces among them
   */
  public static List<String> pieces(PaperPiece.Lines lines, boolean half) {
    List<String> sentences = new ArrayList<>();
    sentences.add(
        switch (lines) {
          case SEWING ->
              "The full line is the sewing line: add the allowance when you cut the cloth.";
          case CUTTING -> "Cut out along the full line, which includes the allowance.";
          case BOTH ->
              "Cut out along the full line, which includes the allowance. Sew along the thin"
                  + " dashed line inside.";
        });
    sentences.add(
        "Arrows lie along the grain and point to the top of a piece."
            + (half
                ? " A heavy line of dashes and dots comes on a fold of the cloth; where it lies"
                    + " open, draw round the piece, turn it over about that line and draw round"
                    + " it again."
                : ""));
    return sentences;
  }

  /** For a marker, which is laid on the cloth as it is. */
  public static List<String> marker() {
    return List.of(
        "Lay it on the cloth, which lies as the marker says, its cut end on the cut end and its"
            + " edges on the fold or selvedge, and hold it down with weights or pins.",
        "Cut along the heavy full lines: they include the allowance. Nothing is cut along a fold.");
  }
}
