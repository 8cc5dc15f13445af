package ellwand.app;

import ellwand.work.Effort;
import java.util.function.LongSupplier;

/**
 * Deals out an effort, share by share. Where time limits it, what searches take beyond their share
 * (to begin with, or on a busy machine) is borne by those that follow, so that all end in time.
 */
final class Allotment {

  /** A search needs some time to begin at all, s. */
  private static final double LEAST = 0.05;

  private final SearchOptions options;
  private final LongSupplier nanos;
  private final long started;
  private double left = 1;

  Allotment(SearchOptions options) {
    this(options, System::nanoTime);
  }

  /** With a clock of its own, ns. */
  Allotment(SearchOptions options, LongSupplier nanos) {
    this.options = options;
    this.nanos = nanos;
    this.started = nanos.getAsLong();
  }

  /** The share of the effort that was not dealt out. */
  double left() {
    return left;
  }

  /** Whether the time is up. */
  boolean over() {
    return seconds() <= 0;
  }

  /** A share of the whole, which is then no longer there. */
  SearchOptions take(double share) {
    Effort effort =
        options.effort().repeats()
            ? options.effort().part(share)
            : Effort.ofSeconds(Math.max(LEAST, seconds() * Math.min(1, share / left)));
    left = Math.max(0, left - share);
    return new SearchOptions(effort, options.seed(), options.threads());
  }

  /** As much as a share of the whole, beside it. */
  SearchOptions besides(double share) {
    return new SearchOptions(options.effort().part(share), options.seed(), options.threads());
  }

  private double seconds() {
    return options.effort().seconds() - (nanos.getAsLong() - started) / 1e9;
  }
}
