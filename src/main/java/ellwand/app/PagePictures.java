package ellwand.app;

import ellwand.draw.sheet.PdfWriter;

/** The pages of a PDF as pictures, to be looked at before they are printed. */
public record PagePictures(byte[] pdf) {

  public int count() {
    return PdfWriter.pages(pdf);
  }

  /**
   * One page as PNG.
   *
   * @param page from 1
   * @param dots along its longer side
   * @throws ellwand.problem.InputException if there is no such page
   */
  public byte[] png(int page, int dots) {
    return PdfWriter.picture(pdf, page, dots);
  }
}
