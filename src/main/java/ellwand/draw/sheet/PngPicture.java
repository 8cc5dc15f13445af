package ellwand.draw.sheet;

import ellwand.geometry.Box;
import ellwand.geometry.Point;
import ellwand.units.Unit;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;

/** Paints drawings as PNG pictures, with the margins of a page. */
public final class PngPicture {

  private final Graphics2D graphics;
  private final Box frame;
  private final double perMm;

  private PngPicture(Graphics2D graphics, Box frame, double perMm) {
    this.graphics = graphics;
    this.frame = frame;
    this.perMm = perMm;
  }

  /**
   * A drawing with white all round, as on a page that is as large as it must be.
   *
   * @param scale mm drawn for one mm of paper
   * @param dotsPerInch of that paper
   */
  public static byte[] of(Drawing drawing, double scale, double dotsPerInch) {
    double perPaperMm = dotsPerInch / Unit.INCH.mm();
    Box frame = drawing.frame().grown(Paper.MARGIN_MM * scale);
    double perMm = perPaperMm / scale;
    BufferedImage image =
        new BufferedImage(
            Math.max(1, (int) Math.floor(frame.length() * perMm)),
            Math.max(1, (int) Math.floor(frame.width() * perMm)),
            BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = image.createGraphics();
    try {
      graphics.setColor(Color.WHITE);
      graphics.fillRect(0, 0, image.getWidth(), image.getHeight());
      graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
      graphics.setRenderingHint(
          RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
      new PngPicture(graphics, frame, perMm).paint(drawing.items());
      return PngWriter.bytes(image);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } finally {
      graphics.dispose();
    }
  }

  private void paint(List<Item> items) {
    for (Item item : items) {
      if (item instanceof Item.Group group) {
        paint(group.items());
      } else if (item instanceof Item.Lines lines) {
        paint(lines);
      } else if (item instanceof Item.Text text) {
        paint(text);
      }
    }
  }

  private void paint(Item.Lines lines) {
    Path2D path = new Path2D.Double();
    for (List<Point> line : lines.lines()) {
      for (int i = 0; i < line.size(); i++) {
        double x = x(line.get(i));
        double y = y(line.get(i));
        if (i == 0) {
          path.moveTo(x, y);
        } else {
          path.lineTo(x, y);
        }
      }
      if (lines.closed()) {
        path.closePath();
      }
    }
    Ink ink = lines.ink();
    ink.fill().ifPresent(colour -> fill(path, colour));
    ink.line().ifPresent(colour -> draw(path, colour, ink.widthMm(), ink.dashesMm()));
  }

  private void paint(Item.Text text) {
    String words = Lettering.printable(text.words());
    double size = text.sizeMm() * perMm;
    Shape letters = Lettering.outline(words);
    AffineTransform to = AffineTransform.getTranslateInstance(x(text.at()), y(text.at()));
    to.rotate(-Math.toRadians(text.turnDegrees()));
    to.translate(-text.anchor().share() * Lettering.width(words, size), 0);
    to.scale(size, -size);
    Shape placed = to.createTransformedShape(letters);
    fill(placed, text.colour());
    if (text.strong()) {
      draw(placed, text.colour(), text.sizeMm() * Lettering.STRONG, List.of());
    }
  }

  private void fill(Shape shape, Colour colour) {
    graphics.setColor(new Color(colour.rgb()));
    graphics.fill(shape);
  }

  private void draw(Shape shape, Colour colour, double widthMm, List<Double> dashesMm) {
    float[] dashes = new float[dashesMm.size()];
    for (int i = 0; i < dashes.length; i++) {
      dashes[i] = (float) (dashesMm.get(i) * perMm);
    }
    graphics.setColor(new Color(colour.rgb()));
    graphics.setStroke(
        new BasicStroke(
            (float) (widthMm * perMm),
            BasicStroke.CAP_ROUND,
            BasicStroke.JOIN_ROUND,
            1,
            dashes.length == 0 ? null : dashes,
            0));
    graphics.draw(shape);
  }

  private double x(Point p) {
    return (p.x() - frame.minX()) * perMm;
  }

  private double y(Point p) {
    return (frame.maxY() - p.y()) * perMm;
  }
}
