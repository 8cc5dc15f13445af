package ellwand.nest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.lay.Copy;
import ellwand.lay.Form;
import ellwand.lay.Marker;
import ellwand.rule.Check;
import ellwand.rule.Finding;
import ellwand.rule.Shelves;
import ellwand.units.Unit;
import ellwand.work.Effort;
import ellwand.work.Request;
import ellwand.work.Seed;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** Markers gone on from, whatever hands have made of them. */
class TidyRandomTest {

  private static Optional<Marker> tidied(Marker start, Set<Integer> pinned, List<Marker> heard) {
    return Nester.tidy(start, pinned, Request.of(Effort.ofSteps(60), new Seed(1)), heard::add);
  }

  /** Every second copy pushed about, some off the cloth. */
  private static Marker scattered(Marker marker, Random random) {
    List<Copy> copies = new ArrayList<>(marker.copies());
    for (int i = 0; i < copies.size(); i += 2) {
      copies.set(
          i,
          copies
              .get(i)
              .shifted(120 * (random.nextDouble() - 0.5), 120 * (random.nextDouble() - 0.5)));
    }
    return marker.with(copies).byHand();
  }

  private static void sameButForPlaces(Marker start, Marker end, Set<Integer> pinned) {
    for (int i = 0; i < start.copies().size(); i++) {
      Copy was = start.copies().get(i);
      Copy is = end.copies().get(i);
      assertEquals(was.piece(), is.piece());
      assertEquals(was.garment(), is.garment());
      assertEquals(was.zone(), is.zone());
      assertEquals(was.motion().unshifted(), is.motion().unshifted());
      if (pinned.contains(i)) {
        assertEquals(was.motion(), is.motion());
      }
    }
  }

  @Property(tries = 25)
  void aLegalMarkerBecomesNoLongerAndWhatIsPinnedStays(@ForAll long seed) {
    Random random = new Random(seed);
    Marker start = Shelves.random(seed);
    Set<Integer> pinned = Set.of(random.nextInt(start.copies().size()));
    List<Marker> heard = new ArrayList<>();
    Marker end = tidied(start, pinned, heard).orElseThrow();
    assertEquals(List.of(), Check.of(end));
    assertTrue(end.clothLengthMm() <= start.clothLengthMm() + 1e-6);
    sameButForPlaces(start, end, pinned);
    heard.forEach(marker -> assertEquals(List.of(), Check.of(marker)));
  }

  @Property(tries = 25)
  void whatOverlapsIsParted(@ForAll long seed) {
    Random random = new Random(seed);
    Marker start = scattered(Shelves.random(seed), random);
    // Every second one was not scattered, so that it lies where it may.
    Set<Integer> pinned = start.copies().size() > 3 ? Set.of(1) : Set.of();
    Marker end = tidied(start, pinned, new ArrayList<>()).orElseThrow();
    assertEquals(List.of(), Check.of(end).stream().map(f -> f.sentence(Unit.MM)).toList());
    sameButForPlaces(start, end, pinned);
  }

  @Property(tries = 10)
  void twoThatArePinnedOnOneAnotherStaySo(@ForAll long seed) {
    Marker laid = Shelves.random(seed);
    Copy first = laid.copies().get(0);
    int last = laid.copies().size() - 1;
    Copy other = laid.copies().get(last);
    if (last > 0 && other.form() != Form.HALF && first.form() != Form.HALF) {
      Marker start =
          laid.with(
              last,
              other.shifted(
                  first.outline().box().centre().x() - other.outline().box().centre().x(),
                  first.outline().box().centre().y() - other.outline().box().centre().y()));
      List<Finding> overlap = Check.of(start);
      assertTrue(!overlap.isEmpty());
      assertEquals(Optional.empty(), tidied(start, Set.of(0, last), new ArrayList<>()));
    }
  }
}
