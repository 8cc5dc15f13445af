package ellwand.draw.sheet;

import ellwand.geometry.Box;
import ellwand.geometry.Point;
import ellwand.problem.InputException;
import ellwand.units.Unit;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDPropertyList;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentGroup;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentProperties;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.util.Matrix;

/**
 * Writes drawings as pages of a PDF, true in mm at the stated scale, with its type embedded.
 *
 * <p>Letters that Liberation Sans lacks (Chinese, say) come out as question marks.
 */
public final class PdfWriter implements AutoCloseable {

  private static final double POINTS_PER_MM = 72 / Unit.INCH.mm();

  /** ISO 32000-1, annex C: a page is at most 14,400 units long; beyond, units grow. */
  private static final double LONGEST_POINTS = 14_400;

  private final PDDocument document = new PDDocument();
  private final PDType0Font type;

  /** ISO 32000-1, 14.8.2.2: says of page furniture that it is no part of what is drawn. */
  private final PDPropertyList pagination;

  public PdfWriter(String title) {
    try {
      type = PDType0Font.load(document, Lettering.TYPE, true);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    COSDictionary kind = new COSDictionary();
    kind.setItem(COSName.TYPE, COSName.getPDFName("Pagination"));
    pagination = PDPropertyList.create(kind);
    document.getDocumentInformation().setTitle(Lettering.clean(title));
    document.getDocumentInformation().setCreator("Ellwand");
    document.setDocumentId(0L);
  }

  /** A drawing on one page that is as large as it must be. */
  public static byte[] onePage(Drawing drawing, double scale) {
    return pages(List.of(drawing), scale);
  }

  /** A drawing on one page, at the top of it. */
  public static byte[] onePage(Drawing drawing, double scale, Paper paper) {
    return pages(List.of(drawing), scale, paper);
  }

  /** Each drawing on a page that is as large as it must be. */
  public static byte[] pages(List<Drawing> drawings, double scale) {
    try (PdfWriter writer = new PdfWriter(drawings.get(0).title())) {
      double margins = 2 * Paper.MARGIN_MM;
      for (Drawing drawing : drawings) {
        double width = drawing.frame().length() / scale + margins;
        double height = drawing.frame().width() / scale + margins;
        writer.atTop(drawing, scale, new Paper(width, height));
      }
      return writer.bytes();
    }
  }

  /** Each drawing on a page of its own, at the top of it. */
  public static byte[] pages(List<Drawing> drawings, double scale, Paper paper) {
    try (PdfWriter writer = new PdfWriter(drawings.get(0).title())) {
      drawings.forEach(drawing -> writer.atTop(drawing, scale, paper));
      return writer.bytes();
    }
  }

  private void atTop(Drawing drawing, double scale, Paper paper) {
    double height = drawing.frame().width() / scale;
    Point at = new Point(Paper.MARGIN_MM, paper.heightMm() - Paper.MARGIN_MM - height);
    page(paper, List.of(new OnPaper(drawing, scale, at)));
  }

  /**
   * A drawing on a page.
   *
   * @param scale mm drawn for one mm of paper
   * @param at where the frame's corner of least x and y lies on the paper, mm from lower left
   * @param clip whether what lies outside its frame is left out
   */
  public record OnPaper(Drawing drawing, double scale, Point at, boolean clip) {

    public OnPaper(Drawing drawing, double scale, Point at) {
      this(drawing, scale, at, false);
    }

    /** The same without what lies outside its frame. */
    public OnPaper clipped() {
      return new OnPaper(drawing, scale, at, true);
    }
  }

  /** Asks those who print it not to fit it to their paper. */
  public void keepFullSize() {
    PDViewerPreferences wishes = new PDViewerPreferences(new COSDictionary());
    wishes.setPrintScaling(PDViewerPreferences.PRINT_SCALING.None);
    document.getDocumentCatalog().setViewerPreferences(wishes);
  }

  /** One page with one drawing or several. */
  public void page(Paper paper, List<OnPaper> drawings) {
    double units =
        Math.ceil(Math.max(paper.widthMm(), paper.heightMm()) * POINTS_PER_MM / LONGEST_POINTS);
    double perMm = POINTS_PER_MM / units;
    PDPage page =
        new PDPage(
            new PDRectangle((float) (paper.widthMm() * perMm), (float) (paper.heightMm() * perMm)));
    if (units > 1) {
      page.setUserUnit((float) units);
    }
    document.addPage(page);
    try (PDPageContentStream content = new PDPageContentStream(document, page)) {
      content.setLineCapStyle(1);
      content.setLineJoinStyle(1);
      for (OnPaper placed : drawings) {
        content.saveGraphicsState();
        Pen to = new Pen(content, placed, perMm);
        if (placed.clip()) {
          to.clip();
        }
        for (Item item : placed.drawing().items()) {
          to.write(item);
        }
        content.restoreGraphicsState();
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The layer of that name, which readers show or hide on all pages at once. */
  private PDOptionalContentGroup layer(String name) {
    PDOptionalContentProperties all = document.getDocumentCatalog().getOCProperties();
    if (all == null) {
      all = new PDOptionalContentProperties();
      document.getDocumentCatalog().setOCProperties(all);
    }
    PDOptionalContentGroup known = all.getGroup(name);
    if (known == null) {
      known = new PDOptionalContentGroup(name);
      all.addGroup(known);
    }
    return known;
  }

  public byte[] bytes() {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      document.save(bytes);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }

  /** How many pages a PDF has. */
  public static int pages(byte[] pdf) {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return document.getNumberOfPages();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * A page of a PDF as a PNG picture.
   *
   * @param page from 1
   * @param dots along its longer side
   * @throws InputException if it has no such page
   */
  public static byte[] picture(byte[] pdf, int page, int dots) {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      if (page < 1 || page > document.getNumberOfPages()) {
        throw InputException.of("there is no page " + page, "Choose one of those that there are");
      }
      PDRectangle box = document.getPage(page - 1).getCropBox();
      float scale = dots / Math.max(box.getWidth(), box.getHeight());
      return PngWriter.bytes(new PDFRenderer(document).renderImage(page - 1, scale, ImageType.RGB));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public void close() {
    try {
      document.close();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** One drawing on the way to its page. */
  private final class Pen {

    private final PDPageContentStream content;
    private final OnPaper placed;
    private final double perMm;

    Pen(PDPageContentStream content, OnPaper placed, double perMm) {
      this.content = content;
      this.placed = placed;
      this.perMm = perMm;
    }

    /** Leaves out what lies outside the frame. */
    private void clip() throws IOException {
      Box frame = placed.drawing().frame();
      content.addRect(
          x(new Point(frame.minX(), 0)),
          y(new Point(0, frame.minY())),
          size(frame.length()),
          size(frame.width()));
      content.clip();
    }

    private void write(Item item) throws IOException {
      if (item instanceof Item.Group group) {
        boolean layer = group.kind().equals(Item.Group.LAYER);
        boolean furniture = group.kind().equals(Item.Group.FURNITURE);
        if (layer) {
          content.beginMarkedContent(COSName.OC, layer(group.title().orElse(group.id())));
        } else if (furniture) {
          content.beginMarkedContent(COSName.ARTIFACT, pagination);
        }
        for (Item inner : group.items()) {
          write(inner);
        }
        if (layer || furniture) {
          content.endMarkedContent();
        }
      } else if (item instanceof Item.Lines lines) {
        write(lines);
      } else if (item instanceof Item.Text text) {
        write(text);
      }
    }

    private void write(Item.Lines lines) throws IOException {
      Ink ink = lines.ink();
      content.beginMarkedContent(COSName.getPDFName(tag(lines.kind())));
      if (ink.line().isPresent()) {
        content.setLineWidth(size(ink.widthMm()));
        float[] dashes = new float[ink.dashesMm().size()];
        for (int i = 0; i < dashes.length; i++) {
          dashes[i] = size(ink.dashesMm().get(i));
        }
        content.setLineDashPattern(dashes, 0);
        content.setStrokingColor(awt(ink.line().get()));
      }
      if (ink.fill().isPresent()) {
        content.setNonStrokingColor(awt(ink.fill().get()));
      }
      for (List<Point> line : lines.lines()) {
        for (int i = 0; i < line.size(); i++) {
          float x = x(line.get(i));
          float y = y(line.get(i));
          if (i == 0) {
            content.moveTo(x, y);
          } else {
            content.lineTo(x, y);
          }
        }
        if (lines.closed()) {
          content.closePath();
        }
      }
      paint(ink.fill(), ink.line());
      content.endMarkedContent();
    }

    /** Its last word says most of what a line is. */
    private static String tag(String kind) {
      return kind.substring(kind.lastIndexOf(' ') + 1);
    }

    private void paint(Optional<Colour> fill, Optional<Colour> line) throws IOException {
      if (fill.isPresent() && line.isPresent()) {
        content.fillAndStroke();
      } else if (fill.isPresent()) {
        content.fill();
      } else {
        content.stroke();
      }
    }

    private void write(Item.Text text) throws IOException {
      String words = Lettering.printable(text.words());
      if (words.isBlank()) {
        return;
      }
      double turn = Math.toRadians(text.turnDegrees());
      double before =
          text.anchor().share() * Lettering.width(words, text.sizeMm()) / placed.scale() * perMm;
      content.beginText();
      content.setFont(type, size(text.sizeMm()));
      content.setNonStrokingColor(awt(text.colour()));
      if (text.strong()) {
        content.setStrokingColor(awt(text.colour()));
        content.setLineDashPattern(new float[0], 0);
        content.setLineWidth(size(text.sizeMm() * Lettering.STRONG));
        content.setRenderingMode(RenderingMode.FILL_STROKE);
      } else {
        content.setRenderingMode(RenderingMode.FILL);
      }
      content.setTextMatrix(
          Matrix.getRotateInstance(
              turn,
              (float) (x(text.at()) - Math.cos(turn) * before),
              (float) (y(text.at()) - Math.sin(turn) * before)));
      content.showText(words);
      content.endText();
    }

    private float size(double mm) {
      return (float) (mm / placed.scale() * perMm);
    }

    private float x(Point p) {
      double mm = (p.x() - placed.drawing().frame().minX()) / placed.scale() + placed.at().x();
      return (float) (mm * perMm);
    }

    private float y(Point p) {
      double mm = (p.y() - placed.drawing().frame().minY()) / placed.scale() + placed.at().y();
      return (float) (mm * perMm);
    }

    private java.awt.Color awt(Colour colour) {
      return new java.awt.Color(colour.rgb());
    }
  }
}
