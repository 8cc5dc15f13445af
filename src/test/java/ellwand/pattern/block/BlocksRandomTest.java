package ellwand.pattern.block;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.geometry.Point;
import ellwand.pattern.Extent;
import ellwand.pattern.Notch;
import ellwand.pattern.Piece;
import ellwand.problem.InputException;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

/**
 * Children of any measures within the usual ranges. That an outline is simple is tried whenever a
 * piece is made.
 */
class BlocksRandomTest {

  private static Arbitrary<Double> between(double low, double high) {
    return Arbitraries.doubles().between(low, high);
  }

  @Provide
  Arbitrary<Drafted> upperBodies() {
    return Combinators.combine(
            between(46, 84),
            between(0.35, 0.39),
            between(23, 34),
            between(0.19, 0.26),
            between(8, 18),
            between(0.24, 0.34),
            between(20, 42),
            between(2, 14))
        .as(
            (chest, back, neck, depth, below, cap, inner, ease) ->
                new Drafted()
                    .of("chest", chest)
                    .of("back width", chest * back)
                    .of("neck", neck)
                    .of("armhole depth", chest * depth)
                    .of("back waist", chest * depth + below)
                    .of("arm", inner + 2 * chest * depth * cap)
                    .of("inner arm", inner)
                    .of("wrist", 10 + chest / 15)
                    .easier("chest", ease)
                    .with("front", new Bodice(Side.FRONT))
                    .with("back", new Bodice(Side.BACK))
                    .with(
                        "sleeve",
                        new Sleeve(
                            List.of(new PieceEdge("front", "armhole")),
                            List.of(new PieceEdge("back", "armhole")))));
  }

  @Property(tries = 200)
  void bodiceAndSleeveFitOneAnother(@ForAll("upperBodies") Drafted body) {
    assertEquals(body.lengthMm("front", "shoulder"), body.lengthMm("back", "shoulder"), 1e-6);
    assertEquals(body.lengthMm("front", "side seam"), body.lengthMm("back", "side seam"), 1e-6);
    assertEquals(body.lengthMm("sleeve", "front seam"), body.lengthMm("sleeve", "back seam"), 1e-6);
    assertEquals(body.lengthMm("front", "armhole") + 5, body.lengthMm("sleeve", "front cap"), 0.05);
    assertEquals(body.lengthMm("back", "armhole") + 5, body.lengthMm("sleeve", "back cap"), 0.05);
    assertTrue(body.lengthMm("front", "armhole") > body.lengthMm("back", "armhole"));
  }

  /** Ease lies above the notches: up to them cap and armhole are of one length. */
  @Property(tries = 50)
  void notchesOfCapAndArmholeMeet(@ForAll("upperBodies") Drafted body) {
    assertEquals(
        fromUnderarmMm(body.piece("front"), "armhole"),
        fromUnderarmMm(body.piece("sleeve"), "front cap"),
        1e-6);
    assertEquals(
        fromUnderarmMm(body.piece("back"), "armhole"),
        fromUnderarmMm(body.piece("sleeve"), "back cap"),
        1e-6);
  }

  private static double fromUnderarmMm(Piece piece, String edge) {
    Notch notch =
        piece.notches().stream().filter(n -> n.edge().equals(edge)).findFirst().orElseThrow();
    Point start = piece.edge(edge).line().start();
    Point end = piece.edge(edge).line().end();
    return start.x() < end.x() ? notch.atMm() : piece.edge(edge).line().length() - notch.atMm();
  }

  @Provide
  Arbitrary<Drafted> lowerBodies() {
    return Combinators.combine(
            between(50, 84), between(0, 16), between(15, 26), between(20, 80), between(24, 44))
        .as(
            (hip, ease, rise, leg, hem) ->
                new Drafted()
                    .of("hip", hip)
                    .of("rise", rise)
                    .of("inside leg", leg)
                    .easier("hip", ease)
                    .with("front", new Trousers(Side.FRONT, new Extent.Given(10 * hem)))
                    .with("back", new Trousers(Side.BACK, new Extent.Given(10 * hem))));
  }

  @Property(tries = 200)
  void legsFitOneAnother(@ForAll("lowerBodies") Drafted body) {
    assertEquals(body.lengthMm("front", "outside leg"), body.lengthMm("back", "outside leg"), 1e-6);
    assertEquals(body.lengthMm("front", "inside leg"), body.lengthMm("back", "inside leg"), 0.01);
    assertTrue(body.lengthMm("front", "crotch seam") < body.lengthMm("back", "crotch seam"));
  }

  @Provide
  Arbitrary<Drafted> anyNumbers() {
    return between(0.01, 10_000)
        .list()
        .ofSize(13)
        .flatMap(
            cm ->
                between(-300, 300)
                    .list()
                    .ofSize(6)
                    .map(
                        ease ->
                            new Drafted()
                                .of("chest", cm.get(0))
                                .of("back width", cm.get(1))
                                .of("neck", cm.get(2))
                                .of("armhole depth", cm.get(3))
                                .of("back waist", cm.get(4))
                                .of("arm", cm.get(5))
                                .of("inner arm", cm.get(6))
                                .of("wrist", cm.get(7))
                                .of("waist", cm.get(8))
                                .of("hip", cm.get(9))
                                .of("hip depth", cm.get(10))
                                .of("rise", cm.get(11))
                                .of("inside leg", cm.get(12))
                                .easier("chest", ease.get(0))
                                .easier("armhole", ease.get(1))
                                .easier("wrist", ease.get(2))
                                .easier("waist", ease.get(3))
                                .easier("hip", ease.get(4))
                                .easier("rise", ease.get(5))));
  }

  /** Slips of the pen: whatever stands in the table, a block is drafted, or refused in words. */
  @Property(tries = 200)
  void whatCannotBeIsRefused(@ForAll("anyNumbers") Drafted body) {
    Extent some = new Extent.Given(300);
    for (Side side : Side.values()) {
      List<Block> blocks =
          List.of(
              new Bodice(side),
              new Skirt(side, some, Optional.of(new Extent.Given(50))),
              new CircleSkirt(side, CircleSkirt.Ring.HALF, some),
              new Trousers(side, some));
      for (Block block : blocks) {
        String name = block.words();
        try {
          assertEquals(name, body.only(name, block).piece(name).name());
        } catch (InputException e) {
          assertTrue(!e.problems().isEmpty(), name);
        }
      }
    }
    try {
      List<PieceEdge> armhole = List.of(new PieceEdge("front", "armhole"));
      body.only("front", new Bodice(Side.FRONT)).with("sleeve", new Sleeve(armhole, armhole));
      assertEquals("sleeve", body.piece("sleeve").name());
    } catch (InputException e) {
      assertTrue(!e.problems().isEmpty());
    }
  }

  /** [geometry] Where the cap is flat, its line is as long as it is wide: so is a half of it. */
  @Test
  void theLowestCapIsNearlyAsWideAsItsLine() {
    Drafted body =
        new Drafted()
            .of("chest", 60)
            .of("back width", 22.5)
            .of("neck", 27)
            .of("armhole depth", 14)
            .of("back waist", 26)
            .of("arm", 31)
            .of("inner arm", 30)
            .of("wrist", 13)
            .with("front", new Bodice(Side.FRONT))
            .with("back", new Bodice(Side.BACK))
            .with(
                "sleeve",
                new Sleeve(
                    List.of(new PieceEdge("front", "armhole")),
                    List.of(new PieceEdge("back", "armhole"))));
    assertEquals(body.lengthMm("sleeve", "back cap"), body.point("sleeve", "underarm back").y(), 1);
  }
}
