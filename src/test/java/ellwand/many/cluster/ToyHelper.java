package ellwand.many.cluster;

import ellwand.problem.InputException;
import ellwand.work.Stop;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jline.utils.Signals;

/** Helpers as a process of their own, which do {@link Toy} work. */
final class ToyHelper {

  private ToyHelper() {}

  /**
   * @param args where to join, how many helpers of one core each, their version, perhaps their keys
   */
  public static void main(String[] args) throws InterruptedException {
    Stop stop = new Stop();
    Signals.register("TERM", stop::request);
    Optional<Path> keys = args.length > 3 ? Optional.of(Path.of(args[3])) : Optional.empty();
    List<Thread> helpers = new ArrayList<>();
    for (int i = 0; i < Integer.parseInt(args[1]); i++) {
      Helper helper =
          new Helper(
              new Toy(true),
              1,
              () -> Place.of(args[0], 0),
              Optional.empty(),
              keys,
              System.out::println,
              args[2]);
      helpers.add(new Thread(() -> run(helper, stop)));
    }
    helpers.forEach(Thread::start);
    for (Thread helper : helpers) {
      helper.join();
    }
    System.exit(0);
  }

  private static void run(Helper helper, Stop stop) {
    try {
      helper.run(stop);
      System.out.println("ended");
    } catch (InputException e) {
      System.out.println("refused: " + e.getMessage());
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }
}
