package ellwand.desk;

import ellwand.problem.Problem;
import java.util.regex.Pattern;

/**
 * Options of the command line that sentences name in brackets, as asides: who works at the desk has
 * forms instead.
 */
final class Asides {

  private static final Pattern ASIDE = Pattern.compile(" \\((--[a-z][^()]*)\\)");

  /** What the form for a drawing asks. */
  private static final Pattern ALLOWANCE = Pattern.compile(" \\(--(sewing|cutting)-line[^()]*\\)");

  private Asides() {}

  /** The sentence without them. */
  static String without(String sentence) {
    return ASIDE.matcher(sentence).replaceAll("");
  }

  /** The same of a drawing, of which the desk asks little and the command line more. */
  static String ofDrawing(String sentence) {
    return ASIDE
        .matcher(ALLOWANCE.matcher(sentence).replaceAll(""))
        .replaceAll(" (with the command ellwand convert: $1)");
  }

  static Problem ofDrawing(Problem problem) {
    return new Problem(
        problem.file(),
        problem.line(),
        problem.piece(),
        problem.edge(),
        ofDrawing(problem.what()),
        ofDrawing(problem.remedy()));
  }
}
