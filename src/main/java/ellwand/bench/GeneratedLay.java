package ellwand.bench;

import ellwand.cloth.Cloth;
import ellwand.cloth.Direction;
import ellwand.cloth.Fold;
import ellwand.cloth.Goods;
import ellwand.cloth.Laying;
import ellwand.cloth.Selling;
import ellwand.cutting.CutPiece;
import ellwand.cutting.Cutter;
import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.geometry.Segment;
import ellwand.lay.Lay;
import ellwand.lay.Wanted;
import ellwand.pattern.Cut;
import ellwand.pattern.Cut.How;
import ellwand.pattern.Edge;
import ellwand.pattern.Grain;
import ellwand.pattern.Piece;
import ellwand.work.Seed;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

/**
 * Lays of styles made at random: bodices, sleeves, skirts, bands and pockets of many proportions.
 */
final class GeneratedLay {

  private final SplittableRandom dice;
  private final String cloth = "main";

  private GeneratedLay(long number) {
    dice = new Seed(number).generator();
  }

  static Lay of(long number) {
    return new GeneratedLay(number).lay("style " + number);
  }

  private Lay lay(String name) {
    double chest = between(260, 420);
    List<Piece> pieces = new ArrayList<>();
    pieces.add(bodice("back", chest, How.FOLD));
    pieces.add(bodice("front", chest, dice.nextBoolean() ? How.FOLD : How.PAIR));
    pieces.add(sleeve(chest));
    if (dice.nextBoolean()) {
      pieces.add(
          rectangle("skirt", between(180, 400), chest * between(1, 1.6), 1 + dice.nextInt(2)));
    }
    pieces.add(rectangle("band", between(40, 90), between(200, 500), 1 + dice.nextInt(2)));
    pieces.add(rectangle("pocket", between(90, 140), between(80, 130), 2));
    Fold fold = dice.nextBoolean() ? Fold.OPEN : Fold.LENGTHWISE;
    Direction direction = Direction.values()[dice.nextInt(Direction.values().length)];
    Cloth main =
        new Cloth(
            cloth,
            Goods.wide(between(1100, 1500)).selvedge(10),
            Laying.in(fold).heading(direction).gap(2).ends(40),
            Selling.USUAL);
    List<CutPiece> cut = pieces.stream().map(p -> Cutter.cut(p, 1, 1)).toList();
    List<Wanted> wanted = new ArrayList<>();
    int garments = 1 + dice.nextInt(3);
    for (int garment = 1; garment <= garments; garment++) {
      for (CutPiece piece : cut) {
        Cut how = piece.piece().cuts().get(0);
        for (int n = 0; n < how.count(); n++) {
          wanted.add(new Wanted(piece, "one", garment, how.how()));
        }
      }
    }
    return new Lay(name, main, wanted);
  }

  private double between(double low, double high) {
    return low + (high - low) * dice.nextDouble();
  }

  /** Half a bodice: its straight side at y = 0, an armhole and a neckline as curves. */
  private Piece bodice(String name, double chest, How how) {
    double length = chest * between(0.7, 1.1);
    double wide = chest / 2 * between(0.95, 1.2);
    double armhole = length - chest * between(0.38, 0.45);
    Point hem = new Point(0, 0);
    Point side = new Point(0, wide);
    Point under = new Point(armhole, wide);
    Point tip = new Point(length - chest * 0.08, wide * between(0.7, 0.8));
    Point neck = new Point(length, chest * between(0.14, 0.18));
    Point centre = new Point(length - chest * between(0.04, 0.2), 0);
    return piece(
        name,
        how,
        1,
        List.of(
            Path.line(hem, centre),
            curve(centre, new Point(centre.x(), neck.y() * 0.6), neck),
            Path.line(neck, tip),
            curve(tip, new Point(tip.x() * 0.7 + under.x() * 0.3, tip.y() * 0.95), under),
            Path.line(under, side),
            Path.line(side, hem)));
  }

  private Piece sleeve(double chest) {
    double half = chest * between(0.28, 0.36);
    double wrist = half * between(0.6, 0.95);
    double under = chest * between(0.3, 1.1);
    double cap = under + chest * between(0.2, 0.3);
    Point top = new Point(cap, 0);
    Point left = new Point(under, half);
    Point right = new Point(under, -half);
    return piece(
        "sleeve",
        How.PAIR,
        1,
        List.of(
            Path.line(new Point(0, wrist), new Point(0, -wrist)),
            Path.line(new Point(0, -wrist), right),
            curve(right, new Point(cap, -half * 0.8), top),
            curve(top, new Point(cap, half * 0.8), left),
            Path.line(left, new Point(0, wrist))));
  }

  private Piece rectangle(String name, double length, double width, int count) {
    Point a = new Point(0, 0);
    Point b = new Point(length, 0);
    Point c = new Point(length, width);
    Point d = new Point(0, width);
    return piece(
        name,
        How.WHOLE,
        count,
        List.of(Path.line(a, b), Path.line(b, c), Path.line(c, d), Path.line(d, a)));
  }

  private static Path curve(Point from, Point towards, Point to) {
    return new Path(
        List.of(
            new Segment.Cubic(
                from, from.towards(towards, 2.0 / 3), to.towards(towards, 2.0 / 3), to)));
  }

  /**
   * Edges in either direction round the piece; the first is the fold edge of one cut on the fold.
   */
  private Piece piece(String name, How how, int count, List<Path> around) {
    List<Edge> edges = new ArrayList<>();
    boolean clockwise = area(around) < 0;
    for (int i = 0; i < around.size(); i++) {
      Path line = clockwise ? around.get(around.size() - 1 - i).reversed() : around.get(i);
      boolean fold = how == How.FOLD && line.start().y() == 0 && line.end().y() == 0;
      edges.add(new Edge(fold ? "fold" : "edge " + i, line, fold ? 0 : 10, false));
    }
    return new Piece(
        name,
        edges,
        how == How.FOLD ? Optional.of("fold") : Optional.empty(),
        Grain.ALONG,
        List.of(),
        List.of(),
        List.of(new Cut(cloth, count, how)));
  }

  private static double area(List<Path> around) {
    return around.stream().mapToDouble(p -> p.start().cross(p.end())).sum();
  }
}
