package ellwand.nest.kernel;

/**
 * Lets two copies of about one size change places where both together cost less then: in a dense
 * layout there is no other place that is free.
 */
final class Exchange {

  /** How many times as large the other may be, or as small; measured, 4 is no better. */
  private static final double UNLIKE = 2;

  /** Others that are looked at for one to change places with; measured, 8 are no better. */
  private static final int LOOKED_AT = 4;

  /** How many are drawn for these at the most, where few are of that size; ours. */
  private static final int DRAWN = 20;

  private record Pose(int form, double x, double y) {}

  private final Arrangement arrangement;
  private final Plan plan;
  private final Dice dice;
  private final Descent descent;

  /** How a copy costs least in the places that were looked at, and what it costs there. */
  private int other;

  private int form;
  private double cost;

  Exchange(Arrangement arrangement, Dice dice, Descent descent) {
    this.arrangement = arrangement;
    plan = arrangement.plan;
    this.dice = dice;
    this.descent = descent;
  }

  /** Tries it with the one of a few in whose place the copy costs least. */
  void attempt(int copy) {
    look(copy);
    if (other < 0) {
      return;
    }
    double before = arrangement.cost(copy, other);
    Pose there = brought(copy, other);
    double left = before - descent.cost;
    if (left > 0) {
      back(copy, other, there, before, left);
    }
  }

  /** Chooses whose place the copy may take, and in which form. */
  private void look(int copy) {
    other = -1;
    cost = Double.POSITIVE_INFINITY;
    double size = size(copy);
    int looked = 0;
    for (int drawn = 0; drawn < DRAWN && looked < LOOKED_AT; drawn++) {
      int one = dice.below(plan.copies);
      double times = size(one) / size;
      if (plan.kind[one] != plan.kind[copy] && times < UNLIKE && times > 1 / UNLIKE) {
        looked++;
        if (costsLess(copy, dice.below(arrangement.kind(copy).forms), one)) {
          other = one;
        }
      }
    }
  }

  private double size(int copy) {
    return plan.size[arrangement.shape[copy]];
  }

  /** Lets the other have the copy's place, and the copy another pose, if that pays for both. */
  private void back(int copy, int other, Pose there, double before, double left) {
    cost = Double.POSITIVE_INFINITY;
    for (int f = 0; f < arrangement.kind(other).forms; f++) {
      costsLess(other, f, copy);
    }
    if (cost == Double.POSITIVE_INFINITY) {
      return;
    }
    Pose here = brought(other, copy);
    if (descent.cost < left) {
      Pose copyWas = pose(copy);
      Pose otherWas = pose(other);
      move(copy, there);
      move(other, here);
      // Neither has reckoned with the other.
      if (arrangement.cost(copy, other) >= before) {
        move(copy, copyWas);
        move(other, otherWas);
      }
    }
  }

  /** Keeps the form if the copy costs less in it than before, in the middle of another's place. */
  private boolean costsLess(int copy, int f, int place) {
    Kind kind = arrangement.kind(copy);
    if (!kind.fits(f, arrangement.length())) {
      return false;
    }
    arrangement.leftOut = place;
    double c = arrangement.cost(copy, f, x(copy, f, place), y(copy, f, place), cost);
    arrangement.leftOut = -1;
    if (c >= cost) {
      return false;
    }
    form = f;
    cost = c;
    return true;
  }

  /** Where the copy comes down to from there. */
  private Pose brought(int copy, int place) {
    arrangement.leftOut = place;
    descent.run(copy, form, x(copy, form, place), y(copy, form, place), cost);
    arrangement.leftOut = -1;
    return new Pose(form, descent.x, descent.y);
  }

  private double x(int copy, int f, int place) {
    return arrangement.kind(copy).x(f, arrangement.x[place], arrangement.length());
  }

  private double y(int copy, int f, int place) {
    return arrangement.kind(copy).y(f, arrangement.y[place]);
  }

  private Pose pose(int copy) {
    return new Pose(arrangement.form[copy], arrangement.x[copy], arrangement.y[copy]);
  }

  private void move(int copy, Pose to) {
    arrangement.move(copy, to.form, to.x, to.y);
  }
}
