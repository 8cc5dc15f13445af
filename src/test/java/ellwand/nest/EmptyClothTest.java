package ellwand.nest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.Garments;
import ellwand.cloth.Cloth;
import ellwand.cloth.Direction;
import ellwand.cloth.Fold;
import ellwand.lay.Lay;
import ellwand.lay.Marker;
import ellwand.lay.Wanted;
import ellwand.rule.Trial;
import ellwand.work.Effort;
import ellwand.work.Request;
import ellwand.work.Seed;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class EmptyClothTest {

  private static List<Double> widths(Lay lay) {
    return EmptyCloth.of(lay).stream().map(Marker::markerWidthMm).toList();
  }

  @Test
  void foldedClothIsHalfAsWideUnlessAPieceHasNoRoomFolded() {
    Cloth cloth = Trial.cloth(500, 0, Direction.ANY_WAY, Fold.LENGTHWISE);
    Lay narrow = Trial.lay(cloth, Trial.rectangle("yoke", "1", 300, 200));
    assertEquals(List.of(250.0), widths(narrow));
    Lay wide = Trial.lay(cloth, Trial.rectangle("yoke", "1", 300, 400));
    assertEquals(List.of(500.0), widths(wide));
  }

  @Test
  void whereNothingHasRoomThereIsNone() {
    Cloth cloth = Trial.cloth(500, 0, Direction.ANY_WAY, Fold.OPEN);
    assertEquals(List.of(), widths(Trial.lay(cloth, Trial.rectangle("sail", "1", 600, 600))));
  }

  @Property(tries = 40)
  void noMarkerIsNarrower(@ForAll long seed) {
    Random random = new Random(seed);
    Fold[] folds =
        random.nextBoolean()
            ? new Fold[] {Fold.LENGTHWISE, Fold.PART}
            : new Fold[] {Fold.DOUBLE, Fold.CROSSWISE, Fold.OPEN};
    Cloth cloth = Trial.cloth(700, 2, Direction.ANY_WAY, folds);
    List<Wanted> wanted = new ArrayList<>();
    for (int i = 0; i < 1 + random.nextInt(3); i++) {
      wanted.addAll(
          Trial.wanted(
              Garments.piece(random, "piece " + i, 100, 600, "2", "1", "pair", "1 on fold"),
              "110",
              1));
    }
    Lay lay = new Lay("smock", cloth, wanted);
    double least = widths(lay).stream().mapToDouble(w -> w).min().orElse(Double.MAX_VALUE);
    for (Tried tried :
        Nester.nest(lay, List.of(folds), Request.of(Effort.ofSteps(9), new Seed(1)))) {
      tried.marker().ifPresent(m -> assertTrue(m.markerWidthMm() >= least - 1e-6));
    }
  }
}
