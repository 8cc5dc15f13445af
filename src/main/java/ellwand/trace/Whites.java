package ellwand.trace;

import ellwand.geometry.Box;
import ellwand.geometry.Point;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** How bright the sheets' white is in each photo, so that photos can be put side by side. */
record Whites(Survey survey, List<PhotoFile> photos, List<List<SeenSheet>> seen) {

  /** From a white square's corner to where nothing is printed, mm. */
  private static final double WHITE_MM = 2;

  /** For each photo, by what red, green and blue are multiplied to be as in the first. */
  List<double[]> gains() {
    List<double[]> gains = new ArrayList<>();
    double[] first = white(0);
    for (int i = 0; i < photos.size(); i++) {
      double[] white = white(i);
      double[] gain = new double[3];
      Arrays.setAll(gain, c -> white[c] > 0 ? first[c] / white[c] : 1);
      gains.add(gain);
    }
    return gains;
  }

  private double[] white(int photo) {
    Camera camera = survey.camera(photo);
    var picture = photos.get(photo).picture();
    double[] sum = new double[3];
    for (SeenSheet sheet : seen.get(photo)) {
      LaidSheet laid = survey.laid(sheet.sheet());
      for (ReferenceSheet.Code code : sheet.sheet().codes()) {
        Box box = code.box();
        Point mm = laid.onPlane(new Point(box.centre().x(), box.maxY() + WHITE_MM));
        Point pixel = camera.pixelAt(mm.x(), mm.y(), 0);
        int x = (int) Math.round(pixel.x());
        int y = (int) Math.round(pixel.y());
        if (x >= 0 && y >= 0 && x < picture.getWidth() && y < picture.getHeight()) {
          for (int c = 0; c < 3; c++) {
            sum[c] += picture.getRGB(x, y) >> (16 - 8 * c) & 255;
          }
        }
      }
    }
    return sum;
  }
}
