package ellwand.trace;

import ellwand.geometry.Point;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.List;

/** A table of our own from straight above, where every pixel lies is known. */
final class FromAbove {

  private static final double DISTANCE_MM = 750;

  private FromAbove() {}

  /** 1.5 megapixels, 1.4 pixels to the mm, with all that is usually wrong with a photo. */
  static Straightened seen(
      Scene.Ground ground, Point middle, double shadow, Scene.PaperPiece... pieces) {
    Scene.Flaws flaws = new Scene.Flaws(0.8, 0.01, shadow, 85, 1);
    Scene scene = new Scene(ground, List.of(), List.of(pieces), flaws);
    SimulatedCamera camera = SimulatedCamera.phone(middle, DISTANCE_MM).scaled(0.35);
    BufferedImage picture = scene.picture(camera);
    BufferedImage argb =
        new BufferedImage(picture.getWidth(), picture.getHeight(), BufferedImage.TYPE_INT_ARGB);
    Graphics2D graphics = argb.createGraphics();
    graphics.drawImage(picture, 0, 0, null);
    graphics.dispose();
    double perMm = camera.focalPx() / DISTANCE_MM;
    Point corner =
        middle.plus(
            new Point(
                -(camera.widthPx() - 1) / 2.0 / perMm, (camera.heightPx() - 1) / 2.0 / perMm));
    View view = new View("table", argb, new FlatMapping(corner, perMm, 0.2));
    return new Straightened(view, List.of(view), List.of(), List.of(), List.of());
  }
}
