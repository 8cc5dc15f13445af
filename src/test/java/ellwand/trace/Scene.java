package ellwand.trace;

import ellwand.geometry.Box;
import ellwand.geometry.Motion;
import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import java.awt.AlphaComposite;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;

/**
 * A table with paper pieces and printed reference sheets on it, photographed. Sheets are the raster
 * of the PDF that the program prints. It is a simulation: cloth that wrinkles, paper that lifts and
 * the makings of a true lens are only in it as far as it says.
 *
 * @param flaws of the photo
 */
record Scene(Ground ground, List<LaidSheet> sheets, List<PaperPiece> pieces, Flaws flaws) {

  /** What the paper lies on. */
  enum Ground {
    WOOD(0x9A6B3F),
    DARK_WOOD(0x5A3A24),
    BLUE_CLOTH(0x2E4A7D),
    GREEN_CLOTH(0x3F6B4F),
    DARK_GREY(0x46464A),
    PALE_GREY(0xB9BABC);

    private final int rgb;

    Ground(int rgb) {
      this.rgb = rgb;
    }
  }

  /** What a piece is cut from. */
  enum Paper {
    WHITE(0xF2F1EC, 1),
    BROWN(0xB98D5E, 1),
    TISSUE(0xE9DFC6, 0.82);

    private final int rgb;
    private final double cover;

    Paper(int rgb, double cover) {
      this.rgb = rgb;
      this.cover = cover;
    }
  }

  /**
   * A piece of paper.
   *
   * @param printed whether lines are printed on it
   * @param arrows drawn on it
   */
  record PaperPiece(Outline outline, Paper paper, boolean printed, List<Arrow> arrows) {
    PaperPiece(Outline outline, Paper paper, boolean printed) {
      this(outline, paper, printed, List.of());
    }
  }

  /**
   * An arrow drawn by hand or printed.
   *
   * @param head its head's length, mm; 0 for a bare line
   * @param filled whether the head is a dark triangle, or two strokes
   * @param both whether there is a head at either end, or only at {@code to}
   * @param lineMm how wide its lines are
   */
  record Arrow(Point from, Point to, double head, boolean filled, boolean both, double lineMm) {

    private void draw(Graphics2D graphics) {
      graphics.setColor(new Color(0x2B3050));
      graphics.setStroke(new BasicStroke((float) lineMm));
      Path2D shaft = new Path2D.Double();
      shaft.moveTo(from.x(), from.y());
      shaft.lineTo(to.x(), to.y());
      graphics.draw(shaft);
      if (head > 0) {
        draw(from, to, graphics);
        if (both) {
          draw(to, from, graphics);
        }
      }
    }

    /** One stroke longer and steeper than the other, as a hand draws them. */
    private void draw(Point tail, Point tip, Graphics2D graphics) {
      Point back = tail.minus(tip).unit();
      Path2D strokes = new Path2D.Double();
      Point left = tip.plus(back.times(head)).plus(back.left().times(head * 0.5));
      Point right = tip.plus(back.times(head * 0.85)).plus(back.left().times(head * -0.36));
      strokes.moveTo(left.x(), left.y());
      strokes.lineTo(tip.x(), tip.y());
      strokes.lineTo(right.x(), right.y());
      if (filled) {
        strokes.closePath();
        graphics.fill(strokes);
      }
      graphics.draw(strokes);
    }
  }

  /**
   * A reference sheet on the table.
   *
   * @param where its lower left corner lies and how it is turned
   * @param curlMm how high its left and right edges rise; 0 for a flat one
   * @param printedAt 1 where it was printed at 100 %
   */
  record LaidSheet(ReferenceSheet sheet, Motion where, double curlMm, double printedAt) {

    /** A flat A4 sheet. */
    static LaidSheet a4(int number, double x, double y, double turnDegrees) {
      return new LaidSheet(
          new ReferenceSheet(ReferenceSheet.Paper.A4, number),
          new Motion(false, turnDegrees, x, y),
          0,
          1);
    }
  }

  /**
   * What is wrong with a photo.
   *
   * @param blurPx standard deviation of the blur
   * @param movedPx how far the camera moved while it took the photo
   * @param noise standard deviation, shares of white
   * @param shadow by how much light falls off from one side of the table to the other, 0 to 1
   * @param hardShadow how much light is lacking on one side of a sharp line across the table
   * @param jpegQuality 0 to 100
   * @param seed of the noise, of the hard shadow's place and of the way the camera moved
   */
  record Flaws(
      double blurPx,
      double movedPx,
      double noise,
      double shadow,
      double hardShadow,
      int jpegQuality,
      long seed) {
    static final Flaws USUAL = new Flaws(0.8, 0.01, 0.3, 85, 1);

    Flaws(double blurPx, double noise, double shadow, int jpegQuality, long seed) {
      this(blurPx, 0, noise, shadow, 0, jpegQuality, seed);
    }
  }

  Scene {
    sheets = List.copyOf(sheets);
    pieces = List.copyOf(pieces);
  }

  /** A photo as a JPEG file. */
  byte[] photo(SimulatedCamera camera) {
    return Film.jpeg(picture(camera), flaws.jpegQuality());
  }

  /** A scan of an area of the table without sheets: every pixel where it belongs. */
  byte[] scan(Box area, double dpi) {
    Table table = new Table(area, 25.4 / dpi);
    return Film.jpeg(table.raster, flaws.jpegQuality());
  }

  BufferedImage picture(SimulatedCamera camera) {
    int width = camera.widthPx();
    int height = camera.heightPx();
    double finest = camera.distanceMm() / camera.focalPx();
    Box extent = extent();
    Table table = new Table(extent, finest * 0.8);
    List<SheetTexture> printed =
        sheets.stream().map(s -> new SheetTexture(s, finest * 0.8)).toList();
    double[] eye = camera.pinhole();
    float[][] light = new float[3][width * height];
    double[] colour = new double[3];
    Rays rays = new Rays(camera);
    double[] ray = new double[3];
    Shade shade = new Shade(flaws, extent);
    for (int row = 0; row < height; row++) {
      for (int column = 0; column < width; column++) {
        rays.at(column, row, ray);
        double x = Double.NaN;
        double y = Double.NaN;
        if (ray[2] < -1e-6) {
          x = eye[0] - ray[0] * eye[2] / ray[2];
          y = eye[1] - ray[1] * eye[2] / ray[2];
        }
        table.colour(x, y, colour);
        for (SheetTexture sheet : printed) {
          sheet.colour(x, y, ray[0] / ray[2], ray[1] / ray[2], colour);
        }
        double lit = shade.at(x, y);
        for (int c = 0; c < 3; c++) {
          light[c][row * width + column] = (float) (colour[c] * lit);
        }
      }
    }
    return Film.developed(light, width, height, flaws);
  }

  /** All that lies on the table, with room round it. */
  private Box extent() {
    List<Point> points = new ArrayList<>();
    sheets.forEach(s -> points.addAll(s.sheet.outline().moved(s.where).points()));
    pieces.forEach(p -> points.addAll(p.outline.points()));
    return Box.around(points).grown(150);
  }

  /** The ground with the pieces on it, from straight above. */
  private final class Table {

    private final Box area;
    private final double mmPerPixel;
    private final BufferedImage raster;
    private final int[] pixels;

    Table(Box area, double mmPerPixel) {
      this.area = area;
      this.mmPerPixel = mmPerPixel;
      raster =
          new BufferedImage(
              (int) Math.ceil(area.length() / mmPerPixel),
              (int) Math.ceil(area.width() / mmPerPixel),
              BufferedImage.TYPE_INT_RGB);
      pixels = Raster.pixels(raster);
      for (int row = 0; row < raster.getHeight(); row++) {
        for (int column = 0; column < raster.getWidth(); column++) {
          double x = area.minX() + (column + 0.5) * mmPerPixel;
          double y = area.maxY() - (row + 0.5) * mmPerPixel;
          pixels[row * raster.getWidth() + column] = groundAt(x, y);
        }
      }
      Graphics2D graphics = raster.createGraphics();
      graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
      graphics.setRenderingHint(
          RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
      graphics.scale(1 / mmPerPixel, -1 / mmPerPixel);
      graphics.translate(-area.minX(), -area.maxY());
      pieces.forEach(piece -> draw(piece, graphics));
      graphics.dispose();
    }

    private void draw(PaperPiece piece, Graphics2D graphics) {
      Path2D path = path(piece.outline);
      graphics.setComposite(
          AlphaComposite.getInstance(AlphaComposite.SRC_OVER, (float) piece.paper.cover));
      graphics.setColor(new Color(piece.paper.rgb));
      graphics.fill(path);
      graphics.setComposite(AlphaComposite.SrcOver);
      if (piece.printed) {
        graphics.setColor(new Color(0x30302E));
        graphics.setStroke(new BasicStroke(0.4f));
        Box box = piece.outline.box();
        Point middle = box.centre();
        AffineTransform inward = new AffineTransform();
        inward.translate(middle.x(), middle.y());
        inward.scale(1 - 30 / Math.max(60, box.length()), 1 - 30 / Math.max(60, box.width()));
        inward.translate(-middle.x(), -middle.y());
        graphics.draw(inward.createTransformedShape(path));
        Path2D arrow = new Path2D.Double();
        double half = box.width() * 0.3;
        arrow.moveTo(middle.x(), middle.y() - half);
        arrow.lineTo(middle.x(), middle.y() + half);
        graphics.draw(arrow);
      }
      piece.arrows.forEach(arrow -> arrow.draw(graphics));
    }

    private Path2D path(Outline outline) {
      Path2D path = new Path2D.Double();
      List<Point> points = outline.points();
      path.moveTo(points.get(0).x(), points.get(0).y());
      points.stream().skip(1).forEach(p -> path.lineTo(p.x(), p.y()));
      path.closePath();
      return path;
    }

    private void colour(double x, double y, double[] colour) {
      double u = (x - area.minX()) / mmPerPixel - 0.5;
      double v = (area.maxY() - y) / mmPerPixel - 0.5;
      if (!Raster.sample(pixels, raster.getWidth(), u, v, colour)) {
        int rgb = Double.isNaN(x) ? 0x808080 : groundAt(x, y);
        for (int c = 0; c < 3; c++) {
          colour[c] = Film.LINEAR[rgb >> (16 - 8 * c) & 255];
        }
      }
    }
  }

  private int groundAt(double x, double y) {
    double shade =
        switch (ground) {
          case WOOD, DARK_WOOD -> {
            double ring = y + 6 * Math.sin(x / 90) + 2.5 * Math.sin(x / 31 + y / 17);
            double seam = Math.abs(y % 120) < 0.7 ? -0.25 : 0;
            yield 0.10 * Math.sin(ring / 3.1) + 0.07 * Math.sin(ring / 0.9 + x / 200) + seam;
          }
          case BLUE_CLOTH, GREEN_CLOTH -> 0.06 * Math.sin(x * 2.1) * Math.sin(y * 2.1);
          case DARK_GREY, PALE_GREY -> 0.01 * Math.sin(x / 3) * Math.sin(y / 5);
        };
    int rgb = 0;
    for (int c = 0; c < 3; c++) {
      int level = (int) Math.round((ground.rgb >> (16 - 8 * c) & 255) * (1 + shade));
      rgb |= Math.min(255, Math.max(0, level)) << (16 - 8 * c);
    }
    return rgb;
  }
}
