package ellwand.draw;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.CharRange;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.StringLength;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts.FontName;
import org.junit.jupiter.api.Test;

class LetteringTest {

  @Property(tries = 200)
  void isAsWideAsHelvetica(@ForAll @CharRange(from = ' ', to = '~') String words)
      throws IOException {
    // Adobe's published metrics of Helvetica, in thousandths of the size, come with PDFBox.
    double helvetica = new PDType1Font(FontName.HELVETICA).getStringWidth(words) / 1000;
    assertEquals(helvetica, Lettering.width(words, 1), 0.001 * (words.length() + 1));
  }

  @Property(tries = 200)
  void shortenedWordsFit(
      @ForAll @StringLength(max = 60) String words,
      @ForAll @DoubleRange(min = 4, max = 80) double mm) {
    String clean = Lettering.clean(words);
    String shorter = Lettering.shortened(clean, 3, mm);
    assertTrue(Lettering.width(shorter, 3) <= mm + 1e-9, shorter);
    assertEquals(Lettering.width(clean, 3) <= mm, shorter.equals(clean));
  }

  @Test
  void sentencesAreBrokenBetweenWords() {
    String words = "Lay the piece with its grain line along the cloth";
    List<String> lines = Lettering.wrapped(words, 3, 30);
    assertTrue(lines.size() > 2);
    assertEquals(words, String.join(" ", lines));
    lines.forEach(l -> assertTrue(Lettering.width(l, 3) <= 30, l));
  }

  @Test
  void whatXmlDoesNotAllowIsLeftOut() {
    assertEquals("a b c", Lettering.clean("a\tb\nc\u0000\u0007\uFFFE\uD800"));
    assertEquals("裁 \uD83E\uDEA1", Lettering.clean("裁 \uD83E\uDEA1"));
  }

  @Test
  void lettersThatTheTypeLacksAreMarked() {
    assertEquals("Ålesund złoty кант ?", Lettering.printable("Ålesund złoty кант 裁"));
  }
}
