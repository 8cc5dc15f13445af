package ellwand.app;

import ellwand.draw.sheet.PdfWriter;
import ellwand.draw.tiles.FullSize;
import ellwand.draw.tiles.PagePlan;
import ellwand.draw.tiles.PrintPaper;
import ellwand.job.Job;
import ellwand.units.Length;
import ellwand.units.Unit;
import java.util.List;
import java.util.Optional;

/**
 * What is printed full size, one part after another.
 *
 * @param unit that lengths are told in
 */
public record PrintedPages(Job job, List<FullSize> parts, Unit unit) {

  public PrintedPages {
    parts = List.copyOf(parts);
  }

  /** A PDF of that name. */
  public Output output(String name) {
    return new Output(name, this::pdf);
  }

  private byte[] pdf() {
    try (PdfWriter pdf = new PdfWriter(job.heading())) {
      pdf.keepFullSize();
      parts.forEach(part -> part.addTo(pdf));
      return pdf.bytes();
    }
  }

  /** How much paper it takes, for people. */
  public String text() {
    return String.join("\n", parts.stream().map(this::text).toList());
  }

  private String text(FullSize part) {
    PagePlan plan = part.plan();
    PrintPaper paper = plan.tiling().paper();
    String size =
        new Length(paper.widthMm()).show(unit) + " x " + new Length(paper.heightMm()).show(unit);
    int pages = plan.tiles().size();
    return pages == 1
        ? part.drawing().title() + ": one page, " + size
        : part.drawing().title()
            + ": "
            + pages
            + " pages of "
            + paper.name()
            + (paper.widthMm() > paper.heightMm() ? " on their sides" : "")
            + ", joined at "
            + plan.joins().size()
            + " sides";
  }

  /** Which words a PDF cannot show in full, as a sentence. */
  public Optional<String> unprinted() {
    return JobCautions.unprinted(job);
  }
}
