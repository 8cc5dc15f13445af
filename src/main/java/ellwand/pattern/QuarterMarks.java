package ellwand.pattern;

import java.util.ArrayList;
import java.util.List;

/** Notches that share an edge out, so that it is joined evenly. */
final class QuarterMarks {

  private QuarterMarks() {}

  /**
   * At the quarters of the whole edge, as far as all of its panels can have the same: those of one,
   * the middle of each of several. The fold of a half is a quarter by itself.
   *
   * @param lengthMm of the panel as drawn: half of it where it is cut on the fold
   */
  static List<Notch> on(
      String edge, double lengthMm, int panels, boolean onFold, Allowance allowance) {
    List<Double> places = new ArrayList<>();
    if (onFold) {
      if (panels == 1) {
        places.add(lengthMm / 2);
      }
    } else if (panels == 1) {
      places.addAll(List.of(lengthMm / 4, lengthMm / 2, lengthMm * 3 / 4));
    } else {
      places.add(lengthMm / 2);
    }
    return at(edge, places, allowance);
  }

  /** Single ones, as deep as the narrowest allowance has room for; none where that is nothing. */
  static List<Notch> at(String edge, List<Double> places, Allowance allowance) {
    double depth = Math.min(Notch.USUAL_DEPTH_MM, allowance.narrowestMm());
    return depth > 0
        ? places.stream().map(mm -> new Notch(edge, mm, 1, depth)).toList()
        : List.of();
  }
}
