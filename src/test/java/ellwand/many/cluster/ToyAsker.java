package ellwand.many.cluster;

import java.time.Duration;
import java.util.Optional;

/** Whoever asks, as a process of its own: hands in long tasks until it is killed. */
final class ToyAsker {

  private static final int TASKS = 10;

  private ToyAsker() {}

  /** Says its place as {@code open at ...}. */
  public static void main(String[] args) throws InterruptedException {
    Door door = new Door(Place.here(0), Optional.empty());
    try (HelpedWorkshop workshop = HelpedWorkshop.open(Toy.here(), 1, door, System.out::println)) {
      System.out.println("open at " + workshop.place().port());
      for (int i = 0; i < TASKS; i++) {
        workshop.give(Toy.takes(Toy.LONG, "first asker"), news -> {});
      }
      Thread.sleep(Duration.ofMinutes(5).toMillis());
    }
  }
}
