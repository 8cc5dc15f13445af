package ellwand.draw.piece;

import ellwand.draw.sheet.Colour;
import ellwand.draw.sheet.Ink;
import ellwand.draw.sheet.Item;
import ellwand.draw.sheet.Lettering;
import ellwand.draw.sheet.Reading;
import ellwand.geometry.Outline;
import ellwand.geometry.Path;
import ellwand.geometry.Point;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** Words along the edges of one piece, outside its cutting line and clear of one another. */
final class EdgeNames {

  private static final double POINTS = 8;

  /** Distances from the cutting line that are tried on paper, mm. */
  private static final double NEAREST = 1;

  private static final double STEP = 1;
  private static final double FARTHEST = 40;

  /** From here on a line points to the edge, mm on paper. */
  private static final double POINTED = 3;

  private static final double[] PLACES = {0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8};

  /** Longer names are shortened, mm on paper. */
  private static final double LONGEST = 60;

  private final Reading reading;
  private final Area taken;
  private final List<Item> items = new ArrayList<>();

  EdgeNames(Reading reading, Outline cutting) {
    this.reading = reading;
    Path2D outline = new Path2D.Double();
    outline.moveTo(cutting.points().get(0).x(), cutting.points().get(0).y());
    cutting.points().forEach(p -> outline.lineTo(p.x(), p.y()));
    outline.closePath();
    this.taken = new Area(outline);
  }

  /** Keeps words off something that runs out of the piece. */
  void keepOff(Point from, Point to) {
    Point along = to.minus(from);
    double turn = Math.atan2(along.y(), along.x());
    taken.add(new Area(box(from.towards(to, 0.5), from.distance(to), reading.mm(2), turn)));
  }

  /** What has been named so far. */
  List<Item> items() {
    return List.copyOf(items);
  }

  /** Everything that is covered, the piece included. */
  Rectangle2D covered() {
    return taken.getBounds2D();
  }

  /**
   * Finds a place for the name of an edge.
   *
   * @param line the edge's sewing line in place
   * @param allowanceMm between it and the cutting line
   */
  void name(String whole, Path line, double allowanceMm) {
    String words = Lettering.shortened(whole, reading.points(POINTS), reading.mm(LONGEST));
    double length = line.length();
    for (double away = NEAREST; away <= FARTHEST; away += STEP) {
      for (double share : PLACES) {
        Path.Tangent place = line.tangent(length * share);
        Point outward = place.direction().left().times(-1);
        Point foot = place.at().plus(outward.times(allowanceMm));
        for (double turn : new double[] {alongside(place.direction()), 0}) {
          if (put(words, foot, outward, away, turn)) {
            return;
          }
        }
      }
    }
  }

  /** The angle of words along a line so that they are never upside down, -90 to 90 degrees. */
  private static double alongside(Point direction) {
    double angle = Math.toDegrees(Math.atan2(direction.y(), direction.x()));
    return angle > 90.001 ? angle - 180 : angle <= -89.999 ? angle + 180 : angle;
  }

  private boolean put(String words, Point foot, Point outward, double away, double turn) {
    double size = reading.points(POINTS);
    double width = Lettering.width(words, size);
    double height = size * Lettering.CAPITALS;
    double radians = Math.toRadians(turn);
    Point along = new Point(Math.cos(radians), Math.sin(radians));
    // How far words reach towards the piece depends on how they are turned to it.
    double reach =
        Math.abs(outward.dot(along)) * width / 2 + Math.abs(outward.dot(along.left())) * height / 2;
    Point middle = foot.plus(outward.times(reading.mm(away) + reach));
    Shape box = box(middle, width + reading.mm(1), height + reading.mm(1), radians);
    Area area = new Area(box);
    area.intersect(taken);
    if (!area.isEmpty()) {
      return false;
    }
    taken.add(new Area(box));
    Point base = middle.minus(along.left().times(height / 2));
    items.add(
        Item.Text.of("edge-name", words, base, size, Item.Anchor.MIDDLE)
            .turned(turn)
            .in(Colour.GREY));
    if (away > POINTED) {
      Point end = foot.plus(outward.times(reading.mm(away - 0.3)));
      items.add(Item.Lines.open("pointer", Ink.line(Colour.GREY, reading.mm(0.15)), foot, end));
    }
    return true;
  }

  private static Shape box(Point middle, double width, double height, double radians) {
    AffineTransform turned = AffineTransform.getTranslateInstance(middle.x(), middle.y());
    turned.rotate(radians);
    return turned.createTransformedShape(
        new Rectangle2D.Double(-width / 2, -height / 2, width, height));
  }
}
