package ellwand.file.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.cloth.Cloth;
import ellwand.cloth.Direction;
import ellwand.cloth.Fold;
import ellwand.cloth.Goods;
import ellwand.cloth.Laying;
import ellwand.cloth.Selling;
import ellwand.cloth.Shrinkage;
import ellwand.job.Job;
import ellwand.job.Wear;
import ellwand.pattern.Cut;
import ellwand.pattern.Edge;
import ellwand.pattern.Grain;
import ellwand.pattern.Notch;
import ellwand.pattern.Piece;
import ellwand.units.Unit;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class JobReaderTest {

  private static final Path APRON = Path.of("src/test/resources/ellwand/file/apron.yaml");

  private final Job job = JobReader.read(APRON);

  @Test
  void readsWhatHeadsTheJob() {
    assertEquals(Optional.of("Apron with a pocket"), job.title());
    assertEquals(List.of("Wash the linen before cutting."), job.notes());
    assertEquals(Set.of(Wear.CHILDREN, Wear.NIGHTWEAR), job.wear());
    assertEquals(Unit.CM, job.unit());
    assertEquals(Map.of("104", 2), job.garments());
    assertEquals("bench apron", job.style().name());
    assertEquals(APRON.toString(), job.origin().path());
    assertTrue(job.origin().sha256().matches("[0-9a-f]{64}"), job.origin().sha256());
  }

  @Test
  void readsCloths() {
    assertEquals(
        List.of(
            new Cloth(
                "linen",
                Goods.wide(1400)
                    .selvedge(10)
                    .shrinking(new Shrinkage(0.04, 0.03, Shrinkage.When.BEFORE_CUTTING)),
                Laying.in(Fold.LENGTHWISE, Fold.OPEN)
                    .heading(Direction.ONE_WAY_PER_GARMENT)
                    .gap(2)
                    .ends(40),
                Selling.inSteps(100).at(14.5, "GBP"))),
        job.cloths().subList(0, 1));
    Cloth lining = job.cloths().get(1);
    assertEquals(1117.6, lining.widthMm(), 1e-9);
    assertEquals(Cloth.anyFold(false, Direction.ANY_WAY), lining.folds());
    // A yard is 0.9144 m exactly, by the international agreement of 1959.
    assertEquals(6.40 / 0.9144, lining.pricePerMetre(), 1e-9);
    assertEquals("€", lining.currency());
  }

  @Test
  void readsAHalfPieceDrawnClockwiseCounterClockwise() {
    Piece front = job.style().pieces("104").get(0);
    assertEquals(Optional.of("centre front"), front.fold());
    assertEquals(0, front.edge("centre front").allowanceMm());
    assertEquals(new Edge("hem", front.edge("hem").line(), 30, true), front.edge("hem"));
    Edge armhole = front.edge("armhole");
    assertEquals(6, armhole.allowanceMm());
    assertEquals(15, front.edge("hem side to underarm").allowanceMm());
    assertEquals(450, armhole.line().start().x(), 1e-9);
    Notch notch = front.notches().get(0);
    assertEquals(armhole.line().length() - 50, notch.atMm(), 1e-6);
    assertEquals(2, notch.strokes());
    assertEquals(Notch.USUAL_DEPTH_MM, notch.depthMm());
    assertEquals("pocket place", front.innerLines().get(0).name());
    assertEquals(List.of(new Cut("linen", 1, Cut.How.FOLD)), front.cuts());
  }

  @Test
  void namesTheEdgesOfAnOutlineOfBarePoints() {
    Piece pocket = job.style().pieces("104").get(1);
    assertEquals(Grain.EITHER, pocket.grain());
    assertEquals(
        List.of(
            "point 1 to point 2", "point 2 to point 3", "point 3 to point 4", "point 4 to point 1"),
        pocket.edges().stream().map(Edge::name).toList());
    assertEquals(12.7, pocket.edges().get(0).allowanceMm(), 1e-9);
    assertEquals(
        List.of(new Cut("linen", 1, Cut.How.WHOLE), new Cut("lining", 2, Cut.How.PAIR)),
        pocket.cuts());
  }
}
