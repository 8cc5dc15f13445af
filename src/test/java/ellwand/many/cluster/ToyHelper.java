package ellwand.many.cluster;

import ellwand.work.Stop;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Helpers as a process of their own, which do {@link Toy} work. */
final class ToyHelper {

  private ToyHelper() {}

  /**
   * @param args where to join, how many helpers of one core each
   */
  public static void main(String[] args) throws InterruptedException {
    List<Thread> helpers = new ArrayList<>();
    for (int i = 0; i < Integer.parseInt(args[1]); i++) {
      Helper helper =
          new Helper(
              Toy.there(System.out::println),
              1,
              () -> Place.known(args[0], 0),
              Optional.empty(),
              Optional.empty(),
              System.out::println);
      helpers.add(new Thread(() -> run(helper)));
    }
    helpers.forEach(Thread::start);
    for (Thread helper : helpers) {
      helper.join();
    }
    System.exit(0);
  }

  private static void run(Helper helper) {
    try {
      helper.run(new Stop());
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }
}
