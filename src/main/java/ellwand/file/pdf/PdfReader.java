package ellwand.file.pdf;

import ellwand.file.drawn.Affine;
import ellwand.file.drawn.Drawing;
import ellwand.file.drawn.DrawnLine;
import ellwand.file.drawn.DrawnText;
import ellwand.geometry.Box;
import ellwand.geometry.Point;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import ellwand.units.Unit;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;
import org.apache.pdfbox.contentstream.operator.markedcontent.BeginMarkedContentSequence;
import org.apache.pdfbox.contentstream.operator.markedcontent.BeginMarkedContentSequenceWithProperties;
import org.apache.pdfbox.contentstream.operator.markedcontent.EndMarkedContentSequence;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObjectKey;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdfparser.PDFParser;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentGroup;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentProperties;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** Reads the lines that the pages of a PDF draw, at true scale. Nothing in it is run. */
public final class PdfReader {

  private static final int MOST_PAGES = 400;

  /** What all streams of a file may grow to, bytes. */
  private static final long MOST_BYTES = 150_000_000;

  private static final double MM_PER_POINT = Unit.INCH.mm() / 72;

  private final String file;
  private final PDDocument document;
  private final Layers layers = new Layers();
  private final List<String> said = new ArrayList<>();
  private int pictures;

  private PdfReader(String file, PDDocument document) {
    this.file = file;
    this.document = document;
  }

  /** Whether a file is PDF, by its beginning. */
  public static boolean looksLike(byte[] bytes) {
    String head = new String(bytes, 0, Math.min(bytes.length, 1024), StandardCharsets.ISO_8859_1);
    return head.contains("%PDF-");
  }

  /**
   * Reads a file.
   *
   * @param tiling how its pages are joined; if absent, each is read by itself
   * @param furniture whether also what seems to be no part of the pattern is read
   * @throws InputException if it cannot be read safely and wholly, or has no lines
   */
  public static Drawing read(
      String file, byte[] bytes, Optional<Tiling> tiling, boolean furniture) {
    try (PDDocument document = new PDFParser(new RandomAccessReadBuffer(bytes)).parse(false)) {
      return new PdfReader(file, document).drawing(tiling, furniture);
    } catch (InputException e) {
      throw new InputException(
          e.problems().stream().map(p -> p.file().isPresent() ? p : p.at(file, 0)).toList());
    } catch (IOException | RuntimeException | StackOverflowError e) {
      // What the library meets in a broken file it tells in many ways.
      throw refused(
          file, "this PDF is broken or locked", "Save it again, without a password, and try that");
    }
  }

  private static InputException refused(String file, String what, String remedy) {
    return new InputException(Problem.of(what, remedy).at(file, 0));
  }

  private Drawing drawing(Optional<Tiling> tiling, boolean furniture) throws IOException {
    int count = document.getNumberOfPages();
    if (document.isEncrypted() || count == 0 || count > MOST_PAGES) {
      throw refused(
          file,
          document.isEncrypted() ? "it is locked" : "it has %d pages".formatted(count),
          "Save the pages of the pattern as a PDF of their own, without a password");
    }
    checkStreams();
    int first = tiling.map(Tiling::firstPage).orElse(1);
    int last = tiling.map(t -> first + t.pages() - 1).orElse(count);
    if (last > count) {
      throw refused(
          file,
          "it has %d pages, and %d from page %d on are asked for"
              .formatted(count, last - first + 1, first),
          "Count the rows and columns of pages again (--pages), and say which is the first"
              + " (--first-page)");
    }
    Set<COSDictionary> hidden = hidden();
    List<Pages.Page> pages = new ArrayList<>();
    for (int i = first; i <= last; i++) {
      pages.add(page(i, hidden));
    }
    if (pages.stream().allMatch(p -> p.lines().isEmpty()) && pictures > 0) {
      throw refused(
          file,
          "its pages hold pictures and no lines: it is a scan",
          "Draw round it in a drawing program, or print it, and take a photo to convert");
    }
    Furniture found = furniture ? new Furniture() : Furniture.of(pages);
    found.tell(said);
    Pages together = new Pages(found);
    if (tiling.isPresent()) {
      together.joined(pages, tiling.get(), said);
    } else {
      together.apart(pages);
      if (pages.size() > 1) {
        said.add(
            pages.size()
                + " pages are read, each by itself. Those of one large drawing can be joined"
                + " (--pages ROWSxCOLUMNS).");
      }
    }
    if (pictures > 0) {
      said.add(pictures + " picture(s), which hold no lines, left out.");
    }
    String title = document.getDocumentInformation().getTitle();
    return new Drawing(
        file,
        Optional.ofNullable(title).filter(t -> !t.isBlank()),
        Unit.CM,
        90,
        together.lines().stream().map(Rounded::of).toList(),
        together.texts(),
        Optional.empty(),
        said);
  }

  /** Inflates all streams to nowhere, so that a small file cannot fill the memory. */
  private void checkStreams() throws IOException {
    long sum = 0;
    for (COSObjectKey key : document.getDocument().getXrefTable().keySet()) {
      COSBase object = document.getDocument().getObjectFromPool(key).getObject();
      if (object instanceof COSStream stream
          && !COSName.IMAGE.equals(stream.getCOSName(COSName.SUBTYPE))) {
        sum += inflated(stream, MOST_BYTES - sum);
      }
      if (sum > MOST_BYTES) {
        throw refused(
            file,
            "its streams unpack to more than 150 MB",
            "Save the pages of the pattern as a PDF of their own");
      }
    }
  }

  private static long inflated(COSStream stream, long most) throws IOException {
    long sum = 0;
    Inflater inflater = new Inflater();
    byte[] in = new byte[8192];
    byte[] out = new byte[65536];
    try (InputStream raw = stream.createRawInputStream()) {
      int read = raw.read(in);
      while (read > 0 && sum <= most && !inflater.finished()) {
        inflater.setInput(in, 0, read);
        int made = inflater.inflate(out);
        while (made > 0 && sum <= most) {
          sum += made;
          made = inflater.inflate(out);
        }
        read = raw.read(in);
      }
    } catch (DataFormatException e) {
      // Not packed that way: it is as large as it is in the file.
      return 0;
    } finally {
      inflater.end();
    }
    return sum;
  }

  private Set<COSDictionary> hidden() {
    Set<COSDictionary> hidden = new HashSet<>();
    PDOptionalContentProperties layers = document.getDocumentCatalog().getOCProperties();
    if (layers != null) {
      for (PDOptionalContentGroup group : layers.getOptionalContentGroups()) {
        if (!layers.isGroupEnabled(group)) {
          hidden.add(group.getCOSObject());
          said.add("Layer " + group.getName() + " is hidden and left out.");
        }
      }
    }
    return hidden;
  }

  private Pages.Page page(int number, Set<COSDictionary> hidden) throws IOException {
    PDPage page = document.getPage(number - 1);
    PDRectangle box = page.getCropBox();
    double mm = MM_PER_POINT * Math.max(0.01, Math.min(1000, page.getUserUnit()));
    Affine frame =
        Affine.scaled(mm, mm)
            .after(Affine.turned(-page.getRotation()))
            .after(Affine.shifted(-box.getLowerLeftX(), -box.getLowerLeftY()));
    PageLines drawn = new PageLines(page, frame, layers, hidden);
    List<DrawnLine> lines = drawn.lines();
    pictures += drawn.pictures();
    List<Point> corners = new ArrayList<>();
    for (double x : new double[] {box.getLowerLeftX(), box.getUpperRightX()}) {
      for (double y : new double[] {box.getLowerLeftY(), box.getUpperRightY()}) {
        corners.add(frame.apply(new Point(x, y)));
      }
    }
    Box paper = Box.around(corners);
    return new Pages.Page(paper, lines, texts(number, paper, mm), drawn.furniture());
  }

  private List<DrawnText> texts(int number, Box paper, double mm) throws IOException {
    List<DrawnText> texts = new ArrayList<>();
    PDFTextStripper stripper =
        new PDFTextStripper() {
          private final Deque<Boolean> furniture = new ArrayDeque<>();

          {
            addOperator(new BeginMarkedContentSequence(this));
            addOperator(new BeginMarkedContentSequenceWithProperties(this));
            addOperator(new EndMarkedContentSequence(this));
          }

          @Override
          public void beginMarkedContentSequence(COSName tag, COSDictionary properties) {
            super.beginMarkedContentSequence(tag, properties);
            furniture.push(
                new PageLines.Marked(tag, Optional.ofNullable(properties)).isFurniture());
          }

          @Override
          public void endMarkedContentSequence() {
            super.endMarkedContentSequence();
            furniture.poll();
          }

          @Override
          protected void processTextPosition(TextPosition text) {
            if (!furniture.contains(true)) {
              super.processTextPosition(text);
            }
          }

          @Override
          protected void writeString(String text, List<TextPosition> positions) {
            if (!positions.isEmpty() && !text.isBlank()) {
              TextPosition at = positions.get(0);
              texts.add(
                  new DrawnText(
                      text.strip(),
                      new Point(
                          paper.minX() + at.getXDirAdj() * mm, paper.maxY() - at.getYDirAdj() * mm),
                      layers.whole()));
            }
          }
        };
    stripper.setStartPage(number);
    stripper.setEndPage(number);
    stripper.getText(document);
    return texts;
  }
}
