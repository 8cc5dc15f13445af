package ellwand.nest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import ellwand.cloth.Cloth;
import ellwand.cloth.Direction;
import ellwand.cloth.Fold;
import ellwand.cloth.Repeat;
import ellwand.cutting.CutPiece;
import ellwand.lay.Lay;
import ellwand.lay.Marker;
import ellwand.lay.Wanted;
import ellwand.pattern.Asks;
import ellwand.pattern.Bars;
import ellwand.pattern.Grain;
import ellwand.pattern.Mark;
import ellwand.pattern.Match;
import ellwand.problem.InputException;
import ellwand.rule.Asking;
import ellwand.rule.Check;
import ellwand.rule.EveryPlace;
import ellwand.rule.Trial;
import ellwand.units.Unit;
import ellwand.work.Effort;
import ellwand.work.Request;
import ellwand.work.Seed;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.statistics.Statistics;
import org.junit.jupiter.api.Test;

/**
 * Random garments with random matches on stripes, checks and half drops: a marker is made just
 * where one turns up when each copy in turn is tried on every place of the repeat of open cloth.
 * Lengths are multiples of 40 mm, so that places 20 mm apart are enough to try.
 */
class MatchesFoundTest {

  private static final List<Fold> FOLDS =
      List.of(Fold.OPEN, Fold.LENGTHWISE, Fold.PART, Fold.DOUBLE, Fold.TURNED);

  private static final List<String> MARKS = List.of("near", "top", "side", "hem");

  @Property(tries = 50, shrinking = ShrinkingMode.OFF)
  void aMarkerIsMadeJustWhereTheMatchesCanBeMet(@ForAll long seed) {
    boolean there = isMadeJustWhereItIsThere(seed);
    Statistics.label("can be met").collect(there);
    Statistics.label("can be met")
        .coverage(
            c -> {
              c.check(true).count(n -> n > 0);
              c.check(false).count(n -> n > 0);
            });
  }

  /** What two matches of a piece ask for, each of which leaves two places, need not be the same. */
  @Test
  void placesThatEachMatchLeavesMustServeAll() {
    assertFalse(isMadeJustWhereItIsThere(-387));
  }

  private static boolean isMadeJustWhereItIsThere(long seed) {
    Random random = new Random(seed);
    Lay open = lay(random);
    // However it is folded some of it can lie opened.
    List<Fold> folds =
        open.cloth().repeat().orElseThrow().evenAcross() ? FOLDS : List.of(Fold.OPEN);
    Fold fold = folds.get(random.nextInt(folds.size()));
    Cloth cloth = open.cloth().lying(List.of(fold));
    Lay lay = open.on(cloth);
    boolean there = EveryPlace.serves(lay, 20);
    Optional<Marker> made;
    try {
      made = Optional.of(Nester.nest(lay, fold, Request.of(Effort.ofSteps(2), new Seed(seed))));
    } catch (InputException e) {
      made = Optional.empty();
    }
    assertEquals(
        there,
        made.isPresent(),
        () ->
            there
                + " "
                + fold
                + lay.matches()
                + lay.cloth().repeat()
                + lay.wanted().stream().map(w -> w.cut().piece() + "\n").toList());
    made.ifPresent(
        m -> assertEquals(List.of(), Check.of(m).stream().map(f -> f.sentence(Unit.MM)).toList()));
    return there;
  }

  private static Lay lay(Random random) {
    boolean halfDrop = random.nextInt(4) == 0;
    double along = halfDrop || random.nextInt(3) > 0 ? 80 + 40 * random.nextInt(2) : 0;
    double across =
        halfDrop || along == 0 || random.nextBoolean() ? 80 + 40 * random.nextInt(2) : 0;
    Repeat repeat =
        new Repeat(
            along,
            across,
            halfDrop,
            true,
            random.nextBoolean(),
            40 * random.nextInt(3),
            // Counted from the edge, of which 10 mm are selvedge.
            10 + 40 * random.nextInt(3),
            Optional.empty());
    Cloth cloth = Trial.cloth(1000, 0, Direction.ONE_WAY, Fold.OPEN).repeating(repeat);
    List<CutPiece> pieces = new ArrayList<>();
    int count = 2 + random.nextInt(2);
    for (int i = 0; i < count; i++) {
      pieces.add(leaning(random, "piece " + i));
    }
    List<Match> matches = new ArrayList<>();
    for (int i = 0; i <= random.nextInt(3); i++) {
      matches.add(
          new Match(
              "piece " + random.nextInt(count),
              any(random),
              "piece " + random.nextInt(count),
              any(random),
              Bars.values()[random.nextInt(3)]));
    }
    List<Wanted> wanted = new ArrayList<>();
    pieces.forEach(p -> wanted.addAll(Trial.wanted(p, "110", 1)));
    return new Lay("smock", cloth, wanted, matches);
  }

  /** The sides of garments rather than the rest. */
  private static String any(Random random) {
    return random.nextBoolean() ? "side" : MARKS.get(random.nextInt(MARKS.size()));
  }

  private static CutPiece leaning(Random random, String name) {
    double width = 80 + 40 * random.nextInt(3);
    double lean = random.nextInt(3) == 0 ? 240 : 0;
    String cut = List.of("1", "pair", "pair", "1 on fold").get(random.nextInt(4));
    CutPiece bare =
        Trial.piece(
            name, Grain.ALONG, cut, Trial.points(0, 0, 320, 0, 320, width, 0, width + lean));
    List<Mark> marks =
        List.of(
            new Mark("near", "e0", 40 * random.nextInt(5)),
            new Mark("top", "e1", 40),
            // Half way down a side of 400 that leans by 240.
            new Mark("side", "e2", lean > 0 ? 200 : 40 * random.nextInt(5)),
            new Mark("hem", "e3", 40));
    // The first mark wants a place.
    List<Mark> turned = new ArrayList<>(marks);
    boolean onFold = cut.contains("fold");
    // A half asks for its middle on a bar, if for anything: both sides of a garment are alike.
    Collections.rotate(turned, onFold ? 0 : random.nextInt(4));
    Optional<Asks.Place> place =
        random.nextInt(3) == 0
            ? Optional.of(
                new Asks.Place(
                    turned.get(0).words(),
                    stated(random),
                    onFold ? Optional.of(0.0) : stated(random),
                    false))
            : Optional.empty();
    return Asking.marked(bare, turned, place);
  }

  private static Optional<Double> stated(Random random) {
    return random.nextBoolean() ? Optional.of(40.0 * random.nextInt(3)) : Optional.empty();
  }
}
