package ellwand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Seams as they are sewn, in every size, by hand. The skirt's half waist is 20 long in size 98 and
 * 21 in 104; a dart takes 2, two pleats of 1 take 4.
 */
class SewnSeamsTest {

  private static final String JOB =
      """
      ellwand: 1
      unit: cm
      style:
        name: skirt
        size: 98
        allowance: 1
        seams:
          - SEAM
        pieces:
          front:
            cut: {main: 1 on fold}
            fold: middle
            outline:
              - {point: a, at: [0, 0]}
              - {point: b, at: [50, 0]}
              - {point: c, at: [50, 20]}
              - {point: d, at: [0, 20]}
            edges:
              middle: {from: a, to: b}
              waist: {from: b, to: c}
              hem: {from: d, to: a}
            alter:
              - {dart: tuck in, on: waist, at: 1/2, width: 2, depth: 10, folded towards: b}
          pleated:
            cut: {main: 1 on fold}
            fold: middle
            outline:
              - {point: a, at: [0, 0]}
              - {point: b, at: [50, 0]}
              - {point: c, at: [50, 20]}
              - {point: d, at: [0, 20]}
            edges:
              middle: {from: a, to: b}
              waist: {from: b, to: c}
              hem: {from: d, to: a}
            alter:
              - {pleats: 2, on: waist, depth: 1, kind: knife, folded towards: b}
          drawn up:
            from: front
            cut: {main: 1 on fold}
            alter:
              - {close dart: tuck in, into: gathers, over: 8}
          band:
            cut: {main: 1}
            outline:
              - {point: a, at: [0, 0]}
              - {point: b, at: [36, 0]}
              - [36, 4]
              - [0, 4]
            edges: {join: {from: a, to: b}}
          frill:
            cut: {main: 1}
            gathered: {from: [front.hem], fullness: 2, length: 10}
          kilt:
            cut: {main: 1}
            pleated: {from: [front.hem], pleats: 10, depth: 2, length: 30}
          rib:
            cut: {main: 1}
            band: {from: [front.hem], share: 80 %, height: 4}
      sizes:
        names: ["98", "104"]
        grade:
          front: {c: [0, 1], d: [0, 1]}
          pleated: {c: [0, 1], d: [0, 1]}
          band: {b: [1.5, 0]}
      cloths:
        main: {width: 140}
      """;

  @TempDir Path folder;

  private void seam(String seam, String... sentences) throws IOException {
    Ran ran =
        Ran.of("check", Files.writeString(folder.resolve("job.yaml"), JOB.replace("SEAM", seam)));
    assertEquals("", ran.err());
    assertEquals(
        List.of(sentences),
        ran.out()
            .lines()
            .filter(line -> line.matches("size [^,:]*: .*"))
            .collect(Collectors.toList()));
  }

  @Test
  void dartsAreSewnBeforeTheSeam() throws IOException {
    seam(
        "[front.waist, band.join]",
        "size 104: front.waist is 0.50 cm too long for band.join, with darts sewn.");
  }

  /** Pleats do not change a finished edge: 40 and 42. */
  @Test
  void pleatsAreFoldedBeforeTheSeam() throws IOException {
    seam(
        "{join: [pleated.waist, band.join], ease: 4}",
        "size 104: pleated.waist is 0.50 cm too long for band.join, with pleats folded, counting"
            + " 4.00 cm of ease.");
  }

  @Test
  void evenPleatsAreFoldedAndRibsStretched() throws IOException {
    seam(
        "[kilt.top, band.join]",
        "size 98: kilt.top is 4.00 cm too long for band.join, with pleats folded.",
        "size 104: kilt.top is 4.50 cm too long for band.join, with pleats folded.");
    seam("[kilt.top, front.hem]");
    seam(
        "[rib.joined edge, band.join]",
        "size 98: rib.joined edge is 4.00 cm too long for band.join, with the shorter edge"
            + " stretched.",
        "size 104: rib.joined edge is 4.50 cm too long for band.join, with the shorter edge"
            + " stretched.");
  }

  @Test
  void gathersAreDrawnUpBeforeTheSeam() throws IOException {
    seam(
        "[band.join, drawn up.waist]",
        "size 104: band.join is 0.50 cm too short for drawn up.waist, with gathers drawn up.");
    seam(
        "[frill.top, band.join]",
        "size 98: frill.top is 4.00 cm too long for band.join, with gathers drawn up.",
        "size 104: frill.top is 4.50 cm too long for band.join, with gathers drawn up.");
  }

  @Test
  void whatMatchesWhenSewnIsNotWorthAWord() throws IOException {
    seam("[frill.top, front.hem]");
    seam("[front.waist, drawn up.waist]");
  }
}
