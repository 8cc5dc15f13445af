package ellwand.work;

import ellwand.problem.InputException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How much search one marker may have: a time or a number of steps.
 *
 * <p>A time may have a least part: then the search ends before the whole of it is over as soon as
 * that no longer pays, which is when as long again as it took to the last gain has brought nothing.
 *
 * <p>A search limited by steps repeats exactly for the same seed and thread count; one limited by
 * time does not. Of one that is limited by both ({@link #within}) steps decide, and the time says
 * when to make haste with what takes no steps.
 *
 * @param leastSeconds wall-clock seconds that are spent in any case
 * @param seconds those that are spent at most, {@link Double#POSITIVE_INFINITY} when limited by
 *     steps
 * @param steps search steps, {@link Long#MAX_VALUE} when limited by time
 */
public record Effort(double leastSeconds, double seconds, long steps) {

  private static final Pattern TEXT = Pattern.compile("(\\d+(?:\\.\\d+)?)\\s*(s|sec|min|h|steps?)");

  public Effort {
    if (!(leastSeconds > 0) || !(seconds >= leastSeconds) || steps <= 0) {
      throw new IllegalArgumentException("an effort must be more than nothing");
    }
  }

  public static Effort ofSeconds(double seconds) {
    return new Effort(seconds, seconds, Long.MAX_VALUE);
  }

  /** As many seconds as it pays to search, between two bounds. */
  public static Effort asLongAsItPays(double leastSeconds, double mostSeconds) {
    return new Effort(leastSeconds, mostSeconds, Long.MAX_VALUE);
  }

  public static Effort ofSteps(long steps) {
    return new Effort(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, steps);
  }

  /**
   * Reads {@code 30s}, {@code 2min}, {@code 1h} or {@code 5000steps}.
   *
   * @throws InputException if the text is none of these
   */
  public static Effort parse(String text) {
    Matcher matcher = TEXT.matcher(text.strip().toLowerCase(Locale.ROOT));
    if (!matcher.matches()) {
      throw InputException.of(
          "'" + text + "' is neither a time nor a number of steps",
          "Write for example 30s, 2min or 5000steps");
    }
    double amount = Double.parseDouble(matcher.group(1));
    if (!(matcher.group(2).startsWith("step") ? amount >= 1 : amount > 0)) {
      throw InputException.of(
          "'" + text + "' leaves no time to search", "Write for example 30s, 2min or 5000steps");
    }
    return switch (matcher.group(2)) {
      case "min" -> ofSeconds(amount * 60);
      case "h" -> ofSeconds(amount * 3600);
      case "step", "steps" -> ofSteps((long) amount);
      default -> ofSeconds(amount);
    };
  }

  /** Whether the search repeats exactly for the same seed and thread count. */
  public boolean repeats() {
    return steps != Long.MAX_VALUE;
  }

  /** Whether the search may end before all of it is spent. */
  public boolean endsWhenItNoLongerPays() {
    return leastSeconds < seconds;
  }

  /** What is spent in any case. */
  public Effort least() {
    return new Effort(leastSeconds, leastSeconds, steps);
  }

  /** The same spent to the end, whether it pays or not. */
  public Effort whole() {
    return new Effort(seconds, seconds, steps);
  }

  /** An equal part of this effort, for one of {@code parts} searches made one after another. */
  public Effort share(int parts) {
    return new Effort(
        leastSeconds / parts, seconds / parts, repeats() ? Math.max(1, steps / parts) : steps);
  }

  /** A part of this effort, {@code 0 < share <= 1}. */
  public Effort part(double share) {
    return new Effort(
        leastSeconds * share,
        seconds * share,
        repeats() ? Math.max(1, (long) (steps * share)) : steps);
  }

  /** So many steps, in haste after as many seconds as the other effort has, if it has any. */
  public Effort within(Effort other) {
    return new Effort(other.leastSeconds, other.seconds, steps);
  }

  @Override
  public String toString() {
    if (repeats()) {
      return steps + "steps";
    }
    return (endsWhenItNoLongerPays() ? inWords(leastSeconds) + "s to " : "")
        + inWords(seconds)
        + "s";
  }

  /** Parts of an effort are told to a thousandth of a second. */
  private static String inWords(double seconds) {
    return BigDecimal.valueOf(seconds)
        .setScale(3, RoundingMode.HALF_UP)
        .stripTrailingZeros()
        .toPlainString();
  }
}
