package ellwand.many.cluster;

import ellwand.many.Craft;
import ellwand.many.Task;
import ellwand.work.Stop;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.function.Consumer;

/** Work whose result anybody can foretell, and all that can go wrong with work. */
final class Toy implements Craft {

  static final Duration LONG = Duration.ofMinutes(5);

  /** There some work goes wrong that goes well elsewhere. */
  private final boolean helper;

  private final Consumer<String> says;

  private Toy(boolean helper, Consumer<String> says) {
    this.helper = helper;
    this.says = says;
  }

  /** At whoever asks. */
  static Toy here() {
    return new Toy(false, text -> {});
  }

  /** At a helper. */
  static Toy there(Consumer<String> says) {
    return new Toy(true, says);
  }

  /** Takes so long, tells news every 100 ms, and is cut short by a stop. */
  static Task takes(Duration time, String text) {
    return task("takes", time.toMillis() + " " + text, LONG);
  }

  /** What comes of it. */
  static String made(String text) {
    return "made of " + text;
  }

  static String text(byte[] bytes) {
    return new String(bytes, StandardCharsets.UTF_8);
  }

  static Task echo(byte[] bytes) {
    return new Task("echo", bytes, 1, LONG);
  }

  static Task fails(String why) {
    return task("fails", "0 " + why, LONG);
  }

  /** Hangs at a helper for minutes, whatever one tells it; here it takes no time. */
  static Task hangs(Duration most) {
    return task("hangs", "0 hanging", most);
  }

  private static Task task(String kind, String asked, Duration most) {
    return new Task(kind, asked.getBytes(StandardCharsets.UTF_8), 1, most);
  }

  @Override
  public byte[] work(Task task, Stop stop, Consumer<byte[]> news) {
    if (task.kind().equals("echo")) {
      return task.asked();
    }
    String[] asked = text(task.asked()).split(" ", 2);
    if (helper) {
      says.accept("begun " + asked[1]);
    }
    switch (task.kind()) {
      case "fails" -> throw new IllegalStateException(asked[1]);
      case "hangs" -> {
        long end = System.nanoTime() + LONG.toNanos();
        while (helper && System.nanoTime() < end) {
          pause();
        }
      }
      default -> {
        long end = System.nanoTime() + Duration.ofMillis(Long.parseLong(asked[0])).toNanos();
        while (System.nanoTime() < end && !stop.wanted()) {
          news.accept(asked[1].getBytes(StandardCharsets.UTF_8));
          pause();
        }
        if (stop.wanted()) {
          says.accept("stopped " + asked[1]);
          return "stopped".getBytes(StandardCharsets.UTF_8);
        }
      }
    }
    return made(asked[1]).getBytes(StandardCharsets.UTF_8);
  }

  private static void pause() {
    try {
      Thread.sleep(100);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }
}
