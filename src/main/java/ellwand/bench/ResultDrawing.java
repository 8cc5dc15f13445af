package ellwand.bench;

import ellwand.geometry.Point;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/** Draws a result as SVG, the strip lying along the page. */
final class ResultDrawing {

  private static final double PAGE = 1000;

  private ResultDrawing() {}

  static void write(Path directory, Result result) throws IOException {
    double width = result.instance().width();
    double length = result.usedLength();
    double scale = PAGE / length;
    StringBuilder svg = new StringBuilder();
    add(
        svg,
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"-5 -25 %.1f %.1f\">%n",
        PAGE + 10,
        width * scale + 30);
    add(
        svg,
        "<text y=\"-8\" font-size=\"14\">%s, length %.3f, density %.2f %%</text>%n",
        result.instance().name().replaceAll("[<>&]", " "),
        length,
        100 * result.density());
    add(svg, "<rect width=\"%.1f\" height=\"%.1f\" fill=\"#eee\"/>%n", PAGE, width * scale);
    for (PlacedItem placed : result.placed()) {
      svg.append("<polygon stroke=\"#222\" stroke-width=\"0.6\" points=\"");
      for (Point p : placed.polygon().points()) {
        add(svg, "%.3f,%.3f ", p.x() * scale, (width - p.y()) * scale);
      }
      int hue = placed.item() * 137 % 360;
      add(svg, "\" fill=\"hsl(%d,45%%,%d%%)\"/>%n", hue, placed.rotation() == 0 ? 70 : 60);
    }
    svg.append("</svg>\n");
    String name = result.instance().name().replaceAll("[^A-Za-z0-9._-]", "_");
    Files.createDirectories(directory);
    Files.writeString(
        directory.resolve(name + "-" + result.seed().value() + ".svg"), svg.toString());
  }

  private static void add(StringBuilder svg, String format, Object... values) {
    svg.append(String.format(Locale.ROOT, format, values));
  }
}
