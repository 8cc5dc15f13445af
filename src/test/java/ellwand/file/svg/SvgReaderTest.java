package ellwand.file.svg;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.file.drawn.Drawing;
import ellwand.file.drawn.DrawnLine;
import ellwand.geometry.Path;
import ellwand.geometry.Point;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.FlatteningPathIterator;
import java.awt.geom.PathIterator;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.apache.batik.parser.AWTPathProducer;
import org.junit.jupiter.api.Test;

/** Lines come in where SVG says they are. */
class SvgReaderTest {

  private static final String PAGE =
      "<svg xmlns='http://www.w3.org/2000/svg' width='200mm' height='100mm' viewBox='0 0 200 100'>";

  private static Drawing drawing(String svg) {
    return SvgReader.read("a.svg", svg.getBytes(StandardCharsets.UTF_8), OptionalDouble.empty());
  }

  private static Path only(String inner) {
    List<DrawnLine> lines = drawing(PAGE + inner + "</svg>").lines();
    assertEquals(1, lines.size());
    return lines.get(0).path();
  }

  private static void assertPlace(double x, double y, Point at) {
    assertTrue(at.distance(new Point(x, y)) < 1e-9, at::toString);
  }

  @Test
  void everyWayToWriteALineDrawsIt() {
    for (String d :
        List.of(
            "M10 20L30 20L30 50",
            "m10,20 20,0v30",
            "M10,20 30,20 30,50",
            "M10 20H30V50",
            "m 10 20 h 2e1 V5.0e+1",
            "M+10-0.20e2m0 40h20v30")) {
      Path path = only("<path d='" + d + "'/>");
      assertPlace(10, -20, path.start());
      assertPlace(30, -20, path.segments().get(0).end());
      assertPlace(30, -50, path.end());
    }
  }

  /** The example of SVG 1.1, 8.3.6, figure quad01: both halves are mirror images. */
  @Test
  void smoothCurvesMirrorTheHandleBefore() {
    Path path = only("<path d='M200,300 Q400,50 600,300 T1000,300' transform='scale(.1)'/>");
    assertPlace(100, -30, path.end());
    Path first = new Path(path.segments().subList(0, 1));
    assertPlace(40, -17.5, first.segments().get(0).at(0.5));
    assertPlace(80, -42.5, path.segments().get(1).at(0.5));
  }

  @Test
  void anArcStaysWithinAThousandthOfItsCircle() {
    for (double r : new double[] {3, 40, 600, 9000}) {
      String svg = PAGE + "<path d='M0 0 A" + r + " " + r + " 0 0 1 " + r + " " + r + "'/></svg>";
      Path path = drawing(svg).lines().get(0).path();
      for (Point p : path.flattened(1e-5)) {
        // Its centre is (0, r) down the page, [geometry].
        assertEquals(r, p.distance(new Point(0, -r)), 1e-3, r + " " + p);
      }
    }
  }

  /** Turned back and shrunk by its radii, an elliptical arc is one of a circle of radius 1. */
  @Property(tries = 200)
  void anArcLiesOnItsEllipse(@ForAll long seed) {
    Random random = new Random(seed);
    double rx = 150 + random.nextInt(400);
    double ry = 150 + random.nextInt(400);
    double turn = random.nextInt(360);
    int large = random.nextInt(2);
    int sweep = random.nextInt(2);
    String d = "M-90 20 A%s %s %s %d %d 80 %d".formatted(rx, ry, turn, large, sweep, 7);
    Path path = only("<path d='" + d + "'/>");
    List<Point> unit = new ArrayList<>();
    double cos = Math.cos(Math.toRadians(turn));
    double sin = Math.sin(Math.toRadians(turn));
    for (Point p : path.flattened(1e-4)) {
      double x = p.x();
      double y = -p.y();
      unit.add(new Point((cos * x + sin * y) / rx, (cos * y - sin * x) / ry));
    }
    Point a = unit.get(0);
    Point b = unit.get(unit.size() / 2);
    Point c = unit.get(unit.size() - 1);
    Point centre = centre(a, b, c);
    for (Point p : unit) {
      assertEquals(1, p.distance(centre), 2e-3 / Math.min(rx, ry), d);
    }
    double walked = 0;
    for (int i = 1; i < unit.size(); i++) {
      Point before = unit.get(i - 1).minus(centre);
      Point after = unit.get(i).minus(centre);
      walked += Math.atan2(before.cross(after), before.dot(after));
    }
    assertEquals(large == 1, Math.abs(walked) > Math.PI, d);
    // With y down the page a sweep of 1 runs clockwise as seen, which is the positive direction.
    assertEquals(sweep == 1, walked > 0, d);
  }

  private static Point centre(Point a, Point b, Point c) {
    Point ab = b.minus(a);
    Point ac = c.minus(a);
    double twice = 2 * ab.cross(ac);
    return a.plus(
        new Point(
            (ac.y() * ab.dot(ab) - ab.y() * ac.dot(ac)) / twice,
            (ab.x() * ac.dot(ac) - ac.x() * ab.dot(ab)) / twice));
  }

  @Test
  void anArcThatCannotReachIsMadeLarger() {
    // SVG 2, 9.5.1: radii too small are scaled up until there is just one solution.
    Path path = only("<path d='M0 0 A1 1 0 0 1 40 0'/>");
    double highest = path.flattened(1e-4).stream().mapToDouble(Point::y).max().orElseThrow();
    assertEquals(20, highest, 1e-3);
  }

  @Test
  void physicalUnitsAreTakenAsTheyAre() {
    String line = "<line x1='0' y1='0' x2='96' y2='0'/></svg>";
    String open = "<svg xmlns='http://www.w3.org/2000/svg' ";
    // CSS Values and Units 3: an inch is 96 px, 2.54 cm, 72 pt, 6 pc.
    assertEquals(25.4, drawing(open + ">" + line).lines().get(0).path().length(), 1e-9);
    for (String inch : List.of("1in", "2.54cm", "25.4mm", "72pt", "6pc", "101.6Q", "96px", "96")) {
      String svg = open + "width='" + inch + "' height='" + inch + "' viewBox='0 0 96 96'>" + line;
      assertEquals(25.4, drawing(svg).lines().get(0).path().length(), 1e-9, inch);
    }
    Drawing dots =
        SvgReader.read(
            "a.svg",
            (open + "viewBox='0 0 72 72'>" + line).getBytes(StandardCharsets.UTF_8),
            OptionalDouble.of(72));
    assertEquals(25.4 * 96 / 72, dots.lines().get(0).path().length(), 1e-9);
  }

  @Test
  void shapesMaySayTheirUnits() {
    String svg =
        "<svg xmlns='http://www.w3.org/2000/svg' width='200mm' height='100mm'>"
            + "<line x1='10mm' y1='0' x2='3.5cm' y2='0'/></svg>";
    assertEquals(25, drawing(svg).lines().get(0).path().length(), 1e-9);
  }

  @Test
  void backgroundsAreNoLines() {
    Drawing drawing =
        drawing(
            PAGE
                + "<rect width='100%' height='100%'/><text x='1 5 9' y='3'>cut 2</text>"
                + "<path d='M0 0h9'/></svg>");
    assertEquals(1, drawing.lines().size());
    assertPlace(1, -3, drawing.texts().get(0).at());
    assertTrue(drawing.said().get(0).contains("backgrounds"), drawing.said()::toString);
  }

  /** CSS 2.1, 5 and 6.4: the more a selector says the more it counts, then the later one. */
  @Test
  void styleSheetsHideAndMove() {
    Drawing drawing =
        drawing(
            PAGE
                + "<defs><style>/* by a program */ @charset 'a'; .cls-1,.cls-2{fill:none;}"
                + " .cls-1{stroke:#000} #h path{display:none} g > .far{transform:translate(9px,0)}"
                + " path.ghost{visibility:hidden} .ghost{visibility:visible}</style></defs>"
                + "<path class='cls-1' d='M0 0h1'/><path class='cls-2' d='M0 0h2'/>"
                + "<g id='h'><path style='stroke:red' d='M0 0h3'/><g><path d='M0 0h4'/></g></g>"
                + "<g class='cls-1'><path class='far' d='M0 0h5'/></g>"
                + "<path class='ghost cls-1' d='M0 0h6'/>"
                + "<g visibility='hidden'><path visibility='visible' d='M0 0h7'/></g>"
                + "<path class='cls-2' style='stroke:blue' d='M0 0h8'/></svg>");
    assertEquals(
        List.of(1L, 2L, 5L, 7L, 8L),
        drawing.lines().stream().map(l -> Math.round(l.path().length())).toList());
    assertPlace(9, 0, drawing.lines().get(2).path().start());
    assertTrue(drawing.said().get(0).startsWith("1 rule(s)"), drawing.said()::toString);
  }

  @Test
  void whatIsNeitherFilledNorStrokedIsNotDrawnUnlessItSaysWhatItIs() {
    Drawing drawing =
        drawing(
            PAGE
                + "<style>.none{fill:none}</style><path class='none' d='M0 0h2'/>"
                + "<path class='none' id='grain' d='M0 0h3'/></svg>");
    assertEquals(1, drawing.lines().size());
    assertEquals(3, drawing.lines().get(0).path().length(), 1e-9);
    assertTrue(drawing.said().get(0).startsWith("1 hidden"), drawing.said()::toString);
  }

  @Test
  void nestedFramesAndUsesPlaceWhatTheyHold() {
    Drawing drawing =
        drawing(
            PAGE
                + "<defs><g id='s'><path d='M0 0h10' transform='translate(5)'/></g></defs>"
                + "<g transform='translate(100 50) rotate(90)'><g transform='scale(2)'>"
                + "<use href='#s' x='1' y='3'/></g></g></svg>");
    Path path = drawing.lines().get(0).path();
    // (5,0) + (1,3) = (6,3), doubled (12,6), a quarter turn (-6,12), shifted (94,62), y up.
    assertPlace(94, -62, path.start());
    assertPlace(94, -82, path.end());
  }

  /** Some drawing programs write the names of namespaces so. */
  @Test
  void entitiesThatAFileDeclaresAreKnown() {
    String svg =
        "<!DOCTYPE svg PUBLIC '-//W3C//DTD SVG 1.1//EN'"
            + " 'http://www.w3.org/Graphics/SVG/1.1/DTD/svg11.dtd' ["
            + "<!ENTITY ns_svg 'http://www.w3.org/2000/svg'>]>"
            + "<svg xmlns='&ns_svg;' width='9cm'><path d='M0 0h10'/></svg>";
    assertEquals(1, drawing(svg).lines().size());
  }

  @Test
  void otherEncodingsAreReadAsTheySay() {
    String svg = PAGE + "<path id='Ärmel' d='M0 0h10'/></svg>";
    String latin = "<?xml version='1.0' encoding='ISO-8859-1'?>" + svg;
    for (byte[] bytes :
        List.of(
            svg.getBytes(StandardCharsets.UTF_8),
            ("\uFEFF" + svg).getBytes(StandardCharsets.UTF_8),
            ("\uFEFF" + svg).getBytes(StandardCharsets.UTF_16BE),
            latin.getBytes(StandardCharsets.ISO_8859_1))) {
      Drawing drawing = SvgReader.read("a.svg", bytes, OptionalDouble.empty());
      assertEquals("Ärmel", drawing.lines().get(0).label().name().orElseThrow());
    }
  }

  @Test
  void basicShapesAreClosed() {
    for (String shape :
        List.of(
            "<rect x='1' y='1' width='20' height='10'/>",
            "<rect x='1' y='1' width='20' height='10' rx='30' ry='2'/>",
            "<circle cx='20' cy='20' r='7'/>",
            "<ellipse cx='20' cy='20' rx='7' ry='3'/>",
            "<polygon points='0,0 10,0 10,10'/>",
            "<path d='M0 0h10v10z'/>")) {
      DrawnLine line = drawing(PAGE + shape + "</svg>").lines().get(0);
      assertTrue(line.closed(), shape);
      assertEquals(0, line.path().start().distance(line.path().end()), 1e-9, shape);
    }
  }

  @Test
  void theNearestNameOfAPersonCounts() {
    String svg =
        PAGE
            + "<g id='Front_x0020_yoke'><path id='path12' d='M0 0h10'/></g><path id='x'"
            + " aria-label='sleeve' d='M0 0h10'><title>Sleeve head</title></path></svg>";
    List<DrawnLine> lines = drawing(svg).lines();
    assertTrue(lines.get(0).label().name().isEmpty());
    assertEquals("Front yoke", lines.get(0).label().inside().orElseThrow().name().orElseThrow());
    assertEquals("Sleeve head", lines.get(1).label().name().orElseThrow());
    Drawing clones =
        drawing(
            PAGE
                + "<defs><path id='flap' d='M0 0h10'/><path id='notch' d='M0 0h1'/></defs>"
                + "<use href='#flap' aria-label='Pocket'/><use href='#flap' id='use7'/>"
                + "<use href='#notch' aria-label='Pocket mark'/></svg>");
    assertEquals(
        List.of("Pocket", "flap", "notch"),
        clones.lines().stream().map(l -> l.label().name().orElseThrow()).toList());
  }

  /** Batik draws paths, too, in single precision. */
  @Property(tries = 60)
  void anyPathLiesWhereBatikDrawsIt(@ForAll long seed) throws Exception {
    String d = RandomPaths.data(new Random(seed));
    List<Point> ours = new ArrayList<>();
    for (DrawnLine line : drawing(PAGE + "<path d='" + d + "'/></svg>").lines()) {
      ours.addAll(line.path().flattened(0.01));
    }
    Shape shape = AWTPathProducer.createShape(new StringReader(d), PathIterator.WIND_NON_ZERO);
    List<Point> theirs = flattened(shape);
    for (Point p : ours) {
      double nearest = theirs.stream().mapToDouble(p::distance).min().orElseThrow();
      // Batik's own arcs stray by a mm; ours are judged by the ellipse itself, below.
      assertTrue(nearest < 2, d + "\n" + p + " is " + nearest + " off");
    }
  }

  private static List<Point> flattened(Shape shape) {
    PathIterator in =
        new FlatteningPathIterator(shape.getPathIterator(new AffineTransform()), 0.01);
    List<Point> points = new ArrayList<>();
    double[] xy = new double[6];
    Point start = new Point(0, 0);
    for (; !in.isDone(); in.next()) {
      int kind = in.currentSegment(xy);
      Point to = kind == PathIterator.SEG_CLOSE ? start : new Point(xy[0], -xy[1]);
      if (kind == PathIterator.SEG_MOVETO) {
        start = to;
      } else {
        Point from = points.get(points.size() - 1);
        for (double t = 0; t < 1; t += Math.min(1, 0.5 / Math.max(1e-6, from.distance(to)))) {
          points.add(from.towards(to, t));
        }
      }
      points.add(to);
    }
    return points;
  }
}
