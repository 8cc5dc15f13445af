package ellwand.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;

import ellwand.units.Unit;
import java.util.List;
import org.junit.jupiter.api.Test;

class CautionsTest {

  private static List<String> of(double hemAtFold, double neckAtFold) {
    return Cautions.of(
            Drawn.from(hemAtFold, 0)
                .fold(neckAtFold, 0)
                .line(300, 100, 10)
                .line(0, 100, 10)
                .hem(hemAtFold, 0, 20)
                .piece(),
            Unit.MM)
        .stream()
        .map(Caution::toString)
        .toList();
  }

  @Test
  void edgesSquareToTheFoldAreFine() {
    assertEquals(List.of(), of(0, 300));
    // 1.7 mm in 100 are just under a degree.
    assertEquals(List.of(), of(1.7, 300));
  }

  @Test
  void edgesThatMeetTheFoldAtASlantAreNamed() {
    assertEquals(
        List.of(
            "front, edge e1: it meets the fold at 84 degrees, so it will have a point where it"
                + " opens; draw it square to the fold unless that is meant"),
        of(1.7, 310));
    assertEquals(1, of(1.8, 300).size());
  }

  @Test
  void aHemThatCannotBeTurnedBackIsNamed() {
    var piece =
        Drawn.from(0, 0)
            .line(300, 100, 10)
            .line(50, 200, 10)
            .hem(20, 200, 10)
            .line(0, 0, 10)
            .piece();
    assertEquals(
        List.of(
            "front, edge e2: it meets its neighbour at 158 degrees, where an allowance cannot be"
                + " turned back, so that end is cut as a plain corner"),
        Cautions.of(piece, Unit.MM).stream().map(Caution::toString).toList());
  }
}
