package ellwand.pattern.alter;

import ellwand.units.Unit;

/** How far along an edge: a length, or a share of the edge. */
public sealed interface Reach {

  /** On an edge of that length, mm. */
  double mm(double edgeMm);

  /** As it is said: {@code 2 cm}, {@code 1/2}. */
  String words(Unit unit);

  /** A length, mm, negative towards the other side. */
  record Mm(double mm) implements Reach {

    @Override
    public double mm(double edgeMm) {
      return mm;
    }

    @Override
    public String words(Unit unit) {
      return Words.length(mm, unit);
    }
  }

  /**
   * A part of the edge.
   *
   * @param over 0 or more
   * @param under more than 0
   */
  record Share(int over, int under) implements Reach {

    public Share {
      if (over < 0 || under < 1) {
        throw new IllegalArgumentException("a share needs parts");
      }
    }

    @Override
    public double mm(double edgeMm) {
      return edgeMm * over / under;
    }

    @Override
    public String words(Unit unit) {
      return over + "/" + under;
    }
  }
}
