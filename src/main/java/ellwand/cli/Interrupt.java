package ellwand.cli;

import ellwand.work.Stop;
import org.jline.utils.Signals;

/**
 * Ctrl-C: the search is asked to stop, so that the command ends by itself with the best kept; asked
 * again, the program ends at once.
 */
final class Interrupt {

  /** What a shell reports for a program ended by Ctrl-C: 128 and the number of the signal. */
  private static final int ENDED_BY_INTERRUPT = 130;

  private Interrupt() {}

  /** From now on the signals that ask a program to end, or say that its terminal is gone, stop. */
  static Stop install() {
    Stop stop = new Stop();
    for (String signal : new String[] {"INT", "TERM", "HUP"}) {
      Signals.register(signal, () -> asked(stop));
    }
    return stop;
  }

  private static void asked(Stop stop) {
    if (stop.wanted()) {
      Runtime.getRuntime().halt(ENDED_BY_INTERRUPT);
    }
    stop.request();
  }
}
