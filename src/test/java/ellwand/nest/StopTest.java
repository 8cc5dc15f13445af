package ellwand.nest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.cloth.Cloth;
import ellwand.cloth.Direction;
import ellwand.cloth.Fold;
import ellwand.cloth.Goods;
import ellwand.cloth.Laying;
import ellwand.cloth.Selling;
import ellwand.cloth.Wish;
import ellwand.cloth.Wishes;
import ellwand.geometry.NoFitUnion;
import ellwand.lay.Lay;
import ellwand.lay.Wanted;
import ellwand.nest.kernel.NoFit;
import ellwand.rule.Check;
import ellwand.rule.Trial;
import ellwand.work.Effort;
import ellwand.work.Progress;
import ellwand.work.Request;
import ellwand.work.Seed;
import ellwand.work.Stop;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

/** A stop that comes at any moment: nothing more is prepared, and what is returned is legal. */
class StopTest {

  private static final List<Fold> FOLDS = List.of(Fold.LENGTHWISE, Fold.OPEN);

  private static Lay lay() {
    Cloth cloth =
        new Cloth(
            "main",
            Goods.wide(700),
            Laying.in(FOLDS).heading(Direction.ANY_WAY).gap(2).offGrain(3),
            Selling.USUAL,
            new Wishes(List.of(Wish.ONE_LEFT_OVER), Wishes.USUAL_PRICE));
    List<Wanted> wanted = new ArrayList<>();
    wanted.addAll(Trial.wanted(Trial.sloped("front", "pair", 320, 210), "110", 1));
    wanted.addAll(Trial.wanted(Trial.rectangle("back", "1", 300, 250), "110", 1));
    wanted.addAll(Trial.wanted(Trial.sloped("tab", "2", 90, 60), "110", 1));
    return new Lay("smock", cloth, wanted);
  }

  @Test
  void afterItNoNoFitPolygonIsMadeAndWhatIsThereIsLegal() {
    AtomicInteger polls = new AtomicInteger();
    searched(new Stop(() -> polls.incrementAndGet() < 0), NoFitUnion::rings);
    for (int after = 0; after < polls.get(); after = 2 * after + 1) {
      int most = after;
      AtomicInteger asked = new AtomicInteger();
      AtomicInteger madeLater = new AtomicInteger();
      List<Tried> tried =
          searched(
              new Stop(() -> asked.incrementAndGet() > most),
              (still, moving) -> {
                madeLater.addAndGet(asked.get() > most ? 1 : 0);
                return NoFitUnion.rings(still, moving);
              });
      assertEquals(0, madeLater.get(), "after " + after + " polls");
      assertTrue(tried.stream().anyMatch(t -> t.marker().isPresent()));
      tried.stream()
          .flatMap(t -> t.marker().stream())
          .forEach(marker -> assertEquals(List.of(), Check.of(marker)));
    }
  }

  private static List<Tried> searched(Stop stop, NoFit noFit) {
    Request request = Request.of(Effort.ofSteps(60), new Seed(1)).with(stop).with(Progress.NONE);
    return new WaysTried(lay(), FOLDS, request, Optional.empty(), noFit).tried();
  }
}
