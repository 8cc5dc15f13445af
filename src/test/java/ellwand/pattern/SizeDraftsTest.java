package ellwand.pattern;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import ellwand.geometry.Point;
import ellwand.problem.InputException;
import ellwand.units.Unit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class SizeDraftsTest {

  /** A piece that starts from another, and is called otherwise. */
  private record Like(String name, String other) implements Drafting {

    @Override
    public Draft in(SizeDrafts drafts) {
      Draft from = drafts.of(other);
      return new Draft(
          name,
          from.nodes(),
          from.namedEdges(),
          from.allowanceMm(),
          from.fold(),
          from.grain(),
          from.notches(),
          from.innerLines(),
          from.cuts());
    }
  }

  private static Outlined like(String name, String other) {
    return new Outlined(new Like(name, other), Optional.empty(), Optional.empty());
  }

  private static Outlined square(double side) {
    return new Outlined(
        new Draft(
            "square",
            List.of(node("a", 0, 0), node("b", side, 0), node("c", side, side), node("d", 0, side)),
            List.of(),
            10,
            Optional.empty(),
            Grain.ALONG,
            List.of(),
            List.of(),
            List.of(new Cut("main", 1, Cut.How.WHOLE))));
  }

  private static Draft.Node node(String name, double x, double y) {
    return new Draft.Node(Optional.of(name), new Point(x, y), Optional.empty());
  }

  private static Design design(Outlined... pieces) {
    Map<String, Map<String, GradeRule>> rules =
        Map.of("square", Map.of("b", new GradeRule.Step(new Point(30, 0))));
    return new Design(
        "cloths",
        Unit.CM,
        new Sizes(List.of("S", "M"), "S", rules),
        List.of(pieces),
        List.of(),
        List.of(),
        List.of());
  }

  private static String refused(Design design) {
    return assertThrows(InputException.class, () -> design.in("S")).getMessage();
  }

  @Test
  void aPieceStartsFromAnotherAsItIsInThatSize() {
    Design design = design(like("flap", "pocket"), like("pocket", "square"), square(100));
    assertEquals(100, design.in("S").drawn().get(0).edge("a to b").line().length(), 1e-9);
    assertEquals(130, design.in("M").drawn().get(0).edge("a to b").line().length(), 1e-9);
  }

  @Test
  void aCircleOfPiecesIsRefused() {
    assertEquals(
        "piece flap: it is made from pocket, which is made from flap again. Let one start from"
            + " something else.\npiece pocket: it is made from flap, which is made from pocket"
            + " again. Let one start from something else.",
        refused(design(like("flap", "pocket"), like("pocket", "flap"))));
    assertEquals(
        "piece flap: it is made from itself. Let one start from something else.",
        refused(design(like("flap", "flap"))));
  }

  @Test
  void aPieceThatIsNotThereIsNamed() {
    assertEquals(
        "piece flap: there is no piece pokcet with an outline. Use one of flap, square.",
        refused(design(like("flap", "pokcet"), square(100))));
  }

  @Test
  void whatIsWrongWithAPieceIsToldAsItsOwn() {
    Outlined crossed =
        new Outlined(
            new Drafting() {
              @Override
              public String name() {
                return "pocket";
              }

              @Override
              public Draft in(SizeDrafts drafts) {
                throw InputException.of("it is torn", "Mend it");
              }
            },
            Optional.empty(),
            Optional.empty());
    assertEquals(
        "piece pocket: it is torn. Mend it.\npiece pocket: it is torn. Mend it.",
        refused(design(like("flap", "pocket"), crossed)));
  }
}
