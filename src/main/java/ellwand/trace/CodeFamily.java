package ellwand.trace;

import boofcv.alg.fiducial.qrcode.PackedBits32;
import boofcv.factory.fiducial.ConfigHammingMarker;
import boofcv.factory.fiducial.HammingDictionary;
import ellwand.geometry.Box;
import java.util.ArrayList;
import java.util.List;

/**
 * The open family of coded squares on reference sheets: 250 codes of 6 x 6 cells in a border one
 * cell wide, every two of which differ in 12 cells or more however they are turned (S.
 * Garrido-Jurado and others, Generation of fiducial marker dictionaries using mixed integer linear
 * programming, Pattern Recognition 51, 2016). The vision library carries it.
 */
public final class CodeFamily {

  private CodeFamily() {}

  /** Cells that may be misread; any square would pass for some code if half of 12 might. */
  private static final int MISREAD = 4;

  static ConfigHammingMarker description() {
    ConfigHammingMarker family =
        ConfigHammingMarker.loadDictionary(HammingDictionary.ARUCO_MIP_36h12);
    family.minimumHamming = MISREAD;
    return family;
  }

  /** The cells of a coded square that stay white; the rest of it is black. */
  public static List<Box> whiteCells(ReferenceSheet.Code code) {
    ConfigHammingMarker family = description();
    PackedBits32 bits = family.encoding.get(code.id()).pattern;
    int cells = family.gridWidth;
    double size = code.box().length() / (cells + 2);
    List<Box> white = new ArrayList<>();
    for (int row = 0; row < cells; row++) {
      for (int column = 0; column < cells; column++) {
        if (bits.get(row * cells + column) == 1) {
          double x = code.box().minX() + (column + 1) * size;
          double y = code.box().maxY() - (row + 2) * size;
          white.add(new Box(x, y, x + size, y + size));
        }
      }
    }
    return white;
  }
}
