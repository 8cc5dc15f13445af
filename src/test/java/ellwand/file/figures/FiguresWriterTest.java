package ellwand.file.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;

import ellwand.cloth.Fold;
import ellwand.draw.marker.Samples;
import ellwand.figures.Figures;
import ellwand.figures.FoldTried;
import ellwand.figures.JobFigures;
import ellwand.figures.ToBuy;
import ellwand.lay.Marker;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/**
 * The file that other programs read. After a wanted change, write it anew with {@code mvn test
 * -Dtest=FiguresWriterTest -Dellwand.golden=write} and read it.
 */
class FiguresWriterTest {

  private static final Path FILE = Path.of("src/test/resources/ellwand/file/figures.json");

  @Test
  void everyFigureHasTheNameAndPlaceItHad() throws IOException {
    Marker bib = Samples.bib();
    Figures folded =
        Figures.of(
            bib,
            List.of("Stay the top edge before the bib is turned."),
            List.of(
                new FoldTried(Fold.OPEN, 230.5, 230.5, 300, "", "the gap has no room"),
                new FoldTried(Fold.LENGTHWISE, 205, 205, 300, ""),
                new FoldTried(Fold.PART, 0, 0, 0, "nothing lies on its fold")),
            Optional.empty());
    JobFigures job =
        JobFigures.of(
            "Quay bib",
            1,
            List.of(folded, Samples.wished(bib), Samples.wished(Samples.jacket())),
            List.of(
                new ToBuy(
                    ToBuy.Kind.TRIM,
                    "zip",
                    "red",
                    Optional.of(30.0),
                    Optional.of(180.0),
                    OptionalInt.of(2),
                    1,
                    4.8,
                    "EUR")),
            List.of("Wash \"main\" before it is cut."));
    String written = new String(FiguresWriter.bytes(job), StandardCharsets.UTF_8);
    if ("write".equals(System.getProperty("ellwand.golden"))) {
      Files.writeString(FILE, written);
    }
    assertEquals(Files.readString(FILE).replace("\r\n", "\n"), written);
  }
}
