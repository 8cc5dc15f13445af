package ellwand.nest.turning;

import ellwand.nest.turning.Body.Posture;
import java.util.ArrayList;
import java.util.List;

/** Where all bodies lie just now, in flat arrays. */
final class Stance {

  final List<Body> bodies;
  final double[] x;
  final double[] y;
  final double[] turn;
  final double[] cos;
  final double[] sin;

  Stance(List<Body> bodies, List<Posture> places) {
    this(bodies);
    for (int i = 0; i < x.length; i++) {
      x[i] = places.get(i).x();
      y[i] = places.get(i).y();
      turn(i, places.get(i).turn());
    }
  }

  private Stance(List<Body> bodies) {
    this.bodies = bodies;
    x = new double[bodies.size()];
    y = new double[bodies.size()];
    turn = new double[bodies.size()];
    cos = new double[bodies.size()];
    sin = new double[bodies.size()];
  }

  Stance copy() {
    Stance copy = new Stance(bodies);
    System.arraycopy(x, 0, copy.x, 0, x.length);
    System.arraycopy(y, 0, copy.y, 0, x.length);
    System.arraycopy(turn, 0, copy.turn, 0, x.length);
    System.arraycopy(cos, 0, copy.cos, 0, x.length);
    System.arraycopy(sin, 0, copy.sin, 0, x.length);
    return copy;
  }

  void turn(int body, double to) {
    turn[body] = to;
    cos[body] = Math.cos(to);
    sin[body] = Math.sin(to);
  }

  /** A ring of a body in its place. */
  double[] placed(int body, double[] ring) {
    double[] placed = new double[ring.length];
    for (int i = 0; i < ring.length; i += 2) {
      placed[i] = x[body] + cos[body] * ring[i] - sin[body] * ring[i + 1];
      placed[i + 1] = y[body] + sin[body] * ring[i] + cos[body] * ring[i + 1];
    }
    return placed;
  }

  /** The farthest corner of all rims. */
  double end() {
    double end = 0;
    for (int i = 0; i < x.length; i++) {
      double[] rim = bodies.get(i).rim();
      for (int k = 0; k < rim.length; k += 2) {
        end = Math.max(end, x[i] + cos[i] * rim[k] - sin[i] * rim[k + 1]);
      }
    }
    return end;
  }

  List<Posture> places() {
    List<Posture> places = new ArrayList<>(x.length);
    for (int i = 0; i < x.length; i++) {
      places.add(new Posture(x[i], y[i], turn[i]));
    }
    return places;
  }
}
