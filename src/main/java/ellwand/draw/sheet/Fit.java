package ellwand.draw.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;

/**
 * The largest scale at which a sheet fits on paper.
 *
 * @param scale mm drawn for one mm of paper
 */
public record Fit(Paper paper, double scale) {

  /** Scales tried: by halves up to this, then by whole numbers. */
  private static final double HALVES_UP_TO = 10;

  private static final double SMALLEST_PICTURE = 1000;

  /** Smaller than this, more pages are better. */
  private static final double SMALLEST_ON_PAGES = 10;

  /** What has to fit: whether it does on paper of this kind at this scale. */
  public interface Test {
    boolean fits(Paper paper, double scale);
  }

  /** How many pages it takes on paper of this kind at this scale; nothing if it never fits. */
  public interface Count {
    OptionalInt pages(Paper paper, double scale);
  }

  /**
   * On as few A4 pages as can be, the largest of those scales, unless that makes it smaller than
   * 1:10; upright or on its side, whichever shows more.
   */
  public static Fit onPages(Count count) {
    Fit best = null;
    int least = Integer.MAX_VALUE;
    for (double scale = 1; scale <= SMALLEST_PICTURE; scale = next(scale)) {
      for (Paper paper : new Paper[] {Paper.A4.onItsSide(), Paper.A4}) {
        int pages = count.pages(paper, scale).orElse(Integer.MAX_VALUE);
        if (pages < least) {
          least = pages;
          best = new Fit(paper, scale);
        }
      }
      if (best != null && (least == 1 || scale >= SMALLEST_ON_PAGES)) {
        return best;
      }
    }
    throw new IllegalArgumentException("a part is too large for an A4 page at any scale");
  }

  private static double next(double scale) {
    return scale + (scale < HALVES_UP_TO ? 0.5 : 1);
  }

  /**
   * On A4, upright or on its side, whichever shows more; on its side when both are alike. What fits
   * at one scale is taken to fit at every smaller one.
   */
  public static Fit onA4(Test test) {
    List<Double> scales = new ArrayList<>();
    for (double scale = 1; scale <= SMALLEST_PICTURE; scale = next(scale)) {
      scales.add(scale);
    }
    // Doubled until it fits, then halved down to the first that does.
    int fits = 0;
    while (paper(test, scales.get(fits)).isEmpty()) {
      if (fits == scales.size() - 1) {
        throw new IllegalArgumentException("too much to show on one A4 page");
      }
      fits = Math.min(scales.size() - 1, 2 * fits + 1);
    }
    int tooLarge = fits == 0 ? -1 : (fits - 1) / 2;
    while (fits - tooLarge > 1) {
      int middle = (fits + tooLarge) / 2;
      if (paper(test, scales.get(middle)).isPresent()) {
        fits = middle;
      } else {
        tooLarge = middle;
      }
    }
    return new Fit(paper(test, scales.get(fits)).orElseThrow(), scales.get(fits));
  }

  private static Optional<Paper> paper(Test test, double scale) {
    return Stream.of(Paper.A4.onItsSide(), Paper.A4)
        .filter(paper -> test.fits(paper, scale))
        .findFirst();
  }
}
