package ellwand.draw.order;

import ellwand.draw.sheet.Block;
import ellwand.draw.sheet.Colour;
import ellwand.draw.sheet.Ink;
import ellwand.draw.sheet.Item;
import ellwand.draw.sheet.Lettering;
import ellwand.draw.sheet.Pages;
import ellwand.draw.sheet.Reading;
import ellwand.figures.LayTicket;
import ellwand.figures.OrderFigures;
import ellwand.geometry.Box;
import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Labels to cut out and tie to the bundles: one for each garment of a marker in each colour of a
 * lay, with the plies that the bundle takes.
 */
public final class BundleLabels {

  private static final int ACROSS = 3;
  private static final double HEIGHT = 30;
  private static final double PAD = 3;

  private BundleLabels() {}

  /** A4 pages, three labels across. */
  public static byte[] pdf(OrderFigures figures) {
    List<Bundle> labels = new ArrayList<>();
    for (LayTicket lay : figures.lays()) {
      int ply = 1;
      for (Map.Entry<String, Integer> colour : lay.plies().entrySet()) {
        int last = ply + colour.getValue() - 1;
        int garment = 0;
        for (Map.Entry<String, Integer> size : lay.garments().entrySet()) {
          int each = lay.cut().get(colour.getKey()).get(size.getKey()) / size.getValue();
          int together = lay.halfSets() ? 2 : 1;
          for (int n = 0; n < size.getValue(); n += together) {
            int more = Math.min(together, size.getValue() - n);
            garment += more;
            labels.add(
                new Bundle(
                    figures.title(),
                    lay.number(),
                    size.getKey(),
                    figures.several() ? lay.cloth() + ", " + colour.getKey() : colour.getKey(),
                    more == 1 ? "no. " + garment : "nos. " + (garment - 1) + " and " + garment,
                    each * more,
                    ply == last ? "ply " + ply : "plies " + ply + " to " + last));
          }
        }
        ply = last + 1;
      }
    }
    Pages pages = new Pages(figures.title());
    for (int i = 0; i < labels.size(); i += ACROSS) {
      pages.add(new Abreast(labels.subList(i, Math.min(labels.size(), i + ACROSS))));
    }
    return OrderSheet.bytes(figures.title() + ", bundle labels", pages);
  }

  /**
   * One label.
   *
   * @param colour of the cloth, with its name where there are several
   * @param numbers which of the marker's garments
   * @param garments in the bundle
   */
  private record Bundle(
      String title,
      int lay,
      String size,
      String colour,
      String numbers,
      int garments,
      String plies) {}

  private record Abreast(List<Bundle> labels) implements Block {

    @Override
    public double heightMm() {
      return HEIGHT;
    }

    @Override
    public List<Item> items(Point upperLeft) {
      List<Item> items = new ArrayList<>();
      double width = Pages.widthMm() / ACROSS;
      for (int i = 0; i < labels.size(); i++) {
        double x = upperLeft.x() + i * width;
        Box box = new Box(x, upperLeft.y() - HEIGHT, x + width, upperLeft.y());
        items.add(
            Item.Lines.closed(
                "label-edge", Ink.line(Colour.GREY, 0.15, 1.2, 1.2), Outline.of(box).points()));
        items.addAll(words(labels.get(i), box));
      }
      return items;
    }

    private static List<Item> words(Bundle label, Box box) {
      Reading reading = new Reading(1);
      List<Item> items = new ArrayList<>();
      double room = box.length() - 2 * PAD;
      double size = reading.points(Reading.TITLE);
      double text = reading.points(Reading.TEXT);
      double half = room * 0.55;
      double left = box.minX() + PAD;
      double top = box.maxY() - PAD;
      items.add(
          line(Lettering.shortened("size " + label.size(), size, half), left, top - size, size)
              .strongly());
      items.add(
          Item.Text.of(
              "label",
              "lay " + label.lay() + ", " + label.numbers(),
              new Point(box.maxX() - PAD, top - size),
              text,
              Item.Anchor.END));
      double y = top - size - text * 1.6;
      String colour = Lettering.shortened(label.colour(), text * 1.2, room);
      items.add(line(colour, left, y, text * 1.2));
      y -= text * 1.6;
      String count = label.garments() + (label.garments() == 1 ? " garment, " : " garments, ");
      items.add(line(count + label.plies(), left, y, text));
      y -= text * 1.5;
      double small = reading.points(Reading.SMALL);
      items.add(line(Lettering.shortened(label.title(), small, room), left, y, small));
      return items;
    }

    private static Item.Text line(String words, double x, double y, double size) {
      return Item.Text.of("label", words, new Point(x, y), size, Item.Anchor.START);
    }
  }
}
