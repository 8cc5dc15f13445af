package ellwand.pattern;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * How a piece must lie to the warp, and what of that the piece says otherwise than its cloth.
 *
 * @param word as in a job file
 * @param drawnTurns degrees by which its drawn x axis may lie off the warp, counter-clockwise, with
 *     the piece as drawn; those that head up come first in each pair
 * @param anywhere whether any other angle will do as well; the turns are then those worth a trial
 * @param toleranceDegrees how far off those it may lie, instead of what the cloth allows
 * @param heads which way it heads, instead of how the cloth's direction would have it
 */
public record Grain(
    String word,
    List<Double> drawnTurns,
    boolean anywhere,
    OptionalDouble toleranceDegrees,
    Optional<Heads> heads) {

  /** Farther off it is another grain, degrees. */
  private static final double MOST_TOLERANCE_DEGREES = 10;

  public static final Grain ALONG = of("along", 0, 180);
  public static final Grain ACROSS = of("across", 90, 270);
  public static final Grain EITHER = of("either", 0, 180, 90, 270);

  /** At 45 degrees, either way. */
  public static final Grain BIAS = of("bias", 45, 225, 135, 315);

  /** At any angle, for small pieces whose grain does not show; every 30 degrees is tried. */
  public static final Grain ANY =
      new Grain(
          "any",
          IntStream.range(0, 6).boxed().flatMap(i -> Stream.of(30.0 * i, 30.0 * i + 180)).toList(),
          true,
          OptionalDouble.empty(),
          Optional.empty());

  /** Those that have a name. */
  public static final List<Grain> NAMED = List.of(ALONG, ACROSS, EITHER, BIAS, ANY);

  /** A heading that is the piece's own. */
  public enum Heads {
    /** Whatever the cloth's direction. */
    ANY_WAY,
    /** Up the cloth in every garment, also where others may head down. */
    ONE_WAY
  }

  public Grain {
    drawnTurns = List.copyOf(drawnTurns);
    if (toleranceDegrees.isPresent()
        && !(toleranceDegrees.getAsDouble() >= 0
            && toleranceDegrees.getAsDouble() <= MOST_TOLERANCE_DEGREES)) {
      throw new IllegalArgumentException("the grain tolerance must be 0 to 10 degrees");
    }
  }

  private static Grain of(String word, double... turns) {
    return new Grain(
        word,
        Arrays.stream(turns).boxed().toList(),
        false,
        OptionalDouble.empty(),
        Optional.empty());
  }

  /**
   * At an angle of its own.
   *
   * @param degrees from the warp to the drawn x axis, counter-clockwise
   */
  public static Grain at(double degrees) {
    double turn = ((degrees % 360) + 360) % 360;
    double back = (turn + 180) % 360;
    boolean up = turn < 135 || turn >= 315;
    String word = String.format(Locale.ROOT, "%s deg", shown(degrees));
    return of(word, up ? turn : back, up ? back : turn);
  }

  private static String shown(double degrees) {
    return degrees == Math.rint(degrees)
        ? Long.toString(Math.round(degrees))
        : Double.toString(degrees);
  }

  /** The same with a tolerance and a heading of its own. */
  public Grain with(OptionalDouble ownTolerance, Optional<Heads> ownHeads) {
    return new Grain(word, drawnTurns, anywhere, ownTolerance, ownHeads);
  }

  /**
   * The turns that are on grain, degrees from 0 to below 360.
   *
   * @param flipped for a copy that is turned over: its angles are mirrored
   */
  public List<Double> turns(boolean flipped) {
    return flipped ? drawnTurns.stream().map(t -> (360 - t) % 360).toList() : drawnTurns;
  }

  /** Of the turns that are on grain the nearest, degrees. */
  public double nearest(double turn, boolean flipped) {
    return turns(flipped).stream()
        .min(Comparator.comparingDouble(t -> Math.abs(Math.IEEEremainder(turn - t, 360))))
        .orElseThrow();
  }

  /** How far a turn leans off the nearest that is on grain, degrees counter-clockwise. */
  public double leanDegrees(double turn, boolean flipped) {
    if (!Double.isFinite(turn)) {
      return Double.POSITIVE_INFINITY;
    }
    return anywhere ? 0 : Math.IEEEremainder(turn - nearest(turn, flipped), 360);
  }

  /** The same without regard to the direction. */
  public double offDegrees(double turn, boolean flipped) {
    return Math.abs(leanDegrees(turn, flipped));
  }

  /** Whether the drawn x axis may lie along the warp and at no slant to it. */
  public boolean lengthwise() {
    return !anywhere && drawnTurns.contains(0.0);
  }

  /** Whether the drawn x axis lies along the warp and nowhere else. */
  public boolean onlyAlong() {
    return lengthwise() && drawnTurns.size() == 2;
  }

  /** Whether the drawn x axis lies across the warp and nowhere else. */
  public boolean onlyAcross() {
    return !anywhere && drawnTurns.contains(90.0) && drawnTurns.size() == 2;
  }
}
