package ellwand.many.cluster;

import ellwand.many.Workshop;
import java.time.Duration;
import java.util.Optional;

/** Whoever asks, as a process of its own: hands in long tasks until it is killed. */
final class ToyAsker {

  private static final int TASKS = 10;

  private ToyAsker() {}

  /**
   * @param args its port
   */
  public static void main(String[] args) throws InterruptedException {
    Door door = new Door(Place.here(Integer.parseInt(args[0])), Optional.empty());
    try (Workshop workshop = HelpedWorkshop.open(new Toy(false), 1, door, System.out::println)) {
      for (int i = 0; i < TASKS; i++) {
        workshop.give(Toy.takes(Toy.LONG, "first asker"), news -> {});
      }
      Thread.sleep(Duration.ofMinutes(5).toMillis());
    }
  }
}
