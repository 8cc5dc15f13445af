package ellwand.file.dxf;

import ellwand.geometry.Box;
import ellwand.geometry.Point;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;

/**
 * A DXF file in the making, in release 12 (AC1009), which every reader knows: 7-bit ASCII, units as
 * the writer takes them. Group codes are those of the published DXF reference.
 */
public final class DxfText {

  private final StringBuilder text = new StringBuilder();

  /** Where a line of words stands towards its place; the numbers are those of group 72. */
  public enum Justified {
    LEFT,
    CENTRE,
    RIGHT
  }

  /**
   * A pair.
   *
   * @throws IllegalArgumentException if the value is more than one line of ASCII; see {@link
   *     PlainAscii}
   */
  public DxfText put(int code, String value) {
    if (!value.chars().allMatch(c -> c >= 0x20 && c < 0x7F)) {
      throw new IllegalArgumentException("DXF holds lines of plain ASCII, not '" + value + "'");
    }
    text.append(String.format(Locale.ROOT, "%3d", code)).append("\r\n").append(value);
    text.append("\r\n");
    return this;
  }

  public DxfText put(int code, int value) {
    return put(code, Integer.toString(value));
  }

  /** A number to a millionth of its unit. */
  public DxfText put(int code, double value) {
    String digits = String.format(Locale.ROOT, "%.6f", value);
    String trimmed = digits.replaceAll("0+$", "");
    trimmed = trimmed.endsWith(".") ? trimmed + "0" : trimmed;
    return put(code, trimmed.equals("-0.0") ? "0.0" : trimmed);
  }

  /** A place under the codes {@code code}, {@code code + 10} and, for z = 0, {@code code + 20}. */
  public DxfText put(int code, Point at) {
    return put(code, at.x()).put(code + 10, at.y()).put(code + 20, 0.0);
  }

  /** The header section: the release, and what the drawing covers. */
  public DxfText header(Box extent) {
    section("HEADER");
    put(9, "$ACADVER").put(1, "AC1009");
    put(9, "$EXTMIN").put(10, new Point(extent.minX(), extent.minY()));
    put(9, "$EXTMAX").put(10, new Point(extent.maxX(), extent.maxY()));
    return endSection();
  }

  /** The tables section: one line type, and the layers, coloured 1, 2, 3, ... in turn. */
  public DxfText layers(List<String> names) {
    section("TABLES");
    put(0, "TABLE").put(2, "LTYPE").put(70, 1);
    put(0, "LTYPE").put(2, "CONTINUOUS").put(70, 0).put(3, "Solid line");
    put(72, 65).put(73, 0).put(40, 0.0);
    put(0, "ENDTAB");
    put(0, "TABLE").put(2, "LAYER").put(70, names.size());
    for (int i = 0; i < names.size(); i++) {
      put(0, "LAYER").put(2, names.get(i)).put(70, 0).put(62, i % 7 + 1).put(6, "CONTINUOUS");
    }
    put(0, "ENDTAB");
    return endSection();
  }

  public DxfText section(String name) {
    return put(0, "SECTION").put(2, name);
  }

  public DxfText endSection() {
    return put(0, "ENDSEC");
  }

  /** Begins a block, within the section BLOCKS. */
  public DxfText block(String name) {
    return put(0, "BLOCK")
        .put(8, "0")
        .put(2, name)
        .put(70, 0)
        .put(10, new Point(0, 0))
        .put(3, name);
  }

  public DxfText endBlock() {
    return put(0, "ENDBLK").put(8, "0");
  }

  /** A block put in its place as it is. */
  public DxfText insert(String block) {
    return put(0, "INSERT").put(8, "0").put(2, block).put(10, new Point(0, 0));
  }

  /** A line of straight stretches. */
  public DxfText polyline(String layer, List<Point> points, boolean closed) {
    put(0, "POLYLINE").put(8, layer).put(66, 1).put(10, new Point(0, 0)).put(70, closed ? 1 : 0);
    points.forEach(p -> put(0, "VERTEX").put(8, layer).put(10, p));
    return put(0, "SEQEND").put(8, layer);
  }

  public DxfText line(String layer, Point from, Point to) {
    return put(0, "LINE").put(8, layer).put(10, from).put(11, to);
  }

  public DxfText point(String layer, Point at) {
    return put(0, "POINT").put(8, layer).put(10, at);
  }

  /**
   * One line of words.
   *
   * @param at on the base line: its start, middle or end
   * @param height of capitals
   * @param turnDegrees counter-clockwise
   */
  public DxfText text(
      String layer,
      String words,
      Point at,
      double height,
      double turnDegrees,
      Justified justified) {
    put(0, "TEXT").put(8, layer).put(10, at).put(40, height).put(1, words).put(50, turnDegrees);
    return justified == Justified.LEFT ? this : put(72, justified.ordinal()).put(11, at);
  }

  /** The file, ended. */
  public byte[] bytes() {
    return (text + "  0\r\nEOF\r\n").getBytes(StandardCharsets.US_ASCII);
  }
}
