package ellwand.cutting;

import ellwand.geometry.*;
import ellwand.pattern.Piece;
import java.util.List;
import org.junit.jupiter.api.Test;

class ScratchTest {
  static void worst(String what, Outline from, List<Outline> to) {
    double most = 0;
    Point at = null;
    List<Point> points = from.points();
    for (int i = 0; i < points.size(); i++) {
      Point a = points.get(i), b = points.get((i + 1) % points.size());
      int steps = (int) Math.ceil(a.distance(b) / 0.5);
      for (int k = 0; k <= steps; k++) {
        Point p = a.towards(b, steps == 0 ? 0 : (double) k / steps);
        double d = to.stream().mapToDouble(o -> o.distance(p)).min().orElseThrow();
        if (d > most) {
          most = d;
          at = p;
        }
      }
    }
    System.out.println(what + " " + most + " at " + at);
  }

  static void show(Piece p, List<Outline> ref) {
    Outline c = Drawn.cutting(p);
    System.out.println(
        "ours "
            + c.points().size()
            + " ref "
            + ref.size()
            + " "
            + ref.stream().map(o -> o.points().size() + "/" + o.area()).toList());
    worst("ours->ref", c, ref);
    for (Outline o : ref) worst("ref->ours", o, List.of(c));
    p.edges().forEach(e -> System.out.println(e.allowanceMm() + " " + e.line().segments()));
  }

  @Test
  void jts() {
    Piece p = Blobs.even(406);
    show(p, Reference.jts(p, p.edges().get(0).allowanceMm()));
  }

  @Test
  void awt() {
    Piece p = Blobs.even(0);
    show(p, Reference.awt(p, p.edges().get(0).allowanceMm()));
  }

  @Test
  void bowl() {
    Piece piece =
        Drawn.from(0, 0)
            .line(300, 0, 15)
            .line(300, 200, 15)
            .line(200, 200, 15)
            .curve(190, 70, 110, 70, 100, 200, 15)
            .line(0, 200, 15)
            .line(0, 0, 15)
            .piece();
    show(piece, Reference.jts(piece, 15));
    Piece tight =
        Drawn.from(0, 0)
            .line(300, 0, 15)
            .line(300, 200, 15)
            .line(180, 200, 15)
            .curve(160, 60, 140, 60, 120, 200, 15)
            .line(0, 200, 15)
            .line(0, 0, 15)
            .piece();
    show(tight, Reference.jts(tight, 15));
  }

  @Test
  void bodice() {
    Piece p =
        Drawn.from(0, 0)
            .fold(250, 0)
            .curve(250, 25, 270, 55, 310, 60, 6)
            .line(300, 130, 15)
            .curve(250, 115, 205, 125, 190, 160, 10)
            .line(0, 150, 15)
            .hem(0, 0, 30)
            .piece();
    CutPiece c = Cutter.cut(p, 1, 1);
    System.out.println(
        "bodice half "
            + c.cutting().points().size()
            + " sewing "
            + c.sewing().points().size()
            + " opened "
            + c.opened().cutting().points().size());
    Piece sleeve =
        Drawn.from(0, 0)
            .hem(0, 200, 30)
            .line(200, 260, 15)
            .curve(240, 220, 340, 200, 340, 100, 10)
            .curve(340, 20, 230, -20, 200, -60, 10)
            .line(0, 0, 15)
            .piece();
    System.out.println("sleeve " + Cutter.cut(sleeve, 1, 1).cutting().points().size());
  }

  @Test
  void odd() {
    Piece p = Blobs.mild(-25099);
    p.edges().forEach(e -> System.out.println(e.allowanceMm() + " " + e.line().segments()));
    CutPiece c = Cutter.cut(p, 1, 1);
    System.out.println(c.cutting() + " " + c.cutting().area() + " vs " + c.sewing().area());
  }
}
