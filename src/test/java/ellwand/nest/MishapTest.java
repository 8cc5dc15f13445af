package ellwand.nest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.cloth.Cloth;
import ellwand.cloth.Direction;
import ellwand.cloth.Fold;
import ellwand.cloth.Goods;
import ellwand.cloth.Laying;
import ellwand.cloth.Selling;
import ellwand.cloth.Wish;
import ellwand.cloth.Wishes;
import ellwand.cutting.CutPiece;
import ellwand.geometry.NoFitUnion;
import ellwand.lay.Lay;
import ellwand.lay.Marker;
import ellwand.lay.Wanted;
import ellwand.nest.kernel.NoFit;
import ellwand.rule.Check;
import ellwand.rule.Trial;
import ellwand.work.Effort;
import ellwand.work.Progress;
import ellwand.work.Request;
import ellwand.work.Seed;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

/** A mistake of ours in one part of a search, made on purpose, takes nothing from the others. */
class MishapTest {

  private static final List<Fold> FOLDS = List.of(Fold.LENGTHWISE, Fold.OPEN);

  /** Searched in two folds, pieces turned, two wishes served. */
  private static final Lay LAY = lay();

  private static Lay lay() {
    Cloth cloth =
        new Cloth(
            "main",
            Goods.wide(700),
            Laying.in(FOLDS).heading(Direction.ANY_WAY).gap(2).offGrain(3),
            Selling.USUAL,
            new Wishes(List.of(Wish.STRAIGHT_CUTS, Wish.ONE_LEFT_OVER), Wishes.USUAL_PRICE));
    List<Wanted> wanted = new ArrayList<>();
    for (int garment = 1; garment <= 2; garment++) {
      for (CutPiece piece :
          List.of(
              Trial.sloped("front", "pair", 320, 210),
              Trial.rectangle("back", "1", 300, 250),
              Trial.sloped("tab", "1", 90, 60))) {
        wanted.addAll(Trial.wanted(piece, "110", garment));
      }
    }
    return new Lay("smock", cloth, wanted);
  }

  private static List<Tried> searched(NoFit noFit, Progress progress) {
    Request request = Request.of(Effort.ofSteps(40), new Seed(1)).with(progress);
    return new WaysTried(LAY, FOLDS, request, Optional.empty(), noFit).tried();
  }

  /** Counts, and fails at one of the calls. */
  private static NoFit failingAt(int call, AtomicInteger calls) {
    return (still, moving) -> {
      if (calls.incrementAndGet() == call) {
        throw new IllegalStateException("made on purpose");
      }
      return NoFitUnion.rings(still, moving);
    };
  }

  @Test
  void whateverFailsTheMarkersFoundBesidesAreKeptAndTheFailureIsTold() {
    AtomicInteger all = new AtomicInteger();
    List<Tried> without = searched(failingAt(0, all), Progress.NONE);
    assertTrue(without.stream().anyMatch(tried -> tried.pleasing().isPresent()));
    for (int call = 1; call <= all.get(); call += 1 + all.get() / 25) {
      List<String> failed = new ArrayList<>();
      List<Tried> tried =
          searched(
              failingAt(call, new AtomicInteger()),
              news -> {
                if (news instanceof Progress.Mishap mishap) {
                  assertEquals("made on purpose", mishap.why().getMessage());
                  failed.add(mishap.part());
                }
              });
      assertEquals(1, failed.size(), "call " + call);
      for (Tried one : tried) {
        Marker marker = one.marker().orElseThrow();
        assertEquals(List.of(), Check.of(marker));
        one.pleasing().ifPresent(pleasing -> assertEquals(List.of(), Check.of(pleasing)));
        assertFalse(marker.stoppedEarly());
      }
    }
  }

  @Test
  void whereNobodyHearsTheFailureIsThrown() {
    assertThrows(
        IllegalStateException.class,
        () -> searched(failingAt(5, new AtomicInteger()), Progress.NONE));
  }

  @Test
  void whereNothingCanBeSearchedPiecesLieOneBehindTheOther() {
    NoFit never =
        (still, moving) -> {
          throw new IllegalStateException("made on purpose");
        };
    List<Progress.News> news = new ArrayList<>();
    for (Tried tried : searched(never, news::add)) {
      assertEquals(List.of(), Check.of(tried.marker().orElseThrow()));
    }
    assertTrue(news.stream().anyMatch(Progress.Mishap.class::isInstance));
  }
}
