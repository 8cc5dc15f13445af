package ellwand.nest.kernel;

import java.util.List;

/** The forms of copies that may be exchanged, in flat arrays. */
final class Kind {
  final int forms;
  final int[] shape;
  final double[] lowX;
  final double[] reach;
  final double[] lowY;
  final double[] highY;
  final Lattice[] alongX;
  final Lattice[] alongY;

  Kind(int forms) {
    this.forms = forms;
    shape = new int[forms];
    lowX = new double[forms];
    reach = new double[forms];
    lowY = new double[forms];
    highY = new double[forms];
    alongX = new Lattice[forms];
    alongY = new Lattice[forms];
  }

  /** Whether form f has a place on a strip of the given length. */
  boolean fits(int f, double length) {
    return lowX[f] + reach[f] <= length * (1 + 1e-12);
  }

  /** The nearest place that form f may have on a strip of the given length. */
  double x(int f, double wanted, double length) {
    double hi = Math.max(lowX[f], length - reach[f]);
    double x = Math.max(lowX[f], Math.min(hi, wanted));
    return alongX[f].step() == 0 ? x : nearest(alongX[f], x, lowX[f], hi);
  }

  double y(int f, double wanted) {
    double y = Math.max(lowY[f], Math.min(highY[f], wanted));
    return alongY[f].step() == 0 ? y : nearest(alongY[f], y, lowY[f], highY[f]);
  }

  private static double nearest(Lattice lattice, double wanted, double lo, double hi) {
    double near =
        lattice.offset() + lattice.step() * Math.rint((wanted - lattice.offset()) / lattice.step());
    if (near > hi + 1e-9 * lattice.step()) {
      near = lattice.atOrBelow(hi);
    }
    return near < lo - 1e-9 * lattice.step() ? lattice.atOrAbove(lo) : near;
  }

  static Kind of(List<StripForm> forms, Plan plan) {
    Kind kind = new Kind(forms.size());
    for (int f = 0; f < kind.forms; f++) {
      StripForm form = forms.get(f);
      double cx = plan.centreX[form.shape()];
      double cy = plan.centreY[form.shape()];
      kind.shape[f] = form.shape();
      kind.alongX[f] = moved(form.alongX(), cx);
      kind.alongY[f] = moved(form.alongY(), cy);
      kind.lowX[f] = kind.alongX[f].atOrAbove(form.left() + cx);
      kind.reach[f] = form.right() - cx;
      kind.lowY[f] = form.yLo() + cy;
      kind.highY[f] = form.yHi() + cy;
    }
    return kind;
  }

  private static Lattice moved(Lattice lattice, double by) {
    return lattice.step() == 0 ? lattice : new Lattice(lattice.step(), lattice.offset() + by);
  }
}
