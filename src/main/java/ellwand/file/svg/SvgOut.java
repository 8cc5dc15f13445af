package ellwand.file.svg;

import java.nio.charset.StandardCharsets;
import java.util.Map;

/** Writes SVG as a person would: an element a line, classes and titles that say what is what. */
final class SvgOut {

  /** How lines of each class are drawn, on paper that is read and with scissors in mind. */
  private static final Map<String, String> STYLES =
      Map.of(
          "cutting-line", "stroke='#777777' stroke-dasharray='6 3'",
          "sewing-line", "stroke='#000000'",
          "grain", "stroke='#000000' stroke-width='0.3'",
          "axis", "stroke='#999999' stroke-width='0.3'",
          "origin", "stroke='#999999' stroke-width='0.3'",
          "point", "stroke='#999999' stroke-width='0.3'",
          "notch", "stroke='#000000'",
          "notch double", "stroke='#000000'",
          "inner", "stroke='#0044aa' stroke-width='0.3'");

  private final StringBuilder text = new StringBuilder();
  private String indent = "  ";

  void begin(double width, double height) {
    String size = SvgPen.number(width) + "' height='" + SvgPen.number(height);
    text.append("<?xml version='1.0' encoding='UTF-8'?>\n")
        .append("<svg xmlns='http://www.w3.org/2000/svg' width='")
        .append(size.replace("' height", "mm' height"))
        .append("mm' viewBox='0 0 ")
        .append(SvgPen.number(width))
        .append(' ')
        .append(SvgPen.number(height))
        .append("' fill='none' stroke-width='0.5' font-family='sans-serif'>\n");
  }

  void words(String element, String words) {
    text.append(indent).append('<').append(element).append('>').append(escaped(words));
    text.append("</").append(element).append(">\n");
  }

  void group(String id, String kind) {
    text.append(indent).append("<g id='").append(id).append("' class='").append(kind);
    text.append("'>\n");
    indent = "    ";
  }

  void end() {
    indent = "  ";
    text.append(indent).append("</g>\n");
  }

  /**
   * @param title empty for none
   */
  void path(String kind, String data, String title) {
    text.append(indent).append("<path class='").append(kind).append("' ");
    text.append(STYLES.get(kind)).append(" d='").append(data);
    text.append(title.isEmpty() ? "'/>\n" : "'><title>" + escaped(title) + "</title></path>\n");
  }

  void text(String words, double x, double y) {
    text.append(indent).append("<text class='label' font-size='8' fill='#000000'");
    text.append(" text-anchor='middle' x='").append(SvgPen.number(x)).append("' y='");
    text.append(SvgPen.number(y)).append("'>").append(escaped(words)).append("</text>\n");
  }

  byte[] bytes() {
    return (text + "</svg>\n").getBytes(StandardCharsets.UTF_8);
  }

  private static String escaped(String words) {
    return words
        .replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replaceAll("[\\p{Cc}&&[^\\n\\t]]", "?");
  }
}
