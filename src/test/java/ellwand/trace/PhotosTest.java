package ellwand.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.geometry.Motion;
import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import ellwand.problem.InputException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

/** Photos of a simulated table, straightened: what is said of places against where they are. */
class PhotosTest {

  private static final Outline PIECE =
      Outline.of(
          List.of(
              new Point(230, 20),
              new Point(390, 0),
              new Point(400, 280),
              new Point(330, 300),
              new Point(225, 250)));

  private static final List<Scene.LaidSheet> TWO =
      List.of(Scene.LaidSheet.a4(1, 0, 0, 0), Scene.LaidSheet.a4(2, 430, 40, -8));

  /** 2 megapixels, 80 cm over the table, with a lens that bends. */
  private static final SimulatedCamera CAMERA =
      SimulatedCamera.phone(new Point(310, 150), 800).lens(-0.06, 0.02, 0.005).scaled(0.4);

  private static Scene scene(List<Scene.LaidSheet> sheets) {
    return new Scene(
        Scene.Ground.WOOD,
        sheets,
        List.of(new Scene.PaperPiece(PIECE, Scene.Paper.WHITE, true)),
        Scene.Flaws.USUAL);
  }

  private static Straightened straight(Scene scene, SimulatedCamera... cameras) {
    List<byte[]> files = new ArrayList<>();
    for (SimulatedCamera camera : cameras) {
      files.add(scene.photo(camera));
    }
    List<String> names =
        IntStream.range(0, cameras.length).mapToObj(i -> "photo-" + i + ".jpg").toList();
    return Photos.straighten(names, files);
  }

  /** By how much places of the piece's border are off in a view, when laid on their true places. */
  private static double worst(View view, SimulatedCamera camera) {
    List<Point> truth = new ArrayList<>();
    List<Point> found = new ArrayList<>();
    List<Point> corners = PIECE.points();
    for (int i = 0; i < corners.size(); i++) {
      for (double share = 0; share < 1; share += 0.25) {
        Point place = corners.get(i).towards(corners.get((i + 1) % corners.size()), share);
        truth.add(place);
        found.add(view.mapping().mmAt(camera.pixelOf(place, 0)));
      }
    }
    return Fitted.worst(truth, found);
  }

  @Test
  void placesAreTrueToHalfAMillimetreAndNoFartherOffThanExpected() {
    SimulatedCamera camera = CAMERA.tilted(25, 60);
    Straightened straight = straight(scene(TWO), camera);
    View view = straight.views().get(0);
    double worst = worst(view, camera);
    double expected =
        PIECE.points().stream()
            .map(p -> view.mapping().mmAt(camera.pixelOf(p, 0)))
            .mapToDouble(straight::errorMm)
            .max()
            .orElseThrow();
    assertTrue(worst < 0.5, "off by " + worst);
    assertTrue(worst <= expected && expected < 2, worst + " of " + expected);
  }

  @Test
  void whatLiesFarFromTheOnlySheetIsInDoubt() {
    Straightened straight = straight(scene(TWO.subList(0, 1)), CAMERA.tilted(15, 60));
    assertTrue(straight.errorMm(new Point(100, 150)) < 1);
    assertTrue(straight.errorMm(new Point(760, 150)) > 2);
    String reason = straight.reason(new Point(760, 150));
    assertEquals("it lies 55 cm from the nearest reference sheet", reason);
  }

  @Test
  void severalPhotosShareOneFrame() {
    Scene scene =
        scene(
            List.of(
                Scene.LaidSheet.a4(1, -5, 0, 0),
                Scene.LaidSheet.a4(2, 430, 40, -8),
                Scene.LaidSheet.a4(3, 450, 330, 90)));
    SimulatedCamera left = CAMERA.tilted(8, 60);
    SimulatedCamera right = CAMERA.tilted(20, -40);
    Straightened straight = straight(scene, left, right);
    assertEquals(3, straight.sheets().size());
    for (Point place : PIECE.points()) {
      Point a = straight.views().get(0).mapping().mmAt(left.pixelOf(place, 0));
      Point b = straight.views().get(1).mapping().mmAt(right.pixelOf(place, 0));
      assertEquals(0, a.distance(b), 0.4);
    }
    assertTrue(worst(straight.views().get(0), left) < 0.5);
    View picture = straight.picture();
    Point paper = straight.views().get(0).mapping().mmAt(left.pixelOf(new Point(350, 170), 0));
    assertTrue(lightness(picture, paper) > 150, "white paper");
    Point ground = straight.views().get(0).mapping().mmAt(left.pixelOf(new Point(100, 340), 0));
    assertTrue(lightness(picture, ground) < 130, "wood");
  }

  private static int lightness(View view, Point mm) {
    Point pixel = view.mapping().pixelAt(mm);
    return view.picture().getRGB((int) pixel.x(), (int) pixel.y()) >> 8 & 255;
  }

  @Test
  void sheetsPrintedSmallerAreRefused() {
    Scene.LaidSheet small =
        new Scene.LaidSheet(new ReferenceSheet(ReferenceSheet.Paper.A4, 1), Motion.NONE, 0, 0.97);
    assertRefused("printed at about 97 %", () -> straight(scene(List.of(small)), CAMERA));
  }

  @Test
  void sheetsThatCurlAreReckonedWithOrRefused() {
    SimulatedCamera camera = CAMERA.tilted(30, 40);
    Scene.LaidSheet curled =
        new Scene.LaidSheet(new ReferenceSheet(ReferenceSheet.Paper.A4, 1), Motion.NONE, 5, 1);
    Straightened straight = straight(scene(List.of(curled, TWO.get(1))), camera);
    View view = straight.views().get(0);
    double expected = PIECE.points().stream().mapToDouble(straight::errorMm).max().orElseThrow();
    assertTrue(worst(view, camera) <= expected, "off by " + worst(view, camera) + " " + expected);
    assertTrue(straight.notes().get(0).contains("lift"), straight.notes().toString());
  }

  @Test
  void aSheetThatIsRolledIsRefused() {
    Scene.LaidSheet rolled =
        new Scene.LaidSheet(new ReferenceSheet(ReferenceSheet.Paper.A4, 1), Motion.NONE, 30, 1);
    assertRefused(
        "A4 sheet 1 does not lie flat",
        () -> straight(scene(List.of(rolled, TWO.get(1))), CAMERA.tilted(30, 40)));
  }

  @Test
  void photosWithoutASheetInCommonAreRefused() {
    Scene one = scene(TWO.subList(0, 1));
    Scene other = scene(TWO.subList(1, 2));
    List<byte[]> files = List.of(one.photo(CAMERA), other.photo(CAMERA));
    assertRefused(
        "b.jpg: the photo shows no reference sheet that another photo",
        () -> Photos.straighten(List.of("a.jpg", "b.jpg"), files));
  }

  @Test
  void aSheetThatIsMovedBetweenPhotosIsRefused() {
    Scene after = scene(List.of(TWO.get(0), Scene.LaidSheet.a4(2, 436, 45, -8)));
    List<byte[]> files = List.of(scene(TWO).photo(CAMERA), after.photo(CAMERA.tilted(20, 60)));
    assertRefused(
        "was moved between photos", () -> Photos.straighten(List.of("a.jpg", "b.jpg"), files));
  }

  /** From far off, and not sharp: its corners are off this way and that, the sheet is flat. */
  @Test
  void squaresThatCannotBeMeasuredAreNotTakenForASheetThatIsNotFlat() {
    RandomPhotos leg = RandomPhotos.of(7);
    assertRefused(
        "too small or too blurred to be measured, with 1.4 pixels to the mm",
        () -> straight(leg.scene(), leg.cameras().get(0)));
  }

  @Test
  void oneSheetTwiceOrNoneIsRefused() {
    Scene twice = scene(List.of(TWO.get(0), Scene.LaidSheet.a4(1, 430, 40, -8)));
    assertRefused("A4 sheet 1 lies in the photo twice", () -> straight(twice, CAMERA));
    assertRefused("no reference sheet can be measured", () -> straight(scene(List.of()), CAMERA));
    SimulatedCamera far = SimulatedCamera.phone(new Point(310, 150), 6000).scaled(0.4);
    assertRefused("no reference sheet can be measured", () -> straight(scene(TWO), far));
  }

  private static void assertRefused(String words, Executable refused) {
    String message = assertThrows(InputException.class, refused).getMessage();
    assertTrue(message.contains(words), message);
  }
}
