package ellwand.order;

import java.util.ArrayList;
import java.util.List;

/**
 * The cheapest plan of a very small order by trying lays one after another, every mix with every
 * number of plies; plain and slow, to judge the planner by. Lengths add up; faces lie up. Paid is
 * what is bought, which is never less than what is cut.
 */
final class EveryPlan {

  private final Order order;
  private final MarkerLengths lengths;
  private final List<String> sizes;
  private final List<String> colours;
  private final List<int[]> mixes = new ArrayList<>();
  private final int[][] cut;
  private final double[] clothMm;
  private double cheapest = Double.POSITIVE_INFINITY;

  private EveryPlan(Order order, MarkerLengths lengths) {
    this.order = order;
    this.lengths = lengths;
    this.sizes = order.sizes();
    this.colours = order.colours();
    this.cut = new int[colours.size()][sizes.size()];
    this.clothMm = new double[colours.size()];
  }

  /** The cost of the cheapest plan. */
  static double cheapest(Order order, MarkerLengths lengths) {
    EveryPlan every = new EveryPlan(order, lengths);
    every.collectMixes(new int[every.sizes.size()], 0, 0);
    every.addLays(0, 0);
    return every.cheapest;
  }

  private void collectMixes(int[] mix, int size, int garments) {
    if (size == mix.length) {
      if (garments > 0 && lengthMm(mix) <= order.limits().tableMm()) {
        mixes.add(mix.clone());
      }
      return;
    }
    for (int n = 0; garments + n <= order.limits().maxGarments(); n++) {
      mix[size] = n;
      collectMixes(mix, size + 1, garments + n);
    }
    mix[size] = 0;
  }

  /** With end loss. */
  private double lengthMm(int[] mix) {
    double length = order.limits().endLossMm();
    for (int s = 0; s < mix.length; s++) {
      length += mix[s] * lengths.lengthMm(SizeMix.one(sizes.get(s)));
    }
    return length;
  }

  private void addLays(int from, double cost) {
    double atLeast = cost + restOfCloth();
    if (atLeast >= cheapest) {
      return;
    }
    if (allCut()) {
      cheapest = atLeast;
    }
    // Lays are tried in the sequence of their mixes, since which comes first makes no difference.
    for (int m = from; m < mixes.size(); m++) {
      addPlies(m, 0, 0, cost + order.cost().lay());
    }
  }

  private void addPlies(int m, int colour, int plies, double cost) {
    if (cost >= cheapest) {
      return;
    }
    if (colour == colours.size()) {
      if (plies > 0) {
        addLays(m, cost);
      }
      return;
    }
    double ply = lengthMm(mixes.get(m)) / 1000 * order.cost().clothPerMetre();
    int n = 0;
    while (plies + n <= order.limits().maxPlies() && nothingTooOften(colour)) {
      addPlies(m, colour + 1, plies + n, cost + n * ply);
      n++;
      change(m, colour, 1);
    }
    change(m, colour, -n);
  }

  private void change(int m, int colour, int plies) {
    clothMm[colour] += plies * lengthMm(mixes.get(m));
    for (int s = 0; s < sizes.size(); s++) {
      cut[colour][s] += plies * mixes.get(m)[s];
    }
  }

  private boolean nothingTooOften(int colour) {
    for (int s = 0; s < sizes.size(); s++) {
      int wanted = order.wanted(colours.get(colour), sizes.get(s));
      if (cut[colour][s] > (wanted == 0 ? 0 : wanted + order.tolerance().over())) {
        return false;
      }
    }
    return true;
  }

  /**
   * What the cloth that is bought, and not in the cost yet, costs at least: for what is missing.
   */
  private double restOfCloth() {
    double mm = 0;
    for (int c = 0; c < colours.size(); c++) {
      double colourMm = clothMm[c];
      for (int s = 0; s < sizes.size(); s++) {
        int least = order.wanted(colours.get(c), sizes.get(s)) - order.tolerance().under();
        colourMm += Math.max(0, least - cut[c][s]) * lengths.lengthMm(SizeMix.one(sizes.get(s)));
      }
      mm += order.cost().boughtMm(colourMm) - clothMm[c];
    }
    return mm / 1000 * order.cost().clothPerMetre();
  }

  private boolean allCut() {
    for (int c = 0; c < colours.size(); c++) {
      for (int s = 0; s < sizes.size(); s++) {
        if (cut[c][s] < order.wanted(colours.get(c), sizes.get(s)) - order.tolerance().under()) {
          return false;
        }
      }
    }
    return true;
  }
}
