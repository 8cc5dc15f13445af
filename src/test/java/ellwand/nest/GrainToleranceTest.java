package ellwand.nest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.cloth.Cloth;
import ellwand.cloth.Direction;
import ellwand.cloth.Flaw;
import ellwand.cloth.Fold;
import ellwand.cloth.Goods;
import ellwand.cloth.Laying;
import ellwand.cloth.Selling;
import ellwand.cutting.CutPiece;
import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import ellwand.lay.Copy;
import ellwand.lay.Form;
import ellwand.lay.Lay;
import ellwand.lay.Marker;
import ellwand.lay.Wanted;
import ellwand.nest.pose.NoRoomException;
import ellwand.pattern.Grain;
import ellwand.rule.Check;
import ellwand.rule.Trial;
import ellwand.units.Unit;
import ellwand.work.Effort;
import ellwand.work.Request;
import ellwand.work.Seed;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/** Pieces that may turn a little off their grain: any angle will do, and none where none is won. */
class GrainToleranceTest {

  /** Plies for an order are not spread over flaws. */
  private static final List<Fold> FOLDS =
      List.of(Fold.OPEN, Fold.OPEN, Fold.LENGTHWISE, Fold.DOUBLE, Fold.CROSSWISE);

  private static Cloth cloth(
      double usable, double gap, Direction direction, double degrees, Fold fold) {
    return new Cloth(
        "main",
        Goods.wide(usable),
        Laying.in(fold).heading(direction).gap(gap).offGrain(degrees),
        Selling.inSteps(50));
  }

  private static Cloth cloth(double usable, double degrees) {
    return cloth(usable, 0, Direction.ANY_WAY, degrees, Fold.OPEN);
  }

  private static Marker nested(Lay lay, Fold fold, int steps) {
    Marker marker = Nester.nest(lay, fold, Request.of(Effort.ofSteps(steps), new Seed(1)));
    assertEquals(List.of(), Check.of(marker).stream().map(f -> f.sentence(Unit.MM)).toList());
    return marker;
  }

  private static Marker nested(Cloth cloth, CutPiece... pieces) {
    return nested(Trial.lay(cloth, pieces), Fold.OPEN, 200);
  }

  private static Grain grain(Lay lay, Copy copy) {
    return lay.wanted().stream()
        .map(Wanted::cut)
        .filter(cut -> cut.name().equals(copy.piece()))
        .findFirst()
        .orElseThrow()
        .piece()
        .grain();
  }

  private static double offDegrees(Lay lay, Copy copy) {
    return grain(lay, copy).offDegrees(copy.motion().turnDegrees(), copy.motion().flipped());
  }

  private static double[] offDegrees(Marker marker) {
    return marker.copies().stream().mapToDouble(c -> offDegrees(marker.lay(), c)).toArray();
  }

  /** Drawn 1.3 degrees askew, two bands of 50 mm lie side by side on 100.001 mm only when level. */
  @Test
  void aPieceTurnsByAnAngleBetweenNoneAndTheMost() {
    double c = Math.cos(Math.toRadians(1.3));
    double s = Math.sin(Math.toRadians(1.3));
    CutPiece band =
        Trial.piece(
            "band",
            Grain.ALONG,
            "2",
            Trial.points(
                0, 0, 300 * c, 300 * s, 300 * c - 50 * s, 300 * s + 50 * c, -50 * s, 50 * c));
    assertTrue(nested(cloth(100.001, 0), band).lengthMm() > 590);
    Marker turned = nested(cloth(100.001, 3), band);
    assertEquals(300, turned.lengthMm(), 0.01);
    for (double off : offDegrees(turned)) {
      assertEquals(1.3, off, 0.001);
    }
    assertTrue(nested(cloth(100.001, 1.29), band).lengthMm() > 590);
  }

  /** A channel between two flaws slants by 1.3 degrees and is 0.1 mm wider than the band. */
  @Test
  void aPieceTurnsIntoASlantingGap() {
    double c = Math.cos(Math.toRadians(1.3));
    double rise = 320 * Math.tan(Math.toRadians(1.3));
    double high = 20 + 50.1 / c;
    List<Flaw> flaws =
        List.of(
            new Flaw("torn", Outline.of(Trial.points(0, 0, 320, 0, 320, 20 + rise, 0, 20))),
            new Flaw(
                "stain", Outline.of(Trial.points(0, high, 320, high + rise, 320, 120, 0, 120))));
    CutPiece band = Trial.rectangle("band", "1", 300, 50);
    // Straight, it lies behind the flaws but for what their slant gives way.
    assertTrue(nested(cloth(120, 0).flawed(flaws), band).lengthMm() > 600);
    Marker turned = nested(cloth(120, 3).flawed(flaws), band);
    assertEquals(300 * c + 50 * Math.sin(Math.toRadians(1.3)), turned.lengthMm(), 0.05);
    // 0.1 mm of play over 300 mm leaves 0.02 degrees.
    assertEquals(1.3, offDegrees(turned)[0], 0.021);
  }

  /**
   * No side of this sliver lies along anything, and there is no best turn but where both its tips
   * touch a selvedge: its diagonal of d = |(1000, 6)| then lies sqrt(d² - 30²) along the cloth.
   */
  @Test
  void aPieceTurnsUntilItTouchesBothSelvedges() {
    CutPiece sliver =
        Trial.piece("sliver", Grain.ALONG, "1", Trial.points(0, 0, 500, -2, 1000, 6, 500, 8));
    assertEquals(1000, nested(cloth(30, 0), sliver).lengthMm(), 1e-6);
    Marker turned = nested(cloth(30, 3), sliver);
    assertEquals(Math.sqrt(1000 * 1000 + 6 * 6 - 30 * 30), turned.lengthMm(), 0.05);
    double off = Math.toDegrees(Math.asin(30 / Math.hypot(1000, 6)) - Math.atan2(6, 1000));
    assertEquals(off, offDegrees(turned)[0], 0.1);
  }

  /** A kite 300 mm from tip to tip across fits on 299.9 mm from arccos(299.9 / 300) on. */
  @Test
  void aPieceTooWideOnItsGrainTurnsAsLittleAsItCan() {
    CutPiece kite =
        Trial.piece("kite", Grain.ACROSS, "1", Trial.points(-150, 0, 0, -25, 150, 0, 0, 25));
    Lay strict = Trial.lay(cloth(299.9, 1.47), kite);
    assertThrows(NoRoomException.class, () -> nested(strict, Fold.OPEN, 50));
    Marker turned = nested(cloth(299.9, 3), kite);
    assertEquals(Math.toDegrees(Math.acos(299.9 / 300)), offDegrees(turned)[0], 1e-3);
  }

  /** Rectangles that fill the cloth gain nothing by turning: the marker is the one without. */
  @Test
  void noPieceTurnsWhereThatSavesNothing() {
    CutPiece yoke = Trial.rectangle("yoke", "2", 200, 100);
    CutPiece cuff = Trial.rectangle("cuff", "4", 80, 60);
    Marker without = nested(cloth(260, 0), yoke, cuff);
    Marker with = nested(cloth(260, 5), yoke, cuff);
    assertEquals(without.lengthMm(), with.lengthMm(), 0);
    assertEquals(without.copies(), with.copies());
  }

  /** Only the skewed band has to turn; what lies beside it and does not matter stays on grain. */
  @Test
  void whatNeedNotTurnLiesOnGrain() {
    double c = Math.cos(Math.toRadians(2));
    double s = Math.sin(Math.toRadians(2));
    CutPiece band =
        Trial.piece(
            "band",
            Grain.ALONG,
            "1",
            Trial.points(
                0, 0, 600 * c, 600 * s, 600 * c - 50 * s, 600 * s + 50 * c, -50 * s, 50 * c));
    CutPiece patch = Trial.sloped("patch", "4", 120, 49);
    Marker turned = nested(cloth(100.001, 4), band, patch);
    assertEquals(600, turned.lengthMm(), 0.2);
    for (Copy copy : turned.copies()) {
      double off = offDegrees(turned.lay(), copy);
      assertEquals(copy.piece().equals("band") ? 2 : 0, off, 0.01, copy.piece());
    }
  }

  /** What one piece may, another may not. */
  @Test
  void aPieceWithNoToleranceOfItsOwnStaysOnGrain() {
    Grain strict = Grain.ALONG.with(OptionalDouble.of(0), Optional.empty());
    List<Point> slope = Trial.points(0, 0, 300, 0, 250, 90, 30, 80);
    CutPiece loose = Trial.piece("loose", Grain.ALONG, "2", slope);
    CutPiece held = Trial.piece("held", strict, "2", slope);
    Marker marker = nested(cloth(170, 5), loose, held);
    for (Copy copy : marker.copies()) {
      if (copy.piece().equals("held")) {
        assertEquals(0, offDegrees(marker.lay(), copy));
      }
    }
    Lay all = Trial.lay(cloth(170, 5), held);
    Lay none = Trial.lay(cloth(170, 0), held);
    assertEquals(nested(none, Fold.OPEN, 50).copies(), nested(all, Fold.OPEN, 50).copies());
  }

  /** The check allows the tolerance and not a hair more. */
  @Test
  void theRuleRefusesWhatTurnsFarther() {
    CutPiece patch = Trial.rectangle("patch", "1", 90, 60);
    Lay lay = Trial.lay(cloth(500, 3), patch);
    for (double turn : new double[] {3, -3, 183, 3.001, -3.001, 177 - 0.001}) {
      boolean broken = Math.abs(Math.IEEEremainder(turn, 180)) > 3;
      Marker marker =
          Trial.open(lay, 300, Trial.copy(patch, Form.WHOLE, "open", false, turn, 0, 0));
      assertEquals(
          broken ? List.of("grain") : List.of(),
          Check.of(marker).stream().map(f -> f.rule().id()).toList(),
          () -> "turned by " + turn);
    }
  }

  /** Within the tolerance, legal, and never longer than without it at the same effort. */
  @Property(tries = 30)
  void noMarkerTurnsAPieceTooFarOrIsLongerForIt(@ForAll long seed) {
    Random random = new Random(seed);
    Fold fold = FOLDS.get(random.nextInt(FOLDS.size()));
    Direction direction =
        fold == Fold.CROSSWISE ? Direction.ANY_WAY : Direction.values()[random.nextInt(3)];
    double gap = random.nextInt(2) * 3;
    double degrees = 0.5 + 5 * random.nextDouble();
    List<Flaw> flaws =
        random.nextInt(3) > 0
            ? List.of()
            : List.of(
                Flaw.round("hole", new Point(random.nextInt(200), random.nextInt(420)), 25),
                new Flaw("torn", Outline.of(Trial.points(0, 0, 40, 0, 0, 420))));
    List<Wanted> strict = new ArrayList<>();
    List<Wanted> loose = new ArrayList<>();
    for (int i = 0; i < 2 + random.nextInt(3); i++) {
      OptionalDouble own =
          random.nextInt(3) > 0 ? OptionalDouble.empty() : OptionalDouble.of(random.nextInt(3));
      Piece piece = loose(random);
      strict.addAll(Trial.wanted(piece.cut(i, OptionalDouble.of(0)), "110", 1));
      loose.addAll(Trial.wanted(piece.cut(i, own), "110", 1));
    }
    Cloth cloth = cloth(420, gap, direction, degrees, fold).flawed(flaws);
    Marker turned = nested(new Lay("tabard", cloth, loose), fold, 60);
    for (Copy copy : turned.copies()) {
      Grain grain = grain(turned.lay(), copy);
      double most = copy.form() == Form.HALF ? 0 : grain.toleranceDegrees().orElse(degrees);
      assertTrue(offDegrees(turned.lay(), copy) <= most + 1e-9, copy::toString);
    }
    double without = nested(new Lay("tabard", cloth, strict), fold, 60).clothLengthMm();
    assertTrue(turned.clothLengthMm() <= without, () -> turned.clothLengthMm() + " > " + without);
  }

  private record Piece(Grain grain, String how, List<Point> corners) {

    CutPiece cut(int number, OptionalDouble tolerance) {
      return Trial.piece("piece " + number, grain.with(tolerance, Optional.empty()), how, corners);
    }
  }

  private static Piece loose(Random random) {
    double length = 60 + random.nextInt(200);
    double width = 40 + random.nextInt(100);
    if (random.nextInt(4) == 0) {
      return new Piece(
          Grain.ALONG,
          "1 on fold",
          Trial.points(
              0, 0, length, 0, length * (0.5 + 0.5 * random.nextDouble()), width, 0, width));
    }
    return new Piece(
        List.of(Grain.ALONG, Grain.ACROSS, Grain.BIAS).get(random.nextInt(3)),
        random.nextBoolean() ? "2" : "pair",
        Trial.points(
            0,
            0,
            length,
            random.nextInt(20),
            length * (0.3 + 0.7 * random.nextDouble()),
            width + random.nextInt(20),
            random.nextInt(20),
            width));
  }
}
