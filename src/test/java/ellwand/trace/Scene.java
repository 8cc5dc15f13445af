package ellwand.trace;

import ellwand.draw.reference.ReferencePages;
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
import java.awt.image.DataBufferInt;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

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
    List<Texture> printed = sheets.stream().map(s -> new Texture(s, finest * 0.8)).toList();
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
        for (Texture sheet : printed) {
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

  /** The rays of a camera: worked out at every fourth pixel, straight between (to 0.001 px). */
  private static final class Rays {

    private static final int CELL = 4;

    private final double[][] known;
    private final int across;

    Rays(SimulatedCamera camera) {
      across = camera.widthPx() / CELL + 2;
      known = new double[across * (camera.heightPx() / CELL + 2)][];
      for (int i = 0; i < known.length; i++) {
        known[i] = camera.ray(i % across * CELL, i / across * CELL);
      }
    }

    void at(int column, int row, double[] ray) {
      int i = row / CELL * across + column / CELL;
      double a = column % CELL / (double) CELL;
      double b = row % CELL / (double) CELL;
      for (int c = 0; c < 3; c++) {
        ray[c] =
            (1 - b) * ((1 - a) * known[i][c] + a * known[i + 1][c])
                + b * ((1 - a) * known[i + across][c] + a * known[i + across + 1][c]);
      }
    }
  }

  /** Light that falls off from left to right, a shadow's soft edge, and perhaps a sharp one. */
  private static final class Shade {

    /** Of the sharp edge, mm: a window's frame throws it. */
    private static final double SHARP_MM = 1.5;

    private final Flaws flaws;
    private final Box extent;
    private final Point middle;
    private final Point across;
    private final double off;

    Shade(Flaws flaws, Box extent) {
      this.flaws = flaws;
      this.extent = extent;
      middle = extent.centre();
      Random random = new Random(flaws.seed);
      double turn = random.nextDouble() * 2 * Math.PI;
      across = new Point(Math.cos(turn), Math.sin(turn));
      off = (random.nextDouble() - 0.5) * 0.4 * Math.min(extent.length(), extent.width());
    }

    double at(double x, double y) {
      double side = (x - extent.minX()) / extent.length();
      double edge = ((x - middle.x()) * 0.8 + (y - middle.y()) * 0.6) / 60;
      double fall = 1 - flaws.shadow * 0.6 * Math.min(1, Math.max(0, side));
      if (Double.isNaN(fall)) {
        return 0.5;
      }
      double lit = fall * (1 - flaws.shadow * 0.4 / (1 + Math.exp(-edge)));
      if (flaws.hardShadow > 0) {
        double in = (x - middle.x()) * across.x() + (y - middle.y()) * across.y() - off;
        lit *= 1 - flaws.hardShadow * Math.min(1, Math.max(0, in / SHARP_MM + 0.5));
      }
      return lit;
    }
  }

  /** Mixes the colours of a raster, in linear light, between the centres of four pixels. */
  private static boolean sample(int[] pixels, int width, double u, double v, double[] colour) {
    int height = pixels.length / width;
    if (!(u >= 0 && v >= 0 && u < width - 1 && v < height - 1)) {
      return false;
    }
    int x = (int) u;
    int y = (int) v;
    double a = u - x;
    double b = v - y;
    int at = y * width + x;
    for (int c = 0; c < 3; c++) {
      int shift = 16 - 8 * c;
      colour[c] =
          (1 - b)
                  * ((1 - a) * Film.LINEAR[pixels[at] >> shift & 255]
                      + a * Film.LINEAR[pixels[at + 1] >> shift & 255])
              + b
                  * ((1 - a) * Film.LINEAR[pixels[at + width] >> shift & 255]
                      + a * Film.LINEAR[pixels[at + width + 1] >> shift & 255]);
    }
    return true;
  }

  private static int[] pixels(BufferedImage picture) {
    return ((DataBufferInt) picture.getRaster().getDataBuffer()).getData();
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
      pixels = Scene.pixels(raster);
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
      if (!sample(pixels, raster.getWidth(), u, v, colour)) {
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

  /** A printed sheet. */
  private static final class Texture {

    private final LaidSheet laid;
    private final double perMm;
    private final int[] pixels;
    private final int width;
    private final double cos;
    private final double sin;

    Texture(LaidSheet laid, double mmPerPixel) {
      this.laid = laid;
      // One of few, so that a sheet is printed once for many photos.
      int dots = Math.max(1, Integer.highestOneBit((int) (mmPerPixel * Printed.DPI / 25.4)));
      perMm = Printed.DPI / 25.4 / dots;
      BufferedImage raster = Printed.page(laid.sheet, dots);
      pixels = Scene.pixels(raster);
      width = raster.getWidth();
      double turn = Math.toRadians(laid.where.turnDegrees());
      cos = Math.cos(turn);
      sin = Math.sin(turn);
    }

    /** Paints over the colour where the ray meets the sheet; it goes so far in x and y as in z. */
    void colour(double x, double y, double slopeX, double slopeY, double[] colour) {
      double paperWidth = laid.sheet.paper().widthMm();
      double paperHeight = laid.sheet.paper().heightMm();
      double height = 0;
      double u = 0;
      double v = 0;
      for (int i = 0; i < (laid.curlMm == 0 ? 1 : 6); i++) {
        double dx = x + slopeX * height - laid.where.x();
        double dy = y + slopeY * height - laid.where.y();
        u = cos * dx + sin * dy;
        v = -sin * dx + cos * dy;
        double side = 2 * u / paperWidth - 1;
        height = laid.curlMm * side * side;
      }
      // A sheet printed smaller has more white round the field.
      double onPageX = paperWidth / 2 + (u - paperWidth / 2) / laid.printedAt;
      double onPageY = paperHeight / 2 + (v - paperHeight / 2) / laid.printedAt;
      boolean onPaper = u >= 0 && v >= 0 && u <= paperWidth && v <= paperHeight;
      if (onPaper
          && !sample(
              pixels,
              width,
              onPageX * perMm - 0.5,
              (paperHeight - onPageY) * perMm - 0.5,
              colour)) {
        colour[0] = 1;
        colour[1] = 1;
        colour[2] = 1;
      }
    }
  }

  /** Pages of the program's own PDF, as a printer of 600 dots to the inch lays them down. */
  private static final class Printed {

    private static final int DPI = 600;

    private static final Map<ReferenceSheet.Paper, byte[]> PDF =
        new EnumMap<>(ReferenceSheet.Paper.class);

    private static final Map<String, BufferedImage> KEPT = new HashMap<>();

    /**
     * @param dots so many dots each way become one pixel
     */
    static synchronized BufferedImage page(ReferenceSheet sheet, int dots) {
      return KEPT.computeIfAbsent(sheet + "/" + dots, key -> fewer(dots(sheet), dots));
    }

    private static BufferedImage dots(ReferenceSheet sheet) {
      byte[] pdf =
          PDF.computeIfAbsent(
              sheet.paper(), paper -> ReferencePages.pdf(paper, ReferenceSheet.MOST));
      try (PDDocument document = Loader.loadPDF(pdf)) {
        int first = document.getNumberOfPages() - ReferenceSheet.MOST;
        return new PDFRenderer(document)
            .renderImageWithDPI(first + sheet.number() - 1, DPI, ImageType.GRAY);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }

    private static BufferedImage fewer(BufferedImage page, int dots) {
      int width = page.getWidth() / dots;
      int height = page.getHeight() / dots;
      BufferedImage fewer = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
      int[] from = new int[width * dots * dots];
      for (int row = 0; row < height; row++) {
        page.getRaster().getPixels(0, row * dots, width * dots, dots, from);
        for (int column = 0; column < width; column++) {
          double sum = 0;
          for (int i = 0; i < dots * dots; i++) {
            sum += Film.LINEAR[from[(i / dots) * width * dots + column * dots + i % dots]];
          }
          int grey = Math.round(255 * Film.srgb((float) (sum / (dots * dots))));
          fewer.setRGB(column, row, grey * 0x10101);
        }
      }
      return fewer;
    }
  }
}
