package ellwand.figures;

import ellwand.order.Spreading;
import ellwand.order.Spreading.Faces;
import ellwand.order.Spreading.PlyHeadings;
import ellwand.units.Length;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** How a lay is spread, in words for those who spread it. */
public final class SpreadWords {

  private SpreadWords() {}

  /** Faces and headings, as in an order file: "face to face, headings alternating". */
  public static String terms(LayTicket lay) {
    Spreading how = lay.spreading();
    String faces =
        switch (how.faces()) {
          case ALL_UP -> "all faces up";
          case FACE_TO_FACE -> "face to face" + (how.halfSets() ? ", half sets" : "");
          case FOLDED -> "folded";
        };
    return faces
        + ", headings "
        + (how.headings() == PlyHeadings.ONE_WAY ? "one way" : "alternating");
  }

  /** Sentences for the ticket: what each ply looks like, how long, and which lie where. */
  public static List<String> sentences(LayTicket lay, Unit unit) {
    Spreading how = lay.spreading();
    boolean folded = how.faces() == Faces.FOLDED;
    int lengths = lay.lengths(lay.totalPlies());
    List<String> words = new ArrayList<>();
    words.add(
        "Spread "
            + (folded
                ? counted(lengths, "folded length") + " (" + lay.totalPlies() + " plies)"
                : counted(lengths, "ply"))
            + ", each "
            + new Length(lay.totalClothMm() / lengths).show(unit)
            + " long with its ends, "
            + switch (how.faces()) {
              case ALL_UP -> "right side up.";
              case FACE_TO_FACE ->
                  "face to face: the first right side up, every second one right side down on the"
                      + " one below.";
              case FOLDED -> "folded lengthwise, right sides together.";
            });
    words.add(
        how.headings() == PlyHeadings.ONE_WAY
            ? "All headings run one way: begin each at the same end of the table."
            : "Headings alternate: every second one runs the other way.");
    if (lay.plies().size() > 1) {
      words.add(
          "From the table up: "
              + lay.plies().entrySet().stream()
                  .map(e -> lay.lengths(e.getValue()) + " of " + e.getKey())
                  .collect(Collectors.joining(", then "))
              + ".");
    }
    if (how.pliesTogether() == 2 && !folded) {
      words.add("Keep each colour even: two plies face to face cut together.");
    }
    return words;
  }

  private static String counted(int n, String noun) {
    return n + " " + (n == 1 ? noun : noun.equals("ply") ? "plies" : noun + "s");
  }
}
