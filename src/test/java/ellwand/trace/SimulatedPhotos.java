package ellwand.trace;

import ellwand.geometry.Point;
import java.util.List;

/** Photos for tests of other packages, as files. */
public final class SimulatedPhotos {

  private static final SimulatedCamera CAMERA =
      SimulatedCamera.phone(new Point(250, 150), 700)
          .tilted(12, 60)
          .lens(-0.04, 0.01, 0)
          .scaled(0.4);

  private SimulatedPhotos() {}

  /** Sheets 1 and 2 side by side on wood. */
  public static byte[] twoSheets() {
    return photo(List.of(Scene.LaidSheet.a4(1, 0, 0, 0), Scene.LaidSheet.a4(2, 330, 20, -5)));
  }

  /** Sheet 1 alone. */
  public static byte[] oneSheet() {
    return photo(List.of(Scene.LaidSheet.a4(1, 0, 0, 0)));
  }

  private static byte[] photo(List<Scene.LaidSheet> sheets) {
    return new Scene(Scene.Ground.WOOD, sheets, List.of(), Scene.Flaws.USUAL).photo(CAMERA);
  }
}
