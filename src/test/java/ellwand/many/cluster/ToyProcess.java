package ellwand.many.cluster;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;

/** A process of this machine that a test starts, listens to and treats badly. */
final class ToyProcess implements AutoCloseable {

  /** Long enough on a machine that has much else to do. */
  static final long PATIENCE_SECONDS = 240;

  private final Process process;
  private final Thread listening;
  private final List<String> lines = new CopyOnWriteArrayList<>();

  private ToyProcess(Class<?> main, List<String> args) {
    List<String> line = new ArrayList<>();
    line.add(ProcessHandle.current().info().command().orElse("java"));
    line.addAll(List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xmx200m"));
    line.addAll(List.of("-cp", System.getProperty("java.class.path"), main.getName()));
    line.addAll(args);
    try {
      process = new ProcessBuilder(line).redirectErrorStream(true).start();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    listening = new Thread(this::listen, "listening");
    listening.setDaemon(true);
    listening.start();
  }

  static ToyProcess start(Class<?> main, Object... args) {
    return new ToyProcess(main, List.of(args).stream().map(String::valueOf).toList());
  }

  private void listen() {
    try (BufferedReader said = process.inputReader()) {
      said.lines().forEach(lines::add);
    } catch (IOException | UncheckedIOException e) {
      // It was killed.
    }
  }

  /**
   * Waits until it has said this often enough, but not for one that has ended.
   *
   * @return what it said behind that at last
   */
  String says(String part, int times) throws InterruptedException {
    await(
        () -> said(part) >= times || hasEnded(),
        () -> "'%s' was not said, but %s".formatted(part, lines));
    assertTrue(
        said(part) >= times, () -> "it ended before it said '%s': %s".formatted(part, lines));
    String last =
        lines.stream().filter(line -> line.contains(part)).reduce((a, b) -> b).orElseThrow();
    return last.substring(last.indexOf(part) + part.length());
  }

  /** Whether it has ended, and all that it said was heard. */
  private boolean hasEnded() {
    return !process.isAlive() && !listening.isAlive();
  }

  static void await(BooleanSupplier reached, Supplier<String> otherwise)
      throws InterruptedException {
    for (long i = 0; i < PATIENCE_SECONDS * 20; i++) {
      if (reached.getAsBoolean()) {
        return;
      }
      Thread.sleep(50);
    }
    fail(otherwise.get());
  }

  long said(String part) {
    return lines.stream().filter(line -> line.contains(part)).count();
  }

  void kill() {
    process.destroyForcibly().onExit().join();
  }

  /** STOP is as a partition: nothing comes through until it goes on. */
  void signal(String name) throws IOException, InterruptedException {
    new ProcessBuilder("kill", "-" + name, String.valueOf(process.pid())).start().waitFor();
  }

  @Override
  public void close() {
    kill();
  }
}
