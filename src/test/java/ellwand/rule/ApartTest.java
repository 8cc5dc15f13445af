package ellwand.rule;

import static ellwand.rule.Trial.changed;
import static ellwand.rule.Trial.copy;
import static ellwand.rule.Trial.shifted;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.cloth.Direction;
import ellwand.cloth.Fold;
import ellwand.cutting.CutPiece;
import ellwand.geometry.Region;
import ellwand.lay.Copy;
import ellwand.lay.Form;
import ellwand.lay.Marker;
import ellwand.pattern.Grain;
import ellwand.units.Unit;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class ApartTest {

  private final CutPiece front = Trial.rectangle("front", "1", 400, 300);
  private final CutPiece back = Trial.rectangle("left back", "1", 400, 300);

  private Marker touching(double gap) {
    return Trial.open(
        Trial.lay(Trial.cloth(1000, gap, Direction.ANY_WAY, Fold.OPEN), back, front),
        1000,
        copy(back, Form.WHOLE, "open", false, 0, 10, 0),
        copy(front, Form.WHOLE, "open", false, 0, 410 + gap, 0));
  }

  @Test
  void piecesThatTouchAreApart() {
    assertEquals(List.of(), Check.of(touching(0)));
  }

  @Test
  void overlapIsToldByItsWidthAndPlace() {
    Marker marker = changed(touching(0), 1, shifted(-3.2, 0));
    List<Finding> findings = Check.of(marker);
    assertEquals(1, findings.size());
    Finding finding = findings.get(0);
    assertEquals("overlap", finding.rule().id());
    assertEquals(List.of(0, 1), finding.copies());
    assertEquals(3.2, finding.amount(), 0.02);
    assertEquals(408.4, finding.place().orElseThrow().x(), 1e-9);
    assertEquals("Left back overlaps front by 3.2 mm near x = 40.8 cm.", finding.sentence(Unit.CM));
    assertEquals(
        "Left back overlaps front by 0.13 in near x = 16 1/8 in.", finding.sentence(Unit.INCH));
  }

  @Test
  void ofManyInOnePlaceAHundredAreMeasuredAndTheOthersCounted() {
    Marker marker = touching(0);
    Copy one = marker.copies().get(0);
    Copy aside = one.shifted(1, 0);
    List<Copy> copies = new ArrayList<>(Collections.nCopies(14, one));
    copies.add(aside);
    List<Finding> overlaps =
        Check.of(marker.with(copies)).stream().filter(f -> f.rule() == Apart.OVERLAP).toList();
    assertEquals(101, overlaps.size());
    // 15 copies make 105 pairs.
    assertEquals("At least 5 more pairs of pieces overlap.", overlaps.get(100).sentence(Unit.CM));
    assertEquals(List.of(), overlaps.get(100).copies());
  }

  @Test
  void whatIsLeftOfManyIsKnownAgainOnceTheyAreMoved() {
    Marker marker = touching(0);
    List<Copy> copies = new ArrayList<>(Collections.nCopies(15, marker.copies().get(0)));
    Inspection crowded = Inspection.of(marker.with(copies));
    assertEquals(5, crowded.meetings().more());
    copies.set(14, copies.get(14).shifted(450, 0));
    Meetings after = crowded.after(marker.with(copies), Set.of(14)).meetings();
    assertEquals(91, after.measured().size());
    assertEquals(0, after.more());
  }

  @Test
  void overlapUpToAMillionthOfTheSmallerCopyIsNone() {
    // 300 mm x 0.0004 mm = 0.12 mm², a millionth of 400 x 300 mm².
    assertEquals(List.of(), Check.of(changed(touching(0), 1, shifted(-0.00039, 0))));
    assertEquals(1, Check.of(changed(touching(0), 1, shifted(-0.00041, 0))).size());
  }

  @Test
  void gapIsKeptExactlyAndToAHundredth() {
    assertEquals(List.of(), Check.of(touching(5)));
    assertEquals(List.of(), Check.of(changed(touching(5), 1, shifted(-0.009, 0))));
  }

  @Test
  void gapShortByHalfAMillimetreIsTold() {
    List<Finding> findings = Check.of(changed(touching(5), 1, shifted(-0.5, 0)));
    assertEquals(1, findings.size());
    assertEquals("gap", findings.get(0).rule().id());
    assertEquals(0.5, findings.get(0).amount(), 1e-9);
    assertEquals(
        "Left back and front are 4.5 mm apart near x = 41.2 cm; this cloth asks for 5.0 mm.",
        findings.get(0).sentence(Unit.CM));
  }

  @Test
  void overlapIsNotToldAsGapToo() {
    List<Finding> findings = Check.of(changed(touching(5), 1, shifted(-8, 0)));
    assertEquals(List.of("overlap"), findings.stream().map(f -> f.rule().id()).toList());
    assertEquals(3, findings.get(0).amount(), 0.02);
  }

  @Test
  void aPieceInsideAnotherOverlapsIt() {
    CutPiece tab = Trial.rectangle("tab", "1", 40, 20);
    Marker marker =
        Trial.open(
            Trial.lay(Trial.cloth(1000, 3, Direction.ANY_WAY, Fold.OPEN), front, tab),
            1000,
            copy(front, Form.WHOLE, "open", false, 0, 0, 0),
            copy(tab, Form.WHOLE, "open", false, 0, 100, 100));
    List<Finding> findings = Check.of(marker);
    assertEquals(List.of("overlap"), findings.stream().map(f -> f.rule().id()).toList());
    assertEquals(20, findings.get(0).amount(), 0.02);
  }

  /** The overlap's area is that of java.awt.geom.Area, which shares no code with JTS. */
  @Test
  void overlapAreaAgreesWithAnotherLibrary() {
    CutPiece wedge =
        Trial.piece("wedge", Grain.ALONG, "1", Trial.points(0, 0, 200, 40, 170, 160, 30, 120));
    Marker marker =
        Trial.open(
            Trial.lay(Trial.cloth(1000, 0, Direction.ANY_WAY, Fold.OPEN), front, wedge),
            1000,
            copy(front, Form.WHOLE, "open", false, 0, 0, 0),
            copy(wedge, Form.WHOLE, "open", false, 0, 330, 200));
    Region overlap =
        Region.of(marker.copies().get(0).outline())
            .intersect(Region.of(marker.copies().get(1).outline()));
    Area area = area(marker, 0);
    area.intersect(area(marker, 1));
    assertTrue(overlap.area() > 1000);
    assertEquals(areaOf(area), overlap.area(), 1e-6);
  }

  private static Area area(Marker marker, int index) {
    Path2D path = new Path2D.Double();
    marker
        .copies()
        .get(index)
        .outline()
        .points()
        .forEach(
            p -> {
              if (path.getCurrentPoint() == null) {
                path.moveTo(p.x(), p.y());
              } else {
                path.lineTo(p.x(), p.y());
              }
            });
    path.closePath();
    return new Area(path);
  }

  private static double areaOf(Area area) {
    double twice = 0;
    double[] at = new double[6];
    double lastX = 0;
    double lastY = 0;
    for (var i = area.getPathIterator(null); !i.isDone(); i.next()) {
      if (i.currentSegment(at) == PathIterator.SEG_LINETO) {
        twice += lastX * at[1] - at[0] * lastY;
      }
      lastX = at[0];
      lastY = at[1];
    }
    return Math.abs(twice) / 2;
  }
}
