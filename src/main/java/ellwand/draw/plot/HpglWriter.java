package ellwand.draw.plot;

import ellwand.draw.sheet.Item;
import ellwand.draw.sheet.Lettering;
import ellwand.file.dxf.PlainAscii;
import ellwand.geometry.Point;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Writes plots in HP-GL/2: plotter units of 0.025 mm, counted from the lower left corner of the
 * frame, pen 1 for what is drawn and pen 2 for what is cut. Words are labels in the type of the
 * device. Instructions are those of the published language (IN, PS, SP, PU, PD, PA, SI, DI, LO, LB,
 * PG; from memory). Its numbers reach to 2^30 - 1, nearly 27 km, so that no marker needs frames.
 */
public final class HpglWriter {

  /** Plotter units in a mm. */
  private static final double UNITS = 40;

  /** Ends each label. */
  private static final char ETX = 3;

  /** From letter to letter, in widths of a letter, in the fixed type that all devices have. */
  private static final double SPACING = 1.5;

  /** Coordinates in one instruction, so that its line stays short. */
  private static final int MOST_POINTS = 60;

  private final Plot plot;
  private final StringBuilder text = new StringBuilder();

  private HpglWriter(Plot plot) {
    this.plot = plot;
  }

  /** As a file. Letters lose their marks, and those that ASCII has no like of become ?. */
  public static byte[] bytes(Plot plot) {
    return new HpglWriter(plot).write().getBytes(StandardCharsets.US_ASCII);
  }

  private String write() {
    say("IN;PS%d,%d;PA;", units(plot.frame().length()), units(plot.frame().width()));
    int pen = 0;
    for (Plot.Layer layer : Plot.Layer.values()) {
      if (layer.pen() != pen) {
        pen = layer.pen();
        say("SP%d;", pen);
      }
      plot.strokes(layer).forEach(this::write);
      if (layer == Plot.Layer.DRAW) {
        plot.words().forEach(this::write);
      }
    }
    say("PU;SP0;PG;");
    return text.toString();
  }

  private void write(Stroke stroke) {
    List<Point> points = new ArrayList<>(stroke.points());
    if (stroke.closed()) {
      points.add(stroke.start());
    }
    say("PU%s;", place(points.get(0)));
    for (int i = 1; i < points.size(); i += MOST_POINTS) {
      List<String> places =
          points.subList(i, Math.min(points.size(), i + MOST_POINTS)).stream()
              .map(this::place)
              .toList();
      say("PD%s;", String.join(",", places));
    }
  }

  private void write(Item.Text words) {
    String plain = PlainAscii.of(words.words());
    if (plain.isBlank()) {
      return;
    }
    double turn = Math.toRadians(words.turnDegrees());
    // As wide in all as the words were measured, and no higher.
    double letter = words.widthMm() / plain.length() / SPACING;
    double height = words.sizeMm() * Lettering.CAPITALS;
    int origin =
        words.anchor() == Item.Anchor.START ? 1 : words.anchor() == Item.Anchor.END ? 7 : 4;
    say("PU%s;SI%.4f,%.4f;", place(words.at()), letter / 10, height / 10);
    say("DI%.5f,%.5f;LO%d;", Math.cos(turn), Math.sin(turn), origin);
    text.setLength(text.length() - 1);
    text.append("LB").append(plain).append(ETX).append('\n');
  }

  private String place(Point at) {
    return units(at.x() - plot.frame().minX()) + "," + units(at.y() - plot.frame().minY());
  }

  private static long units(double mm) {
    return Math.round(mm * UNITS);
  }

  private void say(String format, Object... args) {
    text.append(String.format(Locale.ROOT, format, args)).append('\n');
  }
}
