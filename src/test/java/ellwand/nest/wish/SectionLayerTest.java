package ellwand.nest.wish;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.geometry.NoFitUnion;
import ellwand.nest.kernel.Shape;
import ellwand.nest.kernel.Strip;
import ellwand.nest.kernel.StripForm;
import ellwand.nest.kernel.StripSearch;
import ellwand.nest.wish.Section.Spared;
import ellwand.nest.wish.SectionLayer.Asked;
import ellwand.work.Effort;
import ellwand.work.Request;
import ellwand.work.Seed;
import ellwand.work.Stop;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class SectionLayerTest {

  private static final Asked TWO_SQUARES = Asked.plain(squares(), List.of(0, 1), List.of());

  private static StripSearch squares() {
    List<StripForm> forms = List.of(StripForm.free(0, 0, 100, 0, 100));
    Shape square = new Shape(0, 0, 100, 0, 100, 100, 0, 100);
    Strip strip =
        new Strip(List.of(square), List.of(forms, forms), List.of(), Double.POSITIVE_INFINITY);
    return new StripSearch(strip, NoFitUnion::rings);
  }

  private static Optional<Section> laid(Stop stop) {
    SectionLayer layer =
        new SectionLayer(NoFitUnion::rings, Request.of(Effort.ofSteps(10), new Seed(1)).with(stop));
    return layer.lay(TWO_SQUARES, 1);
  }

  @Test
  void copiesAreLaidSideBySide() {
    assertEquals(100, laid(new Stop()).orElseThrow().lengthMm(), 1e-6);
  }

  /** A stop can come between the asking and the first place of a copy. */
  @Test
  void aStopBeforeAnythingIsLaidLeavesNone() {
    Stop stop = new Stop();
    stop.request();
    assertEquals(Optional.empty(), laid(stop));
  }

  /** Its width is a difference, which taken off again may miss the band's border by a rounding. */
  @Test
  void aRectangleAsWideAsItsBandIsSpared() {
    SectionLayer layer =
        new SectionLayer(NoFitUnion::rings, Request.of(Effort.ofSteps(200), new Seed(1)));
    for (int k = 1; k <= 50; k++) {
      double low = 0.1 * k;
      double high = low + 57.3;
      Spared spared = new Spared(low, high, 10, high - low, 0, low);
      Asked asked =
          new Asked(
              squares(), List.of(0, 1), List.of(), Optional.of(spared), SectionLayer.OffEnd.NONE);
      assertTrue(layer.lay(asked, 1).isPresent());
    }
  }
}
