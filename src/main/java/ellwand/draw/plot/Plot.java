package ellwand.draw.plot;

import ellwand.draw.sheet.Colour;
import ellwand.draw.sheet.Drawing;
import ellwand.draw.sheet.Ink;
import ellwand.draw.sheet.Item;
import ellwand.geometry.Box;
import ellwand.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * What a plotter or cutting machine draws and cuts, full size: what is drawn first, then what is
 * cut, since a piece that is cut out may move. Within each the strokes are in an order of little
 * travel.
 *
 * @param frame all of it lies within, mm
 * @param words drawn by the first pen
 * @param drawn by the first pen
 * @param notches cut, before the outlines
 * @param cut outlines
 */
public record Plot(
    String title,
    Box frame,
    List<Item.Text> words,
    List<Stroke> drawn,
    List<Stroke> notches,
    List<Stroke> cut) {

  /** What is drawn by one pen, or lies on one layer. */
  enum Layer {
    DRAW(1, 0.35),
    NOTCH(2, 0.35),
    CUT(2, 0.5);

    private final int pen;
    private final double widthMm;

    Layer(int pen, double widthMm) {
      this.pen = pen;
      this.widthMm = widthMm;
    }

    int pen() {
      return pen;
    }

    String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  public Plot {
    words = List.copyOf(words);
    drawn = List.copyOf(drawn);
    notches = List.copyOf(notches);
    cut = List.copyOf(cut);
  }

  /** The same strokes in an order of less travel, from the lower left corner. */
  public Plot shortened() {
    List<Stroke> first = PenTour.shortened(drawn, corner());
    List<Stroke> second = PenTour.shortened(notches, end(first, corner()));
    List<Stroke> third = PenTour.shortened(cut, end(second, end(first, corner())));
    return new Plot(title, frame, words, first, second, third);
  }

  private Point corner() {
    return new Point(frame.minX(), frame.minY());
  }

  private static Point end(List<Stroke> strokes, Point before) {
    return strokes.isEmpty() ? before : strokes.get(strokes.size() - 1).end();
  }

  /** How far the pen goes lifted, words not counted, mm. */
  public double travelMm() {
    List<Stroke> all = new ArrayList<>(drawn);
    all.addAll(notches);
    all.addAll(cut);
    return PenTour.travelMm(all, corner());
  }

  /** How far the blade cuts, mm. */
  public double cutMm() {
    return cut.stream().mapToDouble(Stroke::lengthMm).sum()
        + notches.stream().mapToDouble(Stroke::lengthMm).sum();
  }

  List<Stroke> strokes(Layer layer) {
    return switch (layer) {
      case DRAW -> drawn;
      case NOTCH -> notches;
      case CUT -> cut;
    };
  }

  /** For SVG and PDF: a layer for each of what is drawn, notched and cut. */
  public Drawing drawing() {
    List<Item> layers = new ArrayList<>();
    for (Layer layer : Layer.values()) {
      List<Item> items = new ArrayList<>();
      for (Stroke stroke : strokes(layer)) {
        items.add(
            new Item.Lines(
                layer.word() + "-line",
                List.of(stroke.points()),
                stroke.closed(),
                Ink.line(layer == Layer.DRAW ? Colour.GREY : Colour.INK, layer.widthMm)));
      }
      if (layer == Layer.DRAW) {
        items.addAll(words);
      }
      layers.add(Item.Group.layer(layer.word(), layer.word(), items));
    }
    return new Drawing(title, frame, layers);
  }
}
