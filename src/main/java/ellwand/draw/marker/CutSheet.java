package ellwand.draw.marker;

import ellwand.draw.sheet.Drawing;
import ellwand.draw.sheet.Fit;
import ellwand.draw.sheet.Pages;
import ellwand.draw.sheet.Paper;
import ellwand.draw.sheet.PdfWriter;
import ellwand.draw.sheet.PdfWriter.OnPaper;
import ellwand.draw.sheet.Reading;
import ellwand.draw.sheet.Shown;
import ellwand.draw.sheet.TitleBlock;
import ellwand.draw.sheet.TitleBlock.Cell;
import ellwand.figures.Figures;
import ellwand.figures.JobFigures;
import ellwand.geometry.Point;
import ellwand.lay.Marker;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.List;

/** What is taken to the cutting table: pictures, tables of places, figures and cautions. */
public final class CutSheet {

  private final String title;
  private final JobFigures figures;
  private final List<Unnumbered> pages = new ArrayList<>();

  /** One page before it has its number. */
  private record Unnumbered(Paper paper, OnPaper placed) {}

  private CutSheet(String title, JobFigures figures) {
    this.title = title;
    this.figures = figures;
  }

  /**
   * A4 pages.
   *
   * @param title heads every page
   * @param figures of the whole job
   * @param markers one for each of the job's cloths, in the order of {@link JobFigures#cloths}
   * @param unit that lengths are shown in
   */
  public static byte[] pdf(String title, JobFigures figures, List<Marker> markers, Unit unit) {
    if (markers.size() != figures.cloths().size()) {
      throw new IllegalArgumentException(
          markers.size() + " markers, but figures of " + figures.cloths().size() + " cloths");
    }
    CutSheet sheet = new CutSheet(title, figures);
    Shown shown = new Shown(unit);
    for (int i = 0; i < markers.size(); i++) {
      Pages flow = new Pages(title);
      MarkerSheet marker =
          new MarkerSheet(markers.get(i), figures.cloths().get(i), MarkerHead.of(title), unit);
      flow.add("Take care", sheet.picture(marker));
      ClothPages.add(flow, new PlacementTable(markers.get(i), marker.laid(), shown.atTable()));
      if (i == markers.size() - 1) {
        sheet.job(flow, shown);
      }
      sheet.add(flow);
    }
    return sheet.bytes();
  }

  /** Adds the page of a marker; cautions that have no room on it are left for others. */
  private List<String> picture(MarkerSheet sheet) {
    Fit fit = MarkerDrawing.fit(sheet, Pages.FOOT);
    Drawing drawing = MarkerDrawing.drawing(sheet, fit, fit.scale());
    double height = drawing.frame().width() / fit.scale();
    Point at = new Point(Paper.MARGIN_MM, fit.paper().heightMm() - Paper.MARGIN_MM - height);
    pages.add(new Unnumbered(fit.paper(), new OnPaper(drawing, fit.scale(), at)));
    return sheet.cautionsElsewhere(
        fit.paper().innerWidthMm() * fit.scale(), new Reading(fit.scale()));
  }

  private void add(Pages flow) {
    for (Drawing drawing : flow.drawings()) {
      Point low = new Point(Paper.MARGIN_MM, Paper.MARGIN_MM + Pages.FOOT);
      pages.add(new Unnumbered(Paper.A4, new OnPaper(drawing, 1, low)));
    }
  }

  private void job(Pages flow, Shown shown) {
    List<Cell> cells = new ArrayList<>();
    cells.add(new Cell("garments", Integer.toString(figures.garments())));
    for (Figures cloth : figures.cloths()) {
      cells.add(
          new Cell(cloth.lies().cloth() + " to buy", shown.bought(cloth.lengths().toBuyMm())));
    }
    if (figures.totalCost() > 0) {
      cells.add(new Cell("cost", Shown.money(figures.totalCost(), figures.currency())));
      cells.add(
          new Cell("cost per garment", Shown.money(figures.costPerGarment(), figures.currency())));
    }
    flow.space(6);
    flow.add(new TitleBlock(title + ", all cloths", "", cells, Pages.widthMm(), new Reading(1)));
    flow.space(2);
    flow.add("Take care", figures.cautions());
  }

  private byte[] bytes() {
    try (PdfWriter writer = new PdfWriter(title + ", cut sheet")) {
      for (int i = 0; i < pages.size(); i++) {
        Unnumbered page = pages.get(i);
        Drawing foot = Pages.foot(title, i + 1, pages.size(), page.paper());
        Point low = new Point(Paper.MARGIN_MM, Paper.MARGIN_MM);
        writer.page(page.paper(), List.of(page.placed(), new OnPaper(foot, 1, low)));
      }
      return writer.bytes();
    }
  }
}
