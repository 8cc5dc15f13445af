package ellwand.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.cloth.Direction;
import ellwand.rule.LegalMarkers;
import ellwand.units.Unit;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class FiguresTextTest {

  private final JobFigures job =
      JobFigures.of(
          "Tabard",
          List.of(
              Figures.of(
                  LegalMarkers.folded(Direction.ANY_WAY),
                  List.of("The neckline does not meet the fold square."))),
          Safety.of(Set.of()));

  @Test
  void readsAtAGlance() {
    assertEquals(
        """
        Tabard, size 110: 1 garment, cloth for 6.80 EUR

        main: lengthwise fold, any way
          Length to buy              0.85 m: 6.80 EUR at 8.00 EUR a metre
          Marker length              80.0 cm
          Cloth width                102.0 cm; usable 100.0 cm, this marker needs 72.0 cm
          Utilisation                26.8 %
          Wasted                     5860 cm²
          Largest left-over          50.0 x 30.0 cm, in both plies (folded, 20.0 cm from the cut end)
                                     10.0 x 90.0 cm (opened, 70.0 cm from the cut end)
          Pieces                     1 x back    900 cm²
                                     2 x sleeve  270 cm²
                                     1 x front   540 cm²
                                     2 x yoke     80 cm²
          Spare from the second ply  front
                                     yoke
          Cut from one ply           yoke

          ! The neckline does not meet the fold square.

        ! Close a rotary cutter whenever it is down and cut away from your body; a
          powered knife needs its guard down and a chain-mail glove. Count pins and
          needles back.
        """,
        FiguresText.of(job, Unit.CM));
  }

  @Test
  void isShownInYardsForThoseWhoBuyByTheYard() {
    String text = FiguresText.of(job, Unit.INCH);
    assertTrue(text.contains("a yard"), text);
    assertTrue(text.contains("sq in"), text);
  }

  /** Vilumsone-Nemes, Industrial Cutting of Textile Materials, p. 19. */
  @Test
  void praiseIsThatOfTheTrade() {
    assertEquals("", FiguresText.praise(0.699));
    assertEquals(" (good)", FiguresText.praise(0.70));
    assertEquals(" (good)", FiguresText.praise(0.799));
    assertEquals(" (very good)", FiguresText.praise(0.80));
    assertEquals(" (very good)", FiguresText.praise(0.86));
  }
}
