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
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;

/** Follows what a page draws, and keeps its lines. Clips, colours and letters are passed over. */
final class PageLines extends PDFGraphicsStreamEngine {

  private static final int MOST_OPERATORS = 2_000_000;

  private final Affine frame;
  private final Label page;
  private final Set<COSDictionary> hidden;
  private final Map<String, Label> layers = new LinkedHashMap<>();
  private final Deque<Optional<COSDictionary>> marked = new ArrayDeque<>();
  private final List<DrawnLine> lines = new ArrayList<>();
  private List<Runnable> path = new ArrayList<>();
  private LineBuilder pen;
  private Point2D at = new Point2D.Float();
  private int operators;
  private int points;
  private int pictures;

  /**
   * @param frame from points on the page to mm
   * @param label of the page
   * @param hidden layers that are not shown
   */
  PageLines(PDPage page, Affine frame, Label label, Set<COSDictionary> hidden) {
    super(page);
    this.frame = frame;
    this.page = label;
    this.hidden = hidden;
  }

  /** The lines of the page. */
  List<DrawnLine> lines() throws IOException {
    processPage(getPage());
    return lines;
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
    marked.push(COSName.OC.equals(tag) ? Optional.ofNullable(properties) : Optional.empty());
  }

  @Override
  public void endMarkedContentSequence() {
    marked.poll();
  }

  private Label label() {
    return marked.stream()
        .flatMap(Optional::stream)
        .map(layer -> layer.getString(COSName.NAME))
        .filter(name -> name != null && !name.isBlank())
        .findFirst()
        .map(name -> layers.computeIfAbsent(name, n -> named(Optional.of(n), page)))
        .orElse(page);
  }

  private static Label named(Optional<String> name, Label inside) {
    return new Label(name, List.of(), Optional.empty(), Optional.of(inside), 0);
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
    boolean shown = marked.stream().flatMap(Optional::stream).noneMatch(hidden::contains);
    points += path.size();
    if (points > Drawing.MOST_POINTS) {
      throw InputException.of(
          "a page has more than 200,000 points", "Leave out of the file what is no pattern");
    }
    if (shown) {
      pen = new LineBuilder(lines, frame, named(Optional.empty(), label()));
      path.forEach(Runnable::run);
      pen.end();
    }
    path = new ArrayList<>();
  }

  @Override
  public void strokePath() {
    draw();
  }

  @Override
  public void fillPath(int windingRule) {
    draw();
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
