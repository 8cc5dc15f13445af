package ellwand.pattern;

import ellwand.problem.InputException;
import java.util.Locale;

/**
 * Pleats that share a length out evenly: how many, how deep, and which way they are folded.
 *
 * @param count 1 or more
 * @param depthMm of each fold, from its edge to the fold inside, more than 0
 */
public record Pleating(Kind kind, int count, double depthMm) {

  private static final int MOST = 500;

  /** How a pleat is folded. */
  public enum Kind {
    /** All folded the same way. */
    KNIFE(2),
    /** Two folds away from each other. */
    BOX(4),
    /** Two folds towards each other. */
    INVERTED(4);

    private final int depths;

    Kind(int depths) {
      this.depths = depths;
    }
  }

  public Pleating {
    if (count < 1 || count > MOST) {
      throw InputException.of(
          count + " pleats cannot be folded", "Write pleats: as a number from 1 to " + MOST);
    }
    if (!(depthMm > 0 && Double.isFinite(depthMm))) {
      throw InputException.of(
          "its pleats have no depth", "Give a depth: of more than 0, or a fullness: above 1");
    }
  }

  /** So many that come to a fullness: a kilt has 3, common practice. */
  public static Pleating full(Kind kind, int count, double fullness, double joinedMm) {
    return new Pleating(kind, count, joinedMm * (fullness - 1) / (kind.depths * count));
  }

  /** As many of about a depth as come to a fullness. */
  public static Pleating deep(Kind kind, double depthMm, double fullness, double joinedMm) {
    double exact = joinedMm * (fullness - 1) / (kind.depths * depthMm);
    return full(kind, (int) Math.max(1, Math.min(MOST, Math.round(exact))), fullness, joinedMm);
  }

  /** What each takes of the cloth beside what shows of it, mm: 2 depths, or 4 where two folds. */
  public double takesMm() {
    return kind.depths * depthMm;
  }

  /** Cut width, mm, of what is finished so wide. */
  public double widthMm(double joinedMm) {
    return joinedMm + count * takesMm();
  }

  /** Whether its folds lie over one another, mm from pleat to pleat. */
  boolean overlaps(double everyMm) {
    return depthMm > (kind == Kind.KNIFE ? everyMm : everyMm / 2) + 1e-6;
  }

  /**
   * Where the edges of folds lie in the stretch that one pleat and what shows beside it take, mm
   * from its start; seams at its ends are hidden inside knife and box pleats.
   *
   * @param showsMm from pleat to pleat when folded
   */
  double[] folds(double showsMm) {
    return switch (kind) {
      case KNIFE -> new double[] {depthMm + showsMm};
      case BOX -> new double[] {2 * depthMm, 2 * depthMm + showsMm};
      case INVERTED -> new double[] {showsMm / 2, showsMm / 2 + 4 * depthMm};
    };
  }

  /** Which way each of these edges is laid: 1 for onward, -1 for back. */
  double[] ways() {
    return switch (kind) {
      case KNIFE -> new double[] {1};
      case BOX -> new double[] {-1, 1};
      case INVERTED -> new double[] {1, -1};
    };
  }

  /** Where these edges are laid to; at a seam where that is its start. */
  double[] laidTo(double showsMm) {
    return switch (kind) {
      case KNIFE -> new double[] {depthMm};
      case BOX -> new double[] {0};
      case INVERTED -> new double[] {showsMm / 2 + 2 * depthMm};
    };
  }

  /** {@code 12 knife pleats}. */
  public String words() {
    return count + " " + kind.name().toLowerCase(Locale.ROOT) + (count == 1 ? " pleat" : " pleats");
  }
}
