package ellwand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.cutting.CutPiece;
import ellwand.cutting.Cutter;
import ellwand.file.job.StyleFile;
import ellwand.file.source.Folder;
import ellwand.geometry.Box;
import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import ellwand.pattern.Piece;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Pieces that were printed on pages to join are the same when the PDF is read back. */
class PrintedBackTest {

  /** As true as a cut edge is at best, mm. */
  private static final double SAME_MM = 0.5;

  @TempDir private Path folder;

  @ParameterizedTest
  @CsvSource({
    "shore-bag/style.yaml, shore-bag/job.yaml, A4",
    "weir-jacket/job.yaml, weir-jacket/job.yaml, A3",
  })
  void piecesComeBackFromTheirPages(String style, String job, String paper) {
    Path samples = Path.of("sample-markers");
    Path pdf = folder.resolve("pieces.pdf");
    Ran printed = Ran.of("print", samples.resolve(job), "--paper", paper, "--out", pdf);
    assertEquals(0, printed.code(), printed.err());
    String pages = printed.out().replaceFirst("(?s).*: (\\d+) pages.*", "1x$1");
    Path back = folder.resolve("back.yaml");
    Ran read = Ran.of("convert", pdf, "--pages", pages, "--out", back);
    assertEquals(0, read.code(), read.err());
    assertFalse(read.out().contains("closed line(s) in it"), read.out());
    Map<String, Piece> drawn = pieces(samples.resolve(style));
    Map<String, Piece> come = pieces(back);
    assertEquals(drawn.keySet(), come.keySet());
    drawn.forEach((name, piece) -> assertSame(piece, come.get(name)));
  }

  private static Map<String, Piece> pieces(Path style) {
    StyleFile file = StyleFile.read(style.toString(), Folder.DISK);
    Map<String, Piece> pieces = new TreeMap<>();
    file.style().pieces(file.design().sizes().base()).forEach(p -> pieces.put(p.name(), p));
    return pieces;
  }

  private static void assertSame(Piece drawn, Piece come) {
    CutPiece one = Cutter.cut(drawn, 1, 1);
    CutPiece other = Cutter.cut(come, 1, 1);
    assertNear(drawn.name(), one.sewing(), other.sewing());
    assertEquals(
        one.cutting().area(), other.cutting().area(), one.cutting().area() / 200, drawn.name());
    assertTrue(come.edges().size() <= 8, "bends are curves again: " + drawn.name());
    assertEquals(one.fold().isPresent(), other.fold().isPresent(), drawn.name());
    assertEquals(one.notches().size(), other.notches().size(), drawn.name());
    assertEquals(one.innerLines().size(), other.innerLines().size(), drawn.name());
  }

  /** Both with their grain along x, wherever they begin. */
  private static void assertNear(String name, Outline one, Outline other) {
    List<Point> a = atOrigin(one);
    List<Point> b = atOrigin(other);
    for (List<List<Point>> both : List.of(List.of(a, b), List.of(b, a))) {
      for (Point p : both.get(0)) {
        assertTrue(distance(p, both.get(1)) <= SAME_MM, name + " at " + p);
      }
    }
  }

  private static List<Point> atOrigin(Outline outline) {
    Box box = outline.box();
    return outline.points().stream().map(p -> p.minus(new Point(box.minX(), box.minY()))).toList();
  }

  private static double distance(Point p, List<Point> ring) {
    double least = Double.MAX_VALUE;
    for (int i = 0; i < ring.size(); i++) {
      Point a = ring.get(i);
      Point along = ring.get((i + 1) % ring.size()).minus(a);
      double share = Math.max(0, Math.min(1, p.minus(a).dot(along) / along.dot(along)));
      least = Math.min(least, p.distance(a.plus(along.times(share))));
    }
    return least;
  }
}
