package ellwand.work;

import java.util.Optional;
import java.util.function.LongSupplier;

/**
 * How much of an effort is spent: of a number of steps those that were counted, of a time what has
 * gone by since this was made. An effort is spent in one of two ways.
 *
 * <ul>
 *   <li>As it goes: {@link #use} and {@link #reach} count, {@link #spent}, {@link #over} and {@link
 *       #until} tell where it stands.
 *   <li>Dealt out: {@link #take} gives shares of it to searches that follow one another, {@link
 *       #left} is what nobody has got.
 * </ul>
 *
 * <p>Steps never depend on the clock, so that what is limited by them repeats. Not safe for use by
 * several threads at once.
 */
public final class Spending {

  /** A search needs some time to begin at all, s; ours. */
  private static final double LEAST_SECONDS = 0.01;

  /** As long again as it took to a gain. */
  private static final double AGAIN = 2;

  /** Steps that a second holds at least: half of what a quiet core does when warm; ours. */
  private static final double STEPS_A_SECOND = 1000;

  /** So long a time waits for them at the most, s; ours. */
  private static final double PATIENCE = 5;

  private final Effort effort;
  private final boolean patient;
  private final LongSupplier nanos;
  private long started;
  private boolean begun;
  private double gained;
  private double used;
  private double left = 1;

  /** Time runs from here. */
  public Spending(Effort effort) {
    this(effort, System::nanoTime);
  }

  /** With a clock of its own, ns. */
  public Spending(Effort effort, LongSupplier nanos) {
    this(effort, nanos, false);
  }

  private Spending(Effort effort, LongSupplier nanos, boolean patient) {
    this.effort = effort;
    this.patient = patient;
    this.nanos = nanos;
    this.started = nanos.getAsLong();
  }

  /**
   * For a search that counts its steps: where the machine is cold or busy, time does not run ahead
   * of 1,000 steps a second, until it is 5 s behind the clock.
   */
  public static Spending patient(Effort effort) {
    return patient(effort, System::nanoTime);
  }

  /** The same with a clock of its own, ns. */
  public static Spending patient(Effort effort, LongSupplier nanos) {
    return new Spending(effort, nanos, !effort.repeats());
  }

  /**
   * Time runs from here instead, if this is the first time that it is said: what prepares a search
   * takes nothing from it.
   */
  public void begin() {
    if (!begun) {
      begun = true;
      started = nanos.getAsLong();
    }
  }

  /** Says that a gain was made just now. */
  public void gain() {
    gained = seconds();
  }

  /** When the last gain was made, s. */
  public double gained() {
    return gained;
  }

  /**
   * What it pays to spend from now on: until as long again is over as it took to the last gain, or
   * what is spent in any case. Empty where that is over, and where steps are what limits.
   */
  public Optional<Effort> worthwhile() {
    double until =
        Math.min(effort.seconds(), Math.max(effort.leastSeconds(), AGAIN * gained)) - seconds();
    return effort.repeats() || until < LEAST_SECONDS
        ? Optional.empty()
        : Optional.of(Effort.ofSeconds(until));
  }

  /** Counts steps, or parts of a step; where time limits only a patient spending asks for them. */
  public void use(double steps) {
    used += steps;
  }

  /** Says how many steps are used by now, instead of counting them. */
  public void reach(double steps) {
    used = steps;
  }

  /** The steps that are used by now. */
  public double used() {
    return used;
  }

  /**
   * The steps that all of it comes to: of a time, those that it would at the pace so far, for which
   * a patient one waits.
   */
  public double stepsInAll() {
    if (effort.repeats()) {
      return effort.steps();
    }
    double seconds = seconds();
    double pace = seconds > 0 ? used / seconds : 0;
    return effort.seconds() * (patient ? Math.max(STEPS_A_SECOND, pace) : pace);
  }

  public Effort effort() {
    return effort;
  }

  /** Seconds since this was made or begun. */
  public double seconds() {
    double clock = (nanos.getAsLong() - started) / 1e9;
    return patient ? Math.min(clock, Math.max(used / STEPS_A_SECOND, clock - PATIENCE)) : clock;
  }

  /** The share that is used up, 0 to 1 or a little more. */
  public double spent() {
    return effort.repeats() ? used / effort.steps() : seconds() / effort.seconds();
  }

  /** Whether nothing is left. */
  public boolean over() {
    return atLeast(effort);
  }

  /** Whether as much as that is used up. */
  public boolean atLeast(Effort part) {
    return part.repeats() ? used >= part.steps() : seconds() >= part.seconds();
  }

  /** What lies between now and a share of the whole, 0 to 1; a little at least. */
  public Effort until(double share) {
    return effort.repeats()
        ? Effort.ofSteps(Math.max(1, Math.round(effort.steps() * (share - spent()))))
        : ofSeconds(effort.seconds() * share - seconds());
  }

  /** All that is not used up; a little at least. */
  public Effort rest() {
    return until(1);
  }

  /**
   * A share of the whole, which is then no longer there. Where time limits, what searches take
   * beyond their share (to begin with, or on a busy machine) is borne by all that follow, and what
   * they leave goes to these.
   */
  public Effort take(double share) {
    Effort part =
        effort.repeats()
            ? effort.part(share)
            : effort.part(
                Math.max(LEAST_SECONDS, effort.seconds() - seconds())
                    / effort.seconds()
                    * Math.min(1, share / left));
    left = Math.max(0, left - share);
    return part;
  }

  /** The share that was not dealt out. */
  public double left() {
    return left;
  }

  private static Effort ofSeconds(double seconds) {
    return Effort.ofSeconds(Math.max(LEAST_SECONDS, seconds));
  }
}
