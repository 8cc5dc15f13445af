package ellwand.file.pdf;

import ellwand.file.drawn.Affine;
import ellwand.file.drawn.Drawing;
import ellwand.file.drawn.DrawnLine;
import ellwand.file.drawn.Label;
import ellwand.file.drawn.LineBuilder;
import ellwand.problem.InputException;
import java.awt.geom.Point2D;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.color.PDColor;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;

/** Follows what a page draws, and keeps its lines. Clips, colours and letters are passed over. */
final class PageLines extends PDFGraphicsStreamEngine {

  private static final int MOST_OPERATORS = 2_000_000;

  /** Content that has a tag, and perhaps more words. */
  record Marked(COSName tag, Optional<COSDictionary> properties) {

    private static final Set<String> OF_PAGES = Set.of("Pagination", "Page");

    /** Whether it belongs to the page, as page numbers and cut marks do. */
    boolean isFurniture() {
      return COSName.ARTIFACT.equals(tag)
          && properties
              .map(p -> p.getNameAsString(COSName.TYPE))
              .filter(OF_PAGES::contains)
              .isPresent();
    }
  }

  private final Affine frame;
  private final Layers layers;
  private final Set<COSDictionary> hidden;
  private final Deque<Marked> marked = new ArrayDeque<>();
  private final Set<DrawnLine> furniture = Collections.newSetFromMap(new IdentityHashMap<>());
  private final List<DrawnLine> lines = new ArrayList<>();
  private List<Runnable> path = new ArrayList<>();
  private LineBuilder pen;
  private Point2D at = new Point2D.Float();
  private int operators;
  private int points;
  private int pictures;

  /**
   * @param frame from points on the page to mm
   * @param layers of the file
   * @param hidden layers that are not shown
   */
  PageLines(PDPage page, Affine frame, Layers layers, Set<COSDictionary> hidden) {
    super(page);
    this.frame = frame;
    this.layers = layers;
    this.hidden = hidden;
  }

  /** The lines of the page. */
  List<DrawnLine> lines() throws IOException {
    processPage(getPage());
    return lines;
  }

  /** Those of its lines that the file calls page furniture; call it after {@link #lines}. */
  Set<DrawnLine> furniture() {
    return furniture;
  }

  /** How many pictures it shows; call it after {@link #lines}. */
  int pictures() {
    return pictures;
  }

  @Override
  protected void processOperator(Operator operator, List<COSBase> operands) throws IOException {
    if (++operators > MOST_OPERATORS) {
      throw InputException.of(
          "a page draws more than 2,000,000 things", "Leave out of the file what is no pattern");
    }
    super.processOperator(operator, operands);
  }

  @Override
  public void beginMarkedContentSequence(COSName tag, COSDictionary properties) {
    marked.push(new Marked(tag, Optional.ofNullable(properties)));
  }

  @Override
  public void endMarkedContentSequence() {
    marked.poll();
  }

  private Label label() {
    return shownWith()
        .map(layer -> layer.getString(COSName.NAME))
        .filter(name -> name != null && !name.isBlank())
        .findFirst()
        .map(layers::called)
        .orElse(layers.whole());
  }

  private Stream<COSDictionary> shownWith() {
    return marked.stream()
        .filter(m -> COSName.OC.equals(m.tag))
        .flatMap(m -> m.properties.stream());
  }

  /** What the innermost tag that says so calls the lines in it. */
  private Label tagged() {
    Label layer = label();
    return marked.stream()
        .filter(m -> !COSName.OC.equals(m.tag))
        .map(m -> Layers.in(layer, Optional.of(m.tag.getName())))
        .filter(Label::saysWhat)
        .findFirst()
        .orElseGet(() -> Layers.in(layer, Optional.empty()));
  }

  @Override
  public void moveTo(float x, float y) {
    at = new Point2D.Float(x, y);
    path.add(() -> pen.move(x, y));
  }

  @Override
  public void lineTo(float x, float y) {
    at = new Point2D.Float(x, y);
    path.add(() -> pen.line(x, y));
  }

  @Override
  public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
    at = new Point2D.Float(x3, y3);
    path.add(() -> pen.curve(x1, y1, x2, y2, x3, y3));
  }

  @Override
  public void closePath() {
    path.add(() -> pen.close());
  }

  @Override
  public void appendRectangle(Point2D a, Point2D b, Point2D c, Point2D d) {
    path.add(() -> pen.move(a.getX(), a.getY()));
    for (Point2D corner : List.of(b, c, d)) {
      path.add(() -> pen.line(corner.getX(), corner.getY()));
    }
    path.add(() -> pen.close());
    at = a;
  }

  @Override
  public Point2D getCurrentPoint() {
    return at;
  }

  @Override
  public void endPath() {
    path = new ArrayList<>();
  }

  private void draw() {
    boolean shown = shownWith().noneMatch(hidden::contains);
    points += path.size();
    if (points > Drawing.MOST_POINTS) {
      throw InputException.of(
          "a page has more than 200,000 points", "Leave out of the file what is no pattern");
    }
    if (shown) {
      int before = lines.size();
      pen = new LineBuilder(lines, frame, tagged());
      path.forEach(Runnable::run);
      pen.end();
      if (marked.stream().anyMatch(Marked::isFurniture)) {
        furniture.addAll(lines.subList(before, lines.size()));
      }
    }
    path = new ArrayList<>();
  }

  @Override
  public void strokePath() {
    draw();
  }

  @Override
  public void fillPath(int windingRule) {
    if (isWhite(getGraphicsState().getNonStrokingColor())) {
      // Ground behind words or pieces, which nobody sees on paper.
      path = new ArrayList<>();
    } else {
      draw();
    }
  }

  private static boolean isWhite(PDColor colour) {
    try {
      return !colour.isPattern() && (colour.toRGB() & 0xFFFFFF) == 0xFFFFFF;
    } catch (IOException | RuntimeException e) {
      // A colour that cannot be told may be seen.
      return false;
    }
  }

  @Override
  public void fillAndStrokePath(int windingRule) {
    draw();
  }

  @Override
  public void clip(int windingRule) {
    // Pages of a tiled pattern often draw all of it and clip: the whole of a line is wanted.
  }

  @Override
  public void shadingFill(COSName shadingName) {
    // No line.
  }

  @Override
  public void drawImage(PDImage image) {
    pictures++;
  }
}
