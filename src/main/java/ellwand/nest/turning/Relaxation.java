package ellwand.nest.turning;

import java.util.function.BooleanSupplier;

/**
 * Moves bodies as little as may be until every corner keeps beyond its side and inside the borders:
 * one correction after another, each shared by the bodies that it concerns.
 */
final class Relaxation {

  /** How far a corner is to be beyond its side, mm; half of it is enough. */
  private static final double AIM_MM = 2e-4;

  /** How far a corner may be beyond a border, mm; far inside the check's rounding. */
  private static final double EXACT_MM = 5e-6;

  /** Corrections a little larger than asked for meet sooner. */
  private static final double EAGER = 1.4;

  private static final int SWEEPS = 1000;

  /** Sweeps after which the worst must have fallen to such a part of itself. */
  private static final int PATIENCE = 40;

  private static final double PROGRESS = 0.95;

  private final Stance s;
  private final Contacts contacts;
  private final double length;
  private final double[] least;
  private final double[] most;
  private final double[] slack;

  /** Where the bodies were after the sweep before. */
  private final double[] wasX;

  private final double[] wasY;
  private final double[] wasTurn;
  private double worst;

  /** How much of what is asked has been looked at, corners. */
  private long looked;

  /**
   * @param s what to change
   * @param length where the strip ends
   * @param least turn of each body
   * @param most the same
   */
  Relaxation(Stance s, Contacts contacts, double length, double[] least, double[] most) {
    this.s = s;
    this.contacts = contacts;
    this.length = length;
    this.least = least;
    this.most = most;
    slack = new double[s.x.length];
    wasX = s.x.clone();
    wasY = s.y.clone();
    wasTurn = s.turn.clone();
    for (int i = 0; i < slack.length; i++) {
      double reach = s.bodies.get(i).reach();
      slack[i] = least[i] < most[i] ? 4 / (reach * reach) : 0;
    }
  }

  long looked() {
    return looked;
  }

  /**
   * Whether all that is asked could be met.
   *
   * @param ended asked now and then, and then it could not
   */
  boolean run(BooleanSupplier ended) {
    for (int i = 0; i < slack.length; i++) {
      turn(i, s.turn[i]);
    }
    double before = Double.POSITIVE_INFINITY;
    double last = Double.POSITIVE_INFINITY;
    int gathered = 0;
    for (int sweep = 0; sweep < SWEEPS; sweep++) {
      worst = 0;
      for (int c = 0; c < contacts.count; c++) {
        contact(sweep % 2 == 0 ? c : contacts.count - 1 - c);
      }
      for (int i = 0; i < slack.length; i++) {
        borders(i);
      }
      looked += contacts.count + 4L * slack.length;
      if (worst <= 0) {
        return true;
      }
      if (sweep % PATIENCE == PATIENCE - 1) {
        if (worst > before * PROGRESS || ended.getAsBoolean()) {
          return false;
        }
        before = worst;
      }
      gathered = worst > last ? 0 : gathered + 1;
      last = worst;
      goOn(gathered / (gathered + 3.0));
    }
    return false;
  }

  /** Goes on the way that the last sweep went, which shortens zigzags (Nesterov 1983). */
  private void goOn(double part) {
    for (int i = 0; i < slack.length; i++) {
      double dx = s.x[i] - wasX[i];
      double dy = s.y[i] - wasY[i];
      double dt = s.turn[i] - wasTurn[i];
      wasX[i] = s.x[i];
      wasY[i] = s.y[i];
      wasTurn[i] = s.turn[i];
      if (part > 0 && (dx != 0 || dy != 0 || dt != 0)) {
        s.x[i] += part * dx;
        s.y[i] += part * dy;
        turn(i, s.turn[i] + part * dt);
      }
    }
  }

  private void contact(int c) {
    int p = contacts.sideOf[c];
    int q = contacts.cornerOf[c];
    double[] v = contacts.values;
    int o = c * Contacts.DOUBLES;
    double nx = s.cos[p] * v[o] - s.sin[p] * v[o + 1];
    double ny = s.sin[p] * v[o] + s.cos[p] * v[o + 1];
    double armX = s.cos[q] * v[o + 3] - s.sin[q] * v[o + 4];
    double armY = s.sin[q] * v[o + 3] + s.cos[q] * v[o + 4];
    double fromX = s.x[q] + armX - s.x[p];
    double fromY = s.y[q] + armY - s.y[p];
    double missing = AIM_MM - (nx * fromX + ny * fromY - v[o + 2]);
    if (missing <= 0) {
      return;
    }
    worst = Math.max(worst, missing - AIM_MM / 2);
    double turnP = nx * fromY - ny * fromX;
    double turnQ = ny * armX - nx * armY;
    double gain = gain(p, nx, ny, turnP) + gain(q, nx, ny, turnQ);
    if (gain > 0) {
      double by = EAGER * missing / gain;
      move(p, -by * nx, -by * ny, by * turnP);
      move(q, by * nx, by * ny, by * turnQ);
    }
  }

  private void borders(int i) {
    Body body = s.bodies.get(i);
    Body.Walls in = body.borders();
    double[] rim = body.rim();
    if (rim.length == 0) {
      return;
    }
    if (body.slidesAcross()) {
      border(i, rim, 0, 1, in.lowY());
      border(i, rim, 0, -1, -in.highY());
    }
    if (body.slidesAlong()) {
      border(i, rim, 1, 0, in.lowX());
      border(i, rim, -1, 0, -length);
    }
  }

  /** Brings the corner that is farthest beyond a border back to it. */
  private void border(int i, double[] rim, int nx, int ny, double bound) {
    double deepest = Double.POSITIVE_INFINITY;
    double armX = 0;
    double armY = 0;
    for (int k = 0; k < rim.length; k += 2) {
      double ax = s.cos[i] * rim[k] - s.sin[i] * rim[k + 1];
      double ay = s.sin[i] * rim[k] + s.cos[i] * rim[k + 1];
      if (nx * ax + ny * ay < deepest) {
        deepest = nx * ax + ny * ay;
        armX = ax;
        armY = ay;
      }
    }
    double missing = bound - (nx * s.x[i] + ny * s.y[i] + deepest);
    if (missing > 0) {
      worst = Math.max(worst, missing - EXACT_MM);
      double turn = ny * armX - nx * armY;
      double by = missing / gain(i, nx, ny, turn);
      move(i, by * nx, by * ny, by * turn);
    }
  }

  private double gain(int i, double nx, double ny, double turn) {
    Body body = s.bodies.get(i);
    return (body.slidesAlong() ? nx * nx : 0)
        + (body.slidesAcross() ? ny * ny : 0)
        + slack[i] * turn * turn;
  }

  private void move(int i, double dx, double dy, double turn) {
    Body body = s.bodies.get(i);
    if (body.slidesAlong()) {
      s.x[i] += dx;
    }
    if (body.slidesAcross()) {
      s.y[i] += dy;
    }
    if (slack[i] > 0) {
      turn(i, s.turn[i] + slack[i] * turn);
    }
  }

  private void turn(int i, double wanted) {
    double to = Math.max(least[i], Math.min(most[i], wanted));
    if (to != s.turn[i]) {
      s.turn(i, to);
    }
  }
}
