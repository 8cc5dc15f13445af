package ellwand.pattern;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.geometry.Point;
import ellwand.problem.InputException;
import ellwand.units.Unit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class OutlinedTest {

  private static final Cut FOLDED = new Cut("main", 1, Cut.How.FOLD);
  private static final Cut PAIR = new Cut("main", 1, Cut.How.PAIR);

  /** Half a piece, 30 x 20 cm. */
  private static Outlined half(Cut... cuts) {
    return new Outlined(
        new Draft(
            "half",
            List.of(
                node("bottom", 0, 0),
                node("bottom side", 0, 200),
                node("top side", 300, 200),
                node("top", 300, 0)),
            List.of(
                new Draft.NamedEdge("middle", "top", "bottom", Optional.<Allowance>empty(), false)),
            Allowance.of(10),
            Optional.of("middle"),
            Grain.ALONG,
            List.of(),
            List.of(),
            List.of(cuts)));
  }

  private static Draft.Node node(String name, double x, double y) {
    return new Draft.Node(Optional.of(name), new Point(x, y), Optional.empty());
  }

  private static Outlined copy(Optional<String> fold, Cut... cuts) {
    return new Outlined(
        "copy",
        new Start.Copy("half", Optional.empty()),
        List.of(),
        new Finish(
            Optional.of(Allowance.of(12)),
            Map.of(),
            fold,
            Optional.empty(),
            List.of(),
            List.of(),
            List.of(cuts)),
        Optional.empty(),
        Optional.empty());
  }

  private static Piece made(Outlined... pieces) {
    Design design =
        new Design(
            "bag", Unit.CM, Sizes.only("one"), List.of(pieces), List.of(), List.of(), List.of());
    return design.in("one").drawn().get(pieces.length - 1);
  }

  @Test
  void aCopyThatIsCutInPairsHasASeamInThePlaceOfTheFold() {
    Piece pair = made(half(FOLDED), copy(Optional.empty(), PAIR));
    assertTrue(pair.fold().isEmpty());
    assertEquals(12, pair.edge("middle").allowanceMm(), 1e-9);
    Piece folded = made(half(FOLDED), copy(Optional.empty(), FOLDED));
    assertEquals(Optional.of("middle"), folded.fold());
    assertEquals(0, folded.edge("middle").allowanceMm(), 1e-9);
  }

  @Test
  void whatIsSaidOfAFoldIsHeldToIt() {
    assertThrows(InputException.class, () -> made(half(FOLDED), copy(Optional.of("middle"), PAIR)));
    assertThrows(InputException.class, () -> made(half(PAIR)));
  }
}
