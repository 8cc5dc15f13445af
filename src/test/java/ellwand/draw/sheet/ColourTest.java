package ellwand.draw.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class ColourTest {

  @Test
  void contrastIsThatOfTheStandard() {
    // WCAG 2.2, "contrast ratio": from 1 to 21.
    assertEquals(21, Colour.WHITE.contrast(new Colour(0)), 1e-9);
    assertEquals(1, Colour.GREY.contrast(Colour.GREY), 1e-9);
    // Widely published grey values on white: #767676 just passes 4.5, #777777 just does not.
    assertEquals(4.54, Colour.WHITE.contrast(new Colour(0x767676)), 0.005);
    assertEquals(4.48, Colour.WHITE.contrast(new Colour(0x777777)), 0.005);
  }

  @Test
  void wordsCanBeReadOnEveryColourTheyStandOn() {
    for (Colour fill : fills()) {
      assertTrue(Colour.INK.contrast(fill) >= 4.5, fill.hex());
    }
    assertTrue(Colour.GREY.contrast(Colour.WHITE) >= 4.5);
  }

  @Test
  void fillsDifferForPeopleWhoSeeNoRedOrNoGreen() {
    List<Colour> fills = fills();
    for (int i = 0; i < fills.size(); i++) {
      for (int j = 0; j < i; j++) {
        for (boolean green : new boolean[] {true, false}) {
          double apart = apart(seen(fills.get(i), green), seen(fills.get(j), green));
          assertTrue(apart > 0.04, fills.get(i).hex() + " " + fills.get(j).hex() + " " + apart);
        }
      }
    }
  }

  /** Seven fills, before they come round again. */
  private static List<Colour> fills() {
    List<String> kinds = IntStream.range(0, 7).mapToObj(Integer::toString).toList();
    Palette palette = new Palette(kinds);
    return kinds.stream().map(palette::fill).toList();
  }

  /** Linear RGB as a dichromat sees it: Vienot, Brettel & Mollon 1999; matrices from memory. */
  private static double[] seen(Colour colour, boolean noGreen) {
    double r = linear(colour.red());
    double g = linear(colour.green());
    double b = linear(colour.blue());
    double l = 17.8824 * r + 43.5161 * g + 4.11935 * b;
    double m = 3.45565 * r + 27.1554 * g + 3.86714 * b;
    double s = 0.0299566 * r + 0.184309 * g + 1.46709 * b;
    if (noGreen) {
      m = 0.494207 * l + 1.24827 * s;
    } else {
      l = 2.02344 * m - 2.52581 * s;
    }
    return new double[] {
      0.0809444479 * l - 0.130504409 * m + 0.116721066 * s,
      -0.0102485335 * l + 0.0540193266 * m - 0.113614708 * s,
      -0.000365296938 * l - 0.00412161469 * m + 0.693511405 * s
    };
  }

  private static double linear(int channel) {
    return Math.pow(channel / 255.0, 2.2);
  }

  private static double apart(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < 3; i++) {
      sum += (a[i] - b[i]) * (a[i] - b[i]);
    }
    return Math.sqrt(sum);
  }

  @Test
  void coloursComeRoundAgain() {
    List<String> kinds = new ArrayList<>();
    IntStream.range(0, 9).forEach(i -> kinds.add("piece " + i));
    Palette palette = new Palette(kinds);
    assertEquals(palette.fill("piece 1"), palette.fill("piece 8"));
    assertEquals(8, palette.index("piece 8"));
  }
}
