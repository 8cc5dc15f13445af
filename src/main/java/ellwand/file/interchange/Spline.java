package ellwand.file.interchange;

import ellwand.geometry.Point;
import ellwand.problem.InputException;
import java.util.ArrayList;
import java.util.List;

/** A B-spline with or without weights, evaluated as de Boor has it. */
final class Spline {

  private static final int MOST_DEGREE = 10;

  private final int degree;
  private final List<Double> knots;
  private final List<Point> controls;
  private final List<Double> weights;

  private Spline(int degree, List<Double> knots, List<Point> controls, List<Double> weights) {
    this.degree = degree;
    this.knots = knots;
    this.controls = controls;
    this.weights = weights;
  }

  /**
   * That of a SPLINE entity.
   *
   * @throws InputException if its knots and points do not go together
   */
  static Spline of(DxfEntity entity) {
    int degree = entity.text(71).filter(t -> t.matches("\\d{1,3}")).map(Integer::valueOf).orElse(3);
    List<Double> xs = entity.numbers(10);
    List<Double> ys = entity.numbers(20);
    List<Double> knots = entity.numbers(40);
    List<Double> weights = entity.numbers(41);
    List<Point> controls = new ArrayList<>();
    for (int i = 0; i < Math.min(xs.size(), ys.size()); i++) {
      controls.add(new Point(xs.get(i), ys.get(i)));
    }
    boolean rising = true;
    for (int i = 1; i < knots.size(); i++) {
      rising &= knots.get(i) >= knots.get(i - 1);
    }
    if (degree < 1
        || degree > MOST_DEGREE
        || controls.size() <= degree
        || knots.size() != controls.size() + degree + 1
        || !rising) {
      throw InputException.of(
          "the knots and points of a spline do not go together",
          "Save the file with polylines in its place");
    }
    return new Spline(
        degree,
        knots,
        controls,
        weights.size() == controls.size() ? weights : controls.stream().map(c -> 1.0).toList());
  }

  /** Where its spans begin and end. */
  List<Double> spans() {
    List<Double> spans = new ArrayList<>();
    for (int i = degree; i < knots.size() - degree; i++) {
      if (spans.isEmpty() || knots.get(i) > spans.get(spans.size() - 1)) {
        spans.add(knots.get(i));
      }
    }
    return spans;
  }

  /**
   * The place at a parameter.
   *
   * @param after of the span that begins there, if one does; otherwise of the one that ends there
   */
  Point at(double t, boolean after) {
    int k = degree;
    while (k < controls.size() - 1 && (after ? knots.get(k + 1) <= t : knots.get(k + 1) < t)) {
      k++;
    }
    Point[] at = new Point[degree + 1];
    double[] weight = new double[degree + 1];
    for (int i = 0; i <= degree; i++) {
      weight[i] = weights.get(k - degree + i);
      at[i] = controls.get(k - degree + i).times(weight[i]);
    }
    for (int round = 1; round <= degree; round++) {
      for (int i = degree; i >= round; i--) {
        double from = knots.get(k - degree + i);
        double until = knots.get(k + 1 + i - round);
        double share = until == from ? 0 : (t - from) / (until - from);
        at[i] = at[i - 1].towards(at[i], share);
        weight[i] = weight[i - 1] + (weight[i] - weight[i - 1]) * share;
      }
    }
    return at[degree].times(1 / weight[degree]);
  }
}
