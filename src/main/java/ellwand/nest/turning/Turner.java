package ellwand.nest.turning;

import ellwand.nest.turning.Body.Posture;
import java.util.Comparator;
import java.util.List;
import java.util.function.LongPredicate;
import java.util.stream.IntStream;

/** Makes a legal layout shorter by moving and turning its bodies a little, and straightens it. */
public final class Turner {

  /** Steps by which a layout is made shorter, as shares of its length: the first and the least. */
  private static final double FIRST_STEP = 0.004;

  private static final double LEAST_STEP = 2e-5;

  /** Parts nearer than this take heed of each other, mm. */
  private static final double NEAR_MM = 2;

  /** What straightening may cost, mm. */
  private static final double HAIR_MM = 0.05;

  /** A hundredth of a degree, radians; less than that nobody can lay. */
  private static final double WHOLE = Math.toRadians(0.01);

  /** How often all that lie off grain are tried once more. */
  private static final int ROUNDS = 3;

  /** What is left of all turns together, tried one after another. */
  private static final double[] ALL_TOGETHER = {0, 0.5, 0.75};

  private final List<Body> bodies;
  private final LongPredicate enough;
  private final Contacts contacts = new Contacts();
  private long looked;

  /**
   * @param enough told how much work has been done, in corners looked at; ends it
   */
  public Turner(List<Body> bodies, LongPredicate enough) {
    this.bodies = List.copyOf(bodies);
    this.enough = enough;
  }

  /** The farthest corner, mm. */
  public double lengthMm(List<Posture> places) {
    return new Stance(bodies, places).end();
  }

  /** As short as it becomes without copies passing each other; the same if nothing is gained. */
  public List<Posture> shortened(List<Posture> places) {
    Stance now = new Stance(bodies, places);
    double[] least = bodies.stream().mapToDouble(Body::leastTurn).toArray();
    double[] most = bodies.stream().mapToDouble(Body::mostTurn).toArray();
    double step = FIRST_STEP;
    while (step > LEAST_STEP && !enough.test(looked)) {
      double length = now.end();
      double target = length * (1 - step);
      Stance trial = now.copy();
      for (int i = 0; i < trial.x.length; i++) {
        if (bodies.get(i).slidesAlong()) {
          trial.x[i] *= target / length;
        }
      }
      // Where what may not move along ends last, others can settle for ever and gain nothing.
      if (settled(now, trial, NEAR_MM + 2 * step * length, target, least, most)
          && trial.end() < length) {
        now = trial;
        step = Math.min(FIRST_STEP, step * 2);
      } else {
        step /= 2;
      }
    }
    return now.places();
  }

  /**
   * Turned back towards the grain as far as that goes without getting longer by more than a hair,
   * then to whole hundredths of a degree where that can be had.
   */
  public List<Posture> straightened(List<Posture> places) {
    Stance now = new Stance(bodies, places);
    double length = now.end() + HAIR_MM;
    for (double part : ALL_TOGETHER) {
      double[] turns = now.turn.clone();
      for (int i = 0; i < turns.length; i++) {
        turns[i] *= part;
      }
      now = straightened(now, turns, length);
    }
    for (int round = 0; round < ROUNDS; round++) {
      for (int body : askew(now)) {
        for (double part : new double[] {0, 0.5}) {
          if (Math.abs(now.turn[body]) > part * WHOLE) {
            now = straightened(now, body, part * now.turn[body], length);
          }
        }
      }
    }
    for (int body : askew(now)) {
      double turn = now.turn[body];
      double whole = Math.signum(turn) * Math.floor(Math.abs(turn) / WHOLE + 1e-9) * WHOLE;
      now = straightened(now, body, whole, length);
    }
    return now.places();
  }

  private Stance straightened(Stance now, int body, double turn, double length) {
    double[] turns = now.turn.clone();
    turns[body] = turn;
    return straightened(now, turns, length);
  }

  /** Those that lie off grain, the farthest off first. */
  private static List<Integer> askew(Stance now) {
    return IntStream.range(0, now.x.length)
        .filter(i -> now.turn[i] != 0)
        .boxed()
        .sorted(Comparator.comparingDouble(i -> -Math.abs(now.turn[i])))
        .toList();
  }

  /** With no body farther off grain than so; the same if that cannot be had. */
  private Stance straightened(Stance now, double[] turns, double length) {
    double[] least = new double[turns.length];
    double[] most = new double[turns.length];
    double moved = 0;
    for (int i = 0; i < turns.length; i++) {
      least[i] = Math.min(0, turns[i]);
      most[i] = Math.max(0, turns[i]);
      moved = Math.max(moved, Math.abs(turns[i] - now.turn[i]) * bodies.get(i).reach());
    }
    if (moved == 0 || enough.test(looked)) {
      return now;
    }
    Stance trial = now.copy();
    return settled(now, trial, NEAR_MM + 2 * moved, length, least, most) ? trial : now;
  }

  /**
   * Whether the trial could be made legal.
   *
   * @param from a legal one near it, by which bodies keep to their sides of each other
   */
  private boolean settled(
      Stance from, Stance trial, double reach, double length, double[] least, double[] most) {
    contacts.choose(from, reach);
    Relaxation relaxation = new Relaxation(trial, contacts, length, least, most);
    // Whatever little work has been done: only a stop, or a time that is over, ends it midway.
    boolean met = relaxation.run(() -> enough.test(0));
    looked += relaxation.looked();
    return met && contacts.choose(trial, NEAR_MM) >= 0;
  }
}
