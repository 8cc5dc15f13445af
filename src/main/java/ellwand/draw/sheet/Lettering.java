package ellwand.draw.sheet;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.GlyphData;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/**
 * The type that drawings are set in and measured with: Liberation Sans, which comes with PDFBox, is
 * as wide as Arial and Helvetica, and holds Latin, Greek and Cyrillic letters. No type of the
 * machine is asked for, so drawings come out the same everywhere.
 */
public final class Lettering {

  /** For SVG, whose viewers bring their own. */
  static final String FAMILY = "'Liberation Sans', Arial, Helvetica, sans-serif";

  /** Height of capitals over the base line, as a share of the size. */
  public static final double CAPITALS = 0.73;

  /** How far letters hang below the base line, as a share of the size. */
  public static final double DESCENT = 0.21;

  /** From base line to base line, as a share of the size. */
  public static final double LINE = 1.25;

  /** What heavier words are outlined with, as a share of the size. */
  static final double STRONG = 0.035;

  private static final String FILE = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

  static final TrueTypeFont TYPE = read();
  private static final double UNITS = unitsPerEm();
  private static final CmapLookup LETTERS = letters();

  /** Of the letters that are asked for most, up to the last of Latin, Greek and Cyrillic. */
  private static final double[] ADVANCES =
      IntStream.range(0, 0x530).mapToDouble(Lettering::looked).toArray();

  private Lettering() {}

  private static TrueTypeFont read() {
    try (InputStream in = Lettering.class.getResourceAsStream(FILE)) {
      TrueTypeFont type = new TTFParser().parse(new RandomAccessReadBuffer(in));
      // Nothing is substituted in these letters, and looking for it in each word takes long.
      type.setEnableGsub(false);
      return type;
    } catch (IOException e) {
      throw new UncheckedIOException("the type for drawings cannot be read", e);
    }
  }

  private static double unitsPerEm() {
    try {
      return TYPE.getUnitsPerEm();
    } catch (IOException e) {
      throw new UncheckedIOException("the type for drawings cannot be read", e);
    }
  }

  private static CmapLookup letters() {
    try {
      TYPE.getHorizontalMetrics();
      return TYPE.getUnicodeCmapLookup();
    } catch (IOException e) {
      throw new UncheckedIOException("the type for drawings cannot be read", e);
    }
  }

  /** Whether the type has this letter. */
  private static boolean has(int codePoint) {
    return LETTERS.getGlyphId(codePoint) != 0;
  }

  /** Width of one line of words in mm, for type of the given size in mm. */
  public static double width(String words, double sizeMm) {
    return words.codePoints().mapToDouble(Lettering::advance).sum() * sizeMm;
  }

  private static double advance(int codePoint) {
    return codePoint < ADVANCES.length ? ADVANCES[codePoint] : looked(codePoint);
  }

  private static double looked(int codePoint) {
    if (!has(codePoint)) {
      return 1;
    }
    try {
      return TYPE.getAdvanceWidth(LETTERS.getGlyphId(codePoint)) / UNITS;
    } catch (IOException e) {
      throw new UncheckedIOException("the type for drawings cannot be read", e);
    }
  }

  /** What one line of words covers, for type of size 1, from the start of its base line, y up. */
  static Shape outline(String words) {
    Path2D outline = new Path2D.Double(Path2D.WIND_NON_ZERO);
    double[] at = {0};
    words
        .codePoints()
        .forEach(
            letter -> {
              AffineTransform to = AffineTransform.getTranslateInstance(at[0], 0);
              to.scale(1 / UNITS, 1 / UNITS);
              outline.append(glyph(letter).getPathIterator(to), false);
              at[0] += advance(letter);
            });
    return outline;
  }

  private static Shape glyph(int codePoint) {
    try {
      GlyphData glyph = TYPE.getGlyph().getGlyph(LETTERS.getGlyphId(codePoint));
      return glyph == null ? new Path2D.Double() : glyph.getPath();
    } catch (IOException e) {
      throw new UncheckedIOException("the type for drawings cannot be read", e);
    }
  }

  /** On one line, without what XML 1.0 does not allow. */
  public static String clean(String words) {
    StringBuilder clean = new StringBuilder();
    words
        .codePoints()
        .map(c -> Character.isWhitespace(c) ? ' ' : c)
        .filter(c -> c >= 0x20 && c <= 0xD7FF || c >= 0xE000 && c <= 0xFFFD || c >= 0x10000)
        .filter(c -> Character.getType(c) != Character.CONTROL)
        .forEach(clean::appendCodePoint);
    return clean.toString();
  }

  /** With a question mark for every letter that the type lacks (Chinese, say); for PDF. */
  static String printable(String words) {
    StringBuilder printable = new StringBuilder();
    words.codePoints().map(c -> has(c) ? c : '?').forEach(printable::appendCodePoint);
    return printable.toString();
  }

  /** The words, or as many letters as fit with three dots after them. */
  public static String shortened(String words, double sizeMm, double widthMm) {
    if (width(words, sizeMm) <= widthMm) {
      return words;
    }
    int end = words.length();
    while (end > 0 && width(words.substring(0, end) + "…", sizeMm) > widthMm) {
      end = words.offsetByCodePoints(end, -1);
    }
    return words.substring(0, end).stripTrailing() + "…";
  }

  /** Broken between words into lines no wider than {@code widthMm}; longer words are shortened. */
  public static List<String> wrapped(String words, double sizeMm, double widthMm) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : clean(words).strip().split(" +")) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (!line.isEmpty() && width(longer, sizeMm) > widthMm) {
        lines.add(shortened(line.toString(), sizeMm, widthMm));
        longer = word;
      }
      line.setLength(0);
      line.append(longer);
    }
    lines.add(shortened(line.toString(), sizeMm, widthMm));
    return lines;
  }
}
