package ellwand.app;

import ellwand.draw.reference.ReferencePages;
import ellwand.trace.ReferenceSheet;

/** Makes the sheets that are laid beside a paper piece for its photo. */
public final class ReferenceRun {

  private ReferenceRun() {}

  /**
   * A PDF to print at 100 %.
   *
   * @param paper {@code A4} or {@code Letter}
   * @param sheets how many that are told apart
   * @throws ellwand.problem.InputException if there is no such paper, or not so many sheets
   */
  public static byte[] pdf(String paper, int sheets) {
    return ReferencePages.pdf(ReferenceSheet.Paper.parse(paper), sheets);
  }
}
