package ellwand.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;

import ellwand.cloth.Direction;
import ellwand.cloth.Fold;
import ellwand.cutting.CutPiece;
import ellwand.lay.Form;
import ellwand.lay.Lay;
import ellwand.lay.Marker;
import ellwand.lay.Wanted;
import ellwand.rule.LegalMarkers;
import ellwand.rule.Trial;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class FiguresTest {

  private final Figures open =
      Figures.of(LegalMarkers.open(Direction.ONE_WAY), List.of("See to the nap."));
  private final Figures folded = Figures.of(LegalMarkers.folded(Direction.ANY_WAY), List.of());

  /**
   * Area method: piece area / (marker width x marker length), Glock and Kunz, Apparel
   * Manufacturing. By hand: back 300 x 300 opened, sleeves 2 x 150 x 180, front 200 x 270, yokes 2
   * x 100 x 80, on 1000 x 700 mm.
   */
  @Test
  void utilisationIsThatOfTheAreaMethod() {
    assertEquals(90_000 + 54_000 + 54_000 + 16_000, open.areas().wantedMm2(), 1e-6);
    assertEquals(214_000.0 / 700_000, open.areas().utilisation(), 1e-12);
    assertEquals(700_000 - 214_000, open.areas().wasteMm2(), 1e-6);
  }

  @Test
  void aWastedTwinIsNoUse() {
    assertEquals(214_000, folded.areas().wantedMm2(), 1e-6);
    assertEquals(214_000.0 / 800_000, folded.areas().utilisation(), 1e-12);
  }

  @Test
  void lengthsWidthsAndCost() {
    assertEquals(700, open.lengths().markerMm());
    assertEquals(700, open.lengths().clothMm());
    assertEquals(40, open.lengths().endsMm());
    assertEquals(750, open.lengths().toBuyMm());
    assertEquals(1020, open.widths().clothMm());
    assertEquals(1000, open.widths().usableMm());
    // From 0 to the second sleeve's far side at 600, and two selvedges of 10.
    assertEquals(620, open.widths().neededMm(), 1e-9);
    assertEquals(6, open.money().cost(), 1e-12);
    assertEquals(Fold.OPEN, open.lies().fold());
    assertEquals(Direction.ONE_WAY, open.lies().direction());
    assertEquals(List.of("See to the nap."), open.cautions());
  }

  /** A marker in a lengthwise fold of which all lies on the opened stretch. */
  @Test
  void whatLiesWhollyOpenIsToldToLieOpen() {
    Figures wholly =
        Figures.of(
            Trial.marker(
                Trial.lay(
                    Trial.cloth(1000, 0, Direction.ANY_WAY, Fold.LENGTHWISE), LegalMarkers.FRONT),
                Fold.LENGTHWISE,
                List.of(LegalMarkers.folded(Direction.ANY_WAY).zone("opened")),
                Trial.copy(LegalMarkers.FRONT, Form.WHOLE, "opened", false, 0, 700, 0)),
            List.of());
    assertEquals(Fold.OPEN, wholly.lies().fold());
    assertEquals(
        List.of(
            "Cloth main lies open: none of its pieces can be cut from both plies of its lengthwise"
                + " fold at once."),
        wholly.cautions());
    assertEquals(Fold.LENGTHWISE, folded.lies().fold());
    assertEquals(List.of(), folded.cautions());
  }

  @Test
  void widthNeededOfAFoldedLayCountsBothSidesOfTheFold() {
    // The pair of sleeves reaches 350 from the fold; the yoke on the opened stretch is narrower.
    assertEquals(2 * 350 + 20, folded.widths().neededMm(), 1e-9);
  }

  @Test
  void piecesAreCountedAsCut() {
    assertEquals(
        List.of(
            new PieceFigures("back", "110", 1, 90_000),
            new PieceFigures("sleeve", "110", 2, 27_000),
            new PieceFigures("front", "110", 1, 54_000),
            new PieceFigures("yoke", "110", 2, 8_000)),
        folded.onCloth().pieces());
    assertEquals(
        folded.areas().wantedMm2(),
        folded.onCloth().pieces().stream().mapToDouble(p -> p.count() * p.areaMm2()).sum(),
        1e-6);
  }

  @Test
  void wastedTwinsAndTheOpenedStretchAreNamed() {
    assertEquals(
        List.of(new CopyName("front", "110", 1), new CopyName("yoke", "110", 1)),
        folded.onCloth().wastedTwins());
    assertEquals(List.of(new CopyName("yoke", "110", 1)), folded.onCloth().single());
    assertEquals(List.of(), open.onCloth().wastedTwins());
    assertEquals(List.of(), open.onCloth().single());
  }

  @Test
  void leftOverEndsWithTheMarker() {
    // Beside the sleeves and above the back, up to the marker's end at 700, though the zone goes on
    // to 800; 500 x 700 is more than the 700 x 400 above the sleeves.
    assertEquals(List.of(new LeftOver("open", 1, 200, 300, 500, 700)), open.onCloth().leftOvers());
    LeftOver opened = folded.onCloth().leftOvers().get(1);
    assertEquals("opened", opened.zone());
    assertEquals(100 * 900, opened.areaMm2(), 1e-6);
  }

  @Test
  void severalGarmentsShareTheCost() {
    CutPiece yoke = LegalMarkers.YOKE;
    List<Wanted> wanted = new ArrayList<>();
    wanted.addAll(Trial.wanted(yoke, "110", 1));
    wanted.addAll(Trial.wanted(yoke, "116", 2));
    Lay lay = new Lay("tabard", Trial.cloth(400, 0, Direction.ANY_WAY, Fold.OPEN), wanted);
    Marker marker =
        Trial.open(
            lay,
            100,
            Trial.copy(yoke, "110", 1, Form.WHOLE, "open", false, 0, 0, 0),
            Trial.copy(yoke, "110", 1, Form.WHOLE, "open", false, 0, 0, 100),
            Trial.copy(yoke, "116", 2, Form.WHOLE, "open", false, 0, 0, 200),
            Trial.copy(yoke, "116", 2, Form.WHOLE, "open", false, 0, 0, 300));
    Figures figures = Figures.of(marker, List.of());
    assertEquals(2, figures.lies().garments());
    assertEquals(0.8, figures.areas().utilisation(), 1e-12);
    assertEquals(2, figures.onCloth().pieces().size());
  }

  @Test
  void jobAddsUpItsCloths() {
    JobFigures job = JobFigures.of("tabard", List.of(open, folded), List.of());
    assertEquals(1, job.garments());
    assertEquals(open.money().cost() + folded.money().cost(), job.totalCost(), 1e-12);
    assertEquals(job.totalCost(), job.costPerGarment(), 1e-12);
    assertEquals("EUR", job.currency());
  }
}
