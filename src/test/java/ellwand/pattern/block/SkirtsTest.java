package ellwand.pattern.block;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.cutting.CutPiece;
import ellwand.cutting.Cutter;
import ellwand.geometry.Box;
import ellwand.geometry.Point;
import ellwand.pattern.Extent;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class SkirtsTest {

  private static final Extent LENGTH = new Extent.Given(400);

  private static Drafted circle(CircleSkirt.Ring ring, double waistCm) {
    return new Drafted()
        .of("waist", waistCm)
        .with("front", new CircleSkirt(Side.FRONT, ring, LENGTH));
  }

  /** [geometry] full W / 2 pi: 110 cm gives 17.5 cm; half W / pi; a quarter so twice that. */
  @Test
  void aWaistOf110CmHasTheRadiusOfItsRing() {
    for (CircleSkirt.Ring ring : CircleSkirt.Ring.values()) {
      double radius =
          switch (ring) {
            case FULL -> 1100 / (2 * Math.PI);
            case HALF -> 1100 / Math.PI;
            case QUARTER -> 2 * 1100 / Math.PI;
          };
      assertEquals(ring == CircleSkirt.Ring.FULL ? 175 : radius, radius, 0.1);
      Drafted skirt = circle(ring, 110);
      Point middle = skirt.point("front", "waist centre").plus(new Point(radius, 0));
      for (Point p : skirt.piece("front").edge("waist").line().flattened(0.001)) {
        assertEquals(radius, p.distance(middle), 0.01);
      }
      for (Point p : skirt.piece("front").edge("hem").line().flattened(0.001)) {
        assertEquals(radius + 400, p.distance(middle), 0.02);
      }
      assertEquals(275, skirt.lengthMm("front", "waist"), 0.02, "a quarter of the waist");
    }
  }

  /** [geometry] The waist's allowance lies inside its arc: the cutting radius is shorter by it. */
  @Test
  void theWaistIsCutInsideItsSewingLine() {
    Drafted skirt = circle(CircleSkirt.Ring.FULL, 110);
    CutPiece cut = Cutter.cut(skirt.piece("front"), 1, 1);
    double middle = skirt.point("front", "waist centre").x() + 1100 / (2 * Math.PI);
    double top =
        cut.cutting().points().stream()
            .filter(p -> p.y() < 1)
            .mapToDouble(Point::x)
            .max()
            .orElseThrow();
    assertEquals(1100 / (2 * Math.PI) - 10, middle - top, 0.1);
  }

  @Property(tries = 100)
  void straightAndFlaredSidesAreAlikeAndHangLevel(
      @ForAll @DoubleRange(min = 45, max = 70) double waist,
      @ForAll @DoubleRange(min = 0, max = 15) double hipMore,
      @ForAll @DoubleRange(min = 9, max = 18) double hipDepth,
      @ForAll @DoubleRange(min = 0, max = 20) double flare) {
    Optional<Extent> flared =
        flare < 1 ? Optional.empty() : Optional.of(new Extent.Given(10 * flare));
    Drafted skirt =
        new Drafted()
            .of("waist", waist)
            .of("hip", waist + hipMore)
            .of("hip depth", hipDepth)
            .with("front", new Skirt(Side.FRONT, LENGTH, flared))
            .with("back", new Skirt(Side.BACK, LENGTH, flared));
    assertEquals(skirt.lengthMm("front", "side seam"), skirt.lengthMm("back", "side seam"), 1e-6);
    Point hip = skirt.point("front", "hip side");
    assertEquals(10 * (waist + hipMore + 4) / 4, hip.y(), 1e-6);
    assertEquals(
        400 - 10 * hipDepth, hip.distance(skirt.point("front", "hem side")), 1e-6, "hangs level");
    assertEquals(10 * (waist + 2) / 4, skirt.point("back", "waist side").y(), 1e-6);
    if (flared.isPresent()) {
      Box box = Box.around(skirt.piece("back").edge("hem").line().flattened(0.1));
      assertEquals(hip.y() + 10 * flare, box.maxY(), 1e-6);
      assertTrue(box.minX() > -30, "the hem dips no more than a little");
    }
  }
}
