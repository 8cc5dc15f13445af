package ellwand.draw.plot;

import ellwand.geometry.Point;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Draws HP-GL/2 as a plotter does, knowing no more of it than the language: units of 0.025 mm,
 * absolute places, a label until ETX.
 */
public final class HpglReader {

  /**
   * A line drawn with the pen down.
   *
   * @param points mm
   */
  public record Drawn(int pen, List<Point> points) {}

  /**
   * @param at where it is put, mm
   * @param heightMm of a capital
   */
  public record Label(int pen, String words, Point at, double heightMm, double turnDegrees) {}

  private final List<Drawn> lines = new ArrayList<>();
  private final List<Label> labels = new ArrayList<>();
  private double widthMm;
  private double heightMm;
  private double liftedMm;
  private int pen;
  private Point at = new Point(0, 0);
  private List<Point> down = new ArrayList<>();
  private double letterMm;
  private double turn;

  public HpglReader(String text) {
    int i = 0;
    while (i < text.length()) {
      if (Character.isWhitespace(text.charAt(i)) || text.charAt(i) == ';') {
        i++;
        continue;
      }
      String word = text.substring(i, i + 2);
      int end = text.indexOf(word.equals("LB") ? (char) 3 : ';', i);
      if (end < 0) {
        throw new AssertionError("an instruction without an end at " + i);
      }
      String rest = text.substring(i + 2, end);
      obey(word, rest);
      i = end + 1;
    }
    lift();
  }

  public List<Drawn> lines() {
    return lines;
  }

  public List<Label> labels() {
    return labels;
  }

  public double widthMm() {
    return widthMm;
  }

  public double heightMm() {
    return heightMm;
  }

  public double liftedMm() {
    return liftedMm;
  }

  private void obey(String word, String rest) {
    if (word.equals("LB")) {
      labels.add(new Label(pen, rest, at, letterMm, turn));
      return;
    }
    double[] n =
        rest.isEmpty()
            ? new double[0]
            : Arrays.stream(rest.split(",")).mapToDouble(Double::parseDouble).toArray();
    switch (word) {
      case "IN", "PA", "LO", "PG" -> {}
      case "PS" -> {
        widthMm = n[0] / 40;
        heightMm = n[1] / 40;
      }
      case "SP" -> {
        lift();
        pen = (int) n[0];
      }
      case "SI" -> letterMm = n[1] * 10;
      case "DI" -> turn = Math.toDegrees(Math.atan2(n[1], n[0]));
      case "PU" -> {
        lift();
        for (int i = 0; i + 1 < n.length; i += 2) {
          Point to = new Point(n[i] / 40, n[i + 1] / 40);
          liftedMm += at.distance(to);
          at = to;
        }
      }
      case "PD" -> {
        if (pen == 0) {
          throw new AssertionError("no pen is taken");
        }
        if (down.isEmpty()) {
          down.add(at);
        }
        for (int i = 0; i + 1 < n.length; i += 2) {
          at = new Point(n[i] / 40, n[i + 1] / 40);
          down.add(at);
        }
      }
      default -> throw new AssertionError("no such instruction: " + word);
    }
  }

  private void lift() {
    if (down.size() > 1) {
      lines.add(new Drawn(pen, down));
    }
    down = new ArrayList<>();
  }
}
