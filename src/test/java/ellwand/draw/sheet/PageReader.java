package ellwand.draw.sheet;

import java.awt.Color;
import java.awt.geom.Area;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;

/**
 * What a page of a PDF shows in lines, clipped as a reader of PDF clips them; mm from lower left.
 */
public final class PageReader extends PDFGraphicsStreamEngine {

  private static final double MM = 25.4 / 72;

  private final double mm;
  private final List<Stretch> lines = new ArrayList<>();
  private final Path2D path = new Path2D.Double();

  /**
   * A straight stretch that is stroked.
   *
   * @param line as far as it is seen
   */
  public record Stretch(Line2D line, double widthMm, Color colour, boolean dashed) {

    public double length() {
      return line.getP1().distance(line.getP2());
    }
  }

  private PageReader(PDPage page) {
    super(page);
    mm = MM * page.getUserUnit();
  }

  /** All stretches that are seen of a page's lines. */
  public static List<Stretch> lines(PDPage page) throws IOException {
    PageReader reader = new PageReader(page);
    reader.processPage(page);
    return reader.lines;
  }

  @Override
  public void strokePath() throws IOException {
    Rectangle2D clip = getGraphicsState().getCurrentClippingPath().getBounds2D();
    double width = getGraphicsState().getLineWidth() * mm;
    Color colour = new Color(getGraphicsState().getStrokingColor().toRGB());
    boolean dashed = getGraphicsState().getLineDashPattern().getDashArray().length > 0;
    double[] c = new double[6];
    Point2D start = null;
    Point2D at = null;
    for (PathIterator i = path.getPathIterator(null); !i.isDone(); i.next()) {
      int kind = i.currentSegment(c);
      if (kind == PathIterator.SEG_MOVETO) {
        start = new Point2D.Double(c[0], c[1]);
        at = start;
        continue;
      }
      Point2D to = kind == PathIterator.SEG_CLOSE ? start : new Point2D.Double(c[0], c[1]);
      Line2D seen = clipped(new Line2D.Double(at, to), clip);
      if (seen != null && seen.getP1().distance(seen.getP2()) > 0) {
        Line2D inMm =
            new Line2D.Double(
                seen.getX1() * mm, seen.getY1() * mm, seen.getX2() * mm, seen.getY2() * mm);
        lines.add(new Stretch(inMm, width, colour, dashed));
      }
      at = to;
    }
    path.reset();
  }

  /** By Liang and Barsky; null where nothing is left. */
  private static Line2D clipped(Line2D line, Rectangle2D box) {
    double dx = line.getX2() - line.getX1();
    double dy = line.getY2() - line.getY1();
    double[] p = {-dx, dx, -dy, dy};
    double[] q = {
      line.getX1() - box.getMinX(),
      box.getMaxX() - line.getX1(),
      line.getY1() - box.getMinY(),
      box.getMaxY() - line.getY1()
    };
    double from = 0;
    double to = 1;
    for (int i = 0; i < 4; i++) {
      if (p[i] == 0 && q[i] < 0) {
        return null;
      }
      if (p[i] < 0) {
        from = Math.max(from, q[i] / p[i]);
      } else if (p[i] > 0) {
        to = Math.min(to, q[i] / p[i]);
      }
    }
    return from > to
        ? null
        : new Line2D.Double(
            line.getX1() + from * dx,
            line.getY1() + from * dy,
            line.getX1() + to * dx,
            line.getY1() + to * dy);
  }

  @Override
  public void appendRectangle(Point2D a, Point2D b, Point2D c, Point2D d) {
    path.moveTo(a.getX(), a.getY());
    path.lineTo(b.getX(), b.getY());
    path.lineTo(c.getX(), c.getY());
    path.lineTo(d.getX(), d.getY());
    path.closePath();
  }

  @Override
  public void clip(int windingRule) {
    getGraphicsState().intersectClippingPath(new Area(path));
  }

  @Override
  public void moveTo(float x, float y) {
    path.moveTo(x, y);
  }

  @Override
  public void lineTo(float x, float y) {
    path.lineTo(x, y);
  }

  @Override
  public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
    throw new UnsupportedOperationException("drawings have no curves");
  }

  @Override
  public Point2D getCurrentPoint() {
    return path.getCurrentPoint();
  }

  @Override
  public void closePath() {
    path.closePath();
  }

  @Override
  public void endPath() {
    path.reset();
  }

  @Override
  public void fillPath(int windingRule) {
    path.reset();
  }

  @Override
  public void fillAndStrokePath(int windingRule) throws IOException {
    strokePath();
  }

  @Override
  public void drawImage(PDImage image) {
    throw new UnsupportedOperationException("drawings have no pictures");
  }

  @Override
  public void shadingFill(COSName name) {
    throw new UnsupportedOperationException("drawings have no shading");
  }
}
