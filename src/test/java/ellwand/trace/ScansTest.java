package ellwand.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.geometry.Box;
import ellwand.geometry.Motion;
import ellwand.geometry.Outline;
import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.problem.InputException;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

/** Pieces larger than the scanner, scanned in parts and joined. */
class ScansTest {

  private static Straightened read(List<byte[]> files) {
    List<String> names = IntStream.range(0, files.size()).mapToObj(i -> "scan-" + i).toList();
    return Scans.read(names, files, ScannedTable.DPI);
  }

  private static void assertRefused(String words, List<byte[]> files) {
    String message = assertThrows(InputException.class, () -> read(files)).getMessage();
    assertTrue(message.contains(words), message);
  }

  /** How far the drawn border is from the truth at most, mm. */
  private static double worst(Outline truth, TracedPaper traced) {
    List<Point> drawn = PaperShapes.round(traced.edges().edges()).flattened(0.02);
    return new Rim(drawn)
        .even(1).points().stream().mapToDouble(truth::distance).max().orElseThrow();
  }

  /** The piece as the first scan shows it. */
  private static Outline truth(ScannedTable table, Motion first) {
    return Outline.of(
        table.outline().points().stream().map(first::apply).map(ScannedTable::inScan).toList());
  }

  private static TracedPaper only(Straightened straight) {
    List<TracedPaper> found = Tracing.of(straight);
    assertEquals(1, found.size());
    assertEquals("[]", found.get(0).doubts().toString());
    return found.get(0);
  }

  @Test
  void twoScansAreJoinedByTheirCrosses() {
    Straightened straight = read(ScannedTable.strip().halves());
    assertEquals(3, straight.crosses().size());
    assertTrue(
        straight.crosses().stream().allMatch(c -> c.offMm() < 0.2), straight.notes()::toString);
    TracedPaper traced = only(straight);
    double off = worst(truth(ScannedTable.strip(), new Motion(false, 0.8, 25, 22)), traced);
    assertTrue(off < 0.5, "off by " + off);
    assertTrue(off <= traced.errorMm(), off + " of " + traced.errorMm());
  }

  @Test
  void eitherMayBeNamedFirstAndLieUpsideDown() {
    ScannedTable strip = ScannedTable.strip();
    byte[] lower = strip.halves().get(0);
    Motion round = new Motion(false, 180.6, 190, 430);
    List<byte[]> files = List.of(strip.scan(round), lower);
    TracedPaper traced = only(read(files));
    double off = worst(truth(strip, round), traced);
    assertTrue(off < 0.5, "off by " + off);
    double length = traced.edges().edges().stream().mapToDouble(Path::length).sum();
    TracedPaper other = only(read(List.of(lower, files.get(0))));
    assertEquals(length, other.edges().edges().stream().mapToDouble(Path::length).sum(), 0.3);
    assertTrue(worst(truth(strip, new Motion(false, 0.8, 25, 22)), other) < 0.5);
  }

  @Test
  void aPieceInFourScansHangsTogether() {
    ScannedTable front =
        new ScannedTable(
            Outline.of(PaperShapes.round(PaperShapes.front()).flattened(0.01)),
            List.of(
                new Point(30, 215),
                new Point(100, 190),
                new Point(155, 175),
                new Point(215, 195),
                new Point(90, 300),
                new Point(110, 40),
                new Point(85, 120),
                new Point(120, 345)));
    // Each quarter of the piece on the glass, 297 mm high: low and high, left and right.
    Motion first = new Motion(false, 0.5, 30, 40);
    List<byte[]> files =
        List.of(
            front.scan(first),
            front.scan(new Motion(false, 0, -60, 30)),
            front.scan(new Motion(false, 1, 30, -155)),
            front.scan(new Motion(false, -1, -60, -150)));
    Straightened straight = read(files);
    assertEquals(front.crosses().size(), straight.crosses().size());
    TracedPaper traced = only(straight);
    double off = worst(truth(front, first), traced);
    assertTrue(off < 0.6, "off by " + off);
    assertTrue(off <= traced.errorMm(), off + " of " + traced.errorMm());
  }

  @Test
  void withoutTwoCrossesItIsAskedForThem() {
    ScannedTable strip = ScannedTable.strip();
    assertRefused("how the scan lies", strip.with(List.of()).halves());
    assertRefused("1 in scan-0", strip.with(strip.crosses().subList(0, 1)).halves());
    ScannedTable two = strip.with(strip.crosses().subList(0, 2));
    assertTrue(worst(truth(two, new Motion(false, 0.8, 25, 22)), only(read(two.halves()))) < 1);
  }

  /** Two crosses amid a strip whose ends are alike: it may as well be turned round. */
  @Test
  void whatMayBeJoinedInTwoWaysIsRefused() {
    ScannedTable straight =
        new ScannedTable(
            Outline.of(new Box(0, 0, 150, 400)), List.of(new Point(30, 200), new Point(120, 200)));
    Motion low = new Motion(false, 0, 25, 20);
    Motion high = new Motion(false, 0, 25, -130);
    assertRefused("more than one way", List.of(straight.scan(low), straight.scan(high)));
    ScannedTable three =
        straight.with(List.of(new Point(30, 200), new Point(120, 200), new Point(50, 225)));
    only(read(List.of(three.scan(low), three.scan(high))));
  }

  /** Four crosses drawn with a ruler: which two of them is told by what else is shown there. */
  @Test
  void crossesAreNotTakenForOthersAsFarApart() {
    ScannedTable straight =
        new ScannedTable(
            Outline.of(new Box(0, 0, 150, 420)),
            List.of(
                new Point(30, 200), new Point(120, 203), new Point(30, 390), new Point(120, 393)));
    Motion low = new Motion(false, 0, 25, 20);
    TracedPaper traced =
        only(read(List.of(straight.scan(low), straight.scan(new Motion(false, 0, 25, -130)))));
    assertTrue(worst(truth(straight, low), traced) < 0.5);
  }

  @Test
  void aScanOfAnotherPieceIsNotJoined() {
    ScannedTable strip = ScannedTable.strip();
    ScannedTable other =
        new ScannedTable(
            Outline.of(
                List.of(
                    new Point(-60, 100),
                    new Point(180, 90),
                    new Point(110, 420),
                    new Point(0, 380))),
            strip.crosses());
    assertRefused("how the scan lies", List.of(strip.halves().get(0), other.halves().get(1)));
  }

  /** Even where one of its sides runs as that of the first. */
  @Test
  void aPieceWithTheVerySameCrossesIsNotJoined() {
    RandomScans scans = RandomScans.of(85);
    assertRefused(
        "how the scan lies",
        List.of(scans.piece().scan(scans.first()), scans.other().scan(scans.second())));
  }

  @Test
  void paperThatDidNotLieFlatIsRefused() {
    ScannedTable strip = ScannedTable.strip();
    List<Point> moved = List.of(new Point(30, 190), new Point(129.3, 204.3), new Point(70, 228));
    assertRefused(
        "mm apart when the scans are joined",
        List.of(strip.halves().get(0), strip.with(moved).halves().get(1)));
  }

  /** More than 16 megapixels are kept as fewer, which are larger. */
  @Test
  void aFineScanKeepsItsScale() throws IOException {
    ByteArrayOutputStream png = new ByteArrayOutputStream();
    ImageIO.write(new BufferedImage(4200, 4000, BufferedImage.TYPE_BYTE_BINARY), "png", png);
    View view = Scans.read(List.of("fine.png"), List.of(png.toByteArray()), 600).picture();
    double mm = view.picture().getWidth() / view.pixelsPerMm(new Point(10, 10));
    assertEquals(4200 / 600.0 * 25.4, mm, 0.1);
  }
}
