package ellwand.draw.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.StringLength;
import org.apache.fontbox.afm.AFMParser;
import org.apache.fontbox.afm.CharMetric;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.encoding.GlyphList;
import org.junit.jupiter.api.Test;

class LetteringTest {

  @Test
  void isAsWideAsHelvetica() throws IOException {
    // Adobe's published metrics of Helvetica, in thousandths of the size, come with PDFBox.
    try (InputStream in =
        PDDocument.class.getResourceAsStream("/org/apache/pdfbox/resources/afm/Helvetica.afm")) {
      int compared = 0;
      for (CharMetric metric : new AFMParser(in).parse().getCharMetrics()) {
        String name = metric.getName();
        String letter = GlyphList.getAdobeGlyphList().toUnicode(name);
        if (letter != null && isCommon(letter.codePointAt(0))) {
          assertEquals(metric.getWx() / 1000, Lettering.width(letter, 1), 0.001, name);
          compared++;
        }
      }
      assertTrue(compared > 140, compared + " letters");
    }
  }

  /** ASCII, and the letters of western Europe; a few signs (middle dot, micro) do differ. */
  private static boolean isCommon(int codePoint) {
    return codePoint < 0x7F
        || codePoint >= 0xC0 && codePoint < 0x100 && Character.isLetter(codePoint);
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
