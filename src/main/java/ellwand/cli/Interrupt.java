package ellwand.cli;

import ellwand.work.Stop;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/**
 * Ctrl-C: asks the search to stop, waits while the best is written, and ends with its exit code.
 */
final class Interrupt {

  /** How long writing may take after Ctrl-C before the program is ended all the same. */
  private static final int WRITING_SECONDS = 60;

  private final Stop stop = new Stop();
  private final CountDownLatch finished = new CountDownLatch(1);
  private volatile int exitCode;

  static Interrupt install() {
    Interrupt interrupt = new Interrupt();
    Runtime.getRuntime().addShutdownHook(new Thread(interrupt::waitForResult, "interrupt"));
    return interrupt;
  }

  Stop stop() {
    return stop;
  }

  /** The command is done; a waiting Ctrl-C now ends the program. */
  void finished(int code) {
    exitCode = code;
    finished.countDown();
  }

  private void waitForResult() {
    stop.request();
    try {
      if (finished.await(WRITING_SECONDS, TimeUnit.SECONDS)) {
        // An interrupted JVM would report 130, but a kept marker is a result.
        Runtime.getRuntime().halt(exitCode);
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
