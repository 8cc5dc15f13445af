package ellwand.draw.sheet;

/**
 * The largest scale at which a sheet fits on paper.
 *
 * @param scale mm drawn for one mm of paper
 */
public record Fit(Paper paper, double scale) {

  /** Scales tried: by halves up to this, then by whole numbers. */
  private static final double HALVES_UP_TO = 10;

  private static final double SMALLEST_PICTURE = 1000;

  /** What has to fit: whether it does on paper of this kind at this scale. */
  public interface Test {
    boolean fits(Paper paper, double scale);
  }

  /** On A4, upright or on its side, whichever shows more; on its side when both are alike. */
  public static Fit onA4(Test test) {
    Paper upright = Paper.A4;
    Paper side = upright.onItsSide();
    for (double scale = 1; scale <= SMALLEST_PICTURE; scale += scale < HALVES_UP_TO ? 0.5 : 1) {
      for (Paper paper : new Paper[] {side, upright}) {
        if (test.fits(paper, scale)) {
          return new Fit(paper, scale);
        }
      }
    }
    throw new IllegalArgumentException("too much to show on one A4 page");
  }
}
