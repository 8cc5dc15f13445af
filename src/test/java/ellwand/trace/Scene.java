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
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
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
   */
  record PaperPiece(Outline outline, Paper paper, boolean printed) {}

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
   * @param noise standard deviation, shares of white
   * @param shadow by how much light falls off from one side of the table to the other, 0 to 1
   * @param jpegQuality 0 to 100
   * @param seed of the noise
   */
  record Flaws(double blurPx, double noise, double shadow, int jpegQuality, long seed) {
    static final Flaws USUAL = new Flaws(0.8, 0.01, 0.3, 85, 1);
  }

  Scene {
    sheets = List.copyOf(sheets);
    pieces = List.copyOf(pieces);
  }

  /** A photo as a JPEG file. */
  byte[] photo(SimulatedCamera camera) {
    return jpeg(picture(camera), flaws.jpegQuality);
  }

  /** A scan of an area of the table without sheets: every pixel where it belongs. */
  byte[] scan(Box area, double dpi) {
    Table table = new Table(area, 25.4 / dpi);
    return jpeg(table.raster, flaws.jpegQuality);
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
    for (int row = 0; row < height; row++) {
      for (int column = 0; column < width; column++) {
        double[] ray = camera.ray(column, row);
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
        double lit = lit(x, y, extent);
        for (int c = 0; c < 3; c++) {
          light[c][row * width + column] = (float) (colour[c] * lit);
        }
      }
    }
    return developed(light, width, height);
  }

  /** All that lies on the table, with room round it. */
  private Box extent() {
    List<Point> points = new ArrayList<>();
    sheets.forEach(s -> points.addAll(s.sheet.outline().moved(s.where).points()));
    pieces.forEach(p -> points.addAll(p.outline.points()));
    return Box.around(points).grown(150);
  }

  /** Light that falls off from left to right, and the soft edge of a shadow across the table. */
  private double lit(double x, double y, Box extent) {
    double across = (x - extent.minX()) / extent.length();
    double edge = (x * 0.8 + y * 0.6 - extent.centre().x() * 0.8 - extent.centre().y() * 0.6) / 60;
    double fall = 1 - flaws.shadow * 0.6 * Math.min(1, Math.max(0, across));
    return Double.isNaN(fall) ? 0.5 : fall * (1 - flaws.shadow * 0.4 / (1 + Math.exp(-edge)));
  }

  private BufferedImage developed(float[][] light, int width, int height) {
    Random random = new Random(flaws.seed);
    double[] noise = new double[1 << 16];
    Arrays.setAll(noise, i -> random.nextGaussian());
    BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    int[] pixels = ((DataBufferInt) picture.getRaster().getDataBuffer()).getData();
    for (int c = 0; c < 3; c++) {
      float[] channel = blurred(light[c], width, height, flaws.blurPx);
      for (int i = 0; i < pixels.length; i++) {
        double value = srgb(channel[i]) + flaws.noise * noise[random.nextInt(noise.length)];
        int level = (int) Math.round(255 * Math.min(1, Math.max(0, value)));
        pixels[i] |= level << (16 - 8 * c);
      }
    }
    return picture;
  }

  private static float[] blurred(float[] from, int width, int height, double sigma) {
    if (sigma <= 0) {
      return from;
    }
    int reach = (int) Math.ceil(3 * sigma);
    float[] weights = new float[2 * reach + 1];
    float sum = 0;
    for (int i = -reach; i <= reach; i++) {
      weights[i + reach] = (float) Math.exp(-i * i / (2 * sigma * sigma));
      sum += weights[i + reach];
    }
    for (int i = 0; i < weights.length; i++) {
      weights[i] /= sum;
    }
    return along(along(from, width, height, weights, true), width, height, weights, false);
  }

  private static float[] along(float[] from, int width, int height, float[] weights, boolean rows) {
    int reach = weights.length / 2;
    float[] to = new float[from.length];
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        float sum = 0;
        for (int i = -reach; i <= reach; i++) {
          int u = rows ? Math.min(width - 1, Math.max(0, x + i)) : x;
          int v = rows ? y : Math.min(height - 1, Math.max(0, y + i));
          sum += weights[i + reach] * from[v * width + u];
        }
        to[y * width + x] = sum;
      }
    }
    return to;
  }

  private static final double[] LINEAR = new double[256];

  static {
    for (int i = 0; i < 256; i++) {
      double v = i / 255.0;
      LINEAR[i] = v <= 0.04045 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4);
    }
  }

  private static final float[] SRGB = new float[1 << 14];

  static {
    for (int i = 0; i < SRGB.length; i++) {
      double v = (i + 0.5) / SRGB.length;
      SRGB[i] = (float) (v <= 0.0031308 ? 12.92 * v : 1.055 * Math.pow(v, 1 / 2.4) - 0.055);
    }
  }

  private static float srgb(float linear) {
    return SRGB[Math.min(SRGB.length - 1, Math.max(0, (int) (linear * SRGB.length)))];
  }

  static byte[] jpeg(BufferedImage picture, int quality) {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    ImageWriteParam how = writer.getDefaultWriteParam();
    how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
    how.setCompressionQuality(quality / 100f);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (var out = ImageIO.createImageOutputStream(bytes)) {
      writer.setOutput(out);
      writer.write(null, new IIOImage(picture, null, null), how);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } finally {
      writer.dispose();
    }
    return bytes.toByteArray();
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
                  * ((1 - a) * LINEAR[pixels[at] >> shift & 255]
                      + a * LINEAR[pixels[at + 1] >> shift & 255])
              + b
                  * ((1 - a) * LINEAR[pixels[at + width] >> shift & 255]
                      + a * LINEAR[pixels[at + width + 1] >> shift & 255]);
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
          colour[c] = LINEAR[rgb >> (16 - 8 * c) & 255];
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
      int dots = Math.max(1, (int) (mmPerPixel * Printed.DPI / 25.4));
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
            sum += LINEAR[from[(i / dots) * width * dots + column * dots + i % dots]];
          }
          int grey = Math.round(255 * srgb((float) (sum / (dots * dots))));
          fewer.setRGB(column, row, grey * 0x10101);
        }
      }
      return fewer;
    }
  }
}
