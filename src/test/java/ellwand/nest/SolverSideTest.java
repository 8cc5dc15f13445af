package ellwand.nest;

import static ellwand.rule.Trial.changed;
import static ellwand.rule.Trial.copy;
import static ellwand.rule.Trial.redrawn;
import static ellwand.rule.Trial.shifted;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.cloth.Cloth;
import ellwand.cloth.Direction;
import ellwand.cloth.Flaw;
import ellwand.cloth.Fold;
import ellwand.cloth.Repeat;
import ellwand.cutting.CutPiece;
import ellwand.geometry.Point;
import ellwand.lay.Copy;
import ellwand.lay.Form;
import ellwand.lay.Marker;
import ellwand.pattern.Grain;
import ellwand.rule.Asking;
import ellwand.rule.Check;
import ellwand.rule.Rule;
import ellwand.rule.Rules;
import ellwand.rule.Trial;
import ellwand.units.Unit;
import ellwand.work.Effort;
import ellwand.work.Request;
import ellwand.work.Seed;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Pairs each hard rule with the place in the search that keeps it by construction, and with a
 * marker that breaks it although little is amiss; of the same lay the search makes a legal one.
 */
class SolverSideTest {

  /** Rules about what a file states, which no search can break. */
  private static final Set<String> OF_FILES = Set.of("stated lengths", "stated utilisation");

  /** Where the search keeps a rule, and a marker of some lay that does not. */
  private record Side(String keptBy, Marker broken) {}

  private static final CutPiece BAND = Trial.rectangle("band", "2", 300, 100);
  private static final CutPiece HALF = Trial.rectangle("yoke", "1 on fold", 200, 80);

  private static final Map<String, Side> SIDES = new LinkedHashMap<>();

  static {
    Marker plain = bands(plain(0));
    Marker narrow =
        Trial.folded(
            Trial.lay(Trial.cloth(400, 0, Direction.ANY_WAY, Fold.LENGTHWISE), HALF),
            200,
            200,
            copy(HALF, Form.HALF, "folded", false, 0, 0, 0));
    SIDES.put(
        "laid cloth",
        new Side(
            "nest.Borders lists the ways in which the cloth can be folded, Found makes the zones",
            plain.withZones(List.of(plain.zones().get(0), plain.zones().get(0)))));
    SIDES.put(
        "count",
        new Side(
            "nest.Stations serves each wanted piece just once", plain.with(List.of(first(plain)))));
    CutPiece facing =
        Trial.piece(
            "facing",
            Grain.ALONG,
            "2",
            Trial.points(0, 0, 200, 0, 200, 120, 140, 120, 140, 30, 30, 30, 30, 120, 0, 120));
    SIDES.put(
        "hand",
        new Side(
            "nest.Stations offers both plies at once only for pairs and what has no hand",
            Trial.folded(
                Trial.lay(Trial.cloth(400, 0, Direction.ANY_WAY, Fold.LENGTHWISE), facing),
                200,
                200,
                copy(facing, Form.PAIR, "folded", false, 0, 0, 0))));
    SIDES.put(
        "cutting line",
        new Side(
            "nest.Found moves the piece's own line, the kernel knows no other",
            changed(plain, 0, redrawn(o -> o.scaled(0.99, 1)))));
    SIDES.put(
        "form",
        new Side(
            "nest.Stations asks for what each form needs of its zone",
            narrow.with(List.of(copy(HALF, Form.WHOLE, "folded", false, 0, 0, 0)))));
    SIDES.put(
        "fold",
        new Side(
            "nest.Pose holds a half on the fold edge, the kernel moves it along only",
            changed(narrow, 0, shifted(0, 1))));
    SIDES.put(
        "grain",
        new Side(
            "nest.Pose knows turns on the grain only, nest.Turning none beyond the tolerance",
            plain.with(
                List.of(
                    copy(BAND, Form.WHOLE, "open", false, 90, 0, 0),
                    copy(BAND, Form.WHOLE, "open", false, 0, 100, 0)))));
    Cloth oneWay = Trial.cloth(400, 0, Direction.ONE_WAY, Fold.OPEN);
    CutPiece wedge = Trial.sloped("gore", "2", 300, 100);
    SIDES.put(
        "heading",
        new Side(
            "nest.Pose is asked for the headings that the cloth and the piece allow",
            Trial.open(
                Trial.lay(oneWay, wedge),
                600,
                copy(wedge, Form.WHOLE, "open", false, 0, 0, 0),
                copy(wedge, Form.WHOLE, "open", false, 180, 0, 150))));
    SIDES.put(
        "zone",
        new Side("the kernel's strip ends where the band does", changed(plain, 0, shifted(0, -1))));
    Cloth holed = plain(0).flawed(List.of(Flaw.round("hole", new Point(100, 60), 10)));
    SIDES.put(
        "keep-outs", new Side("the kernel holds flaws as copies that lie still", bands(holed)));
    CutPiece striped = Asking.marked(Trial.rectangle("front", "1", 200, 100), 50, Asking.at(0, 0));
    Cloth stripes = plain(0).repeating(Repeat.even(40, 0, 0, 0));
    SIDES.put(
        "repeat",
        new Side(
            "nest.Phases gives each placement the places of the repeat that it may lie at",
            Trial.open(
                Trial.lay(stripes, striped),
                600,
                copy(striped, Form.WHOLE, "open", false, 0, 0, 0))));
    SIDES.put(
        "overlap",
        new Side(
            "nest.kernel.Search takes no arrangement in which two copies overlap",
            changed(plain, 1, shifted(0, -1))));
    SIDES.put("gap", new Side("the kernel's outlines are widened by the gap", bands(plain(5))));
  }

  private static Cloth plain(double gap) {
    return Trial.cloth(400, gap, Direction.ANY_WAY, Fold.OPEN);
  }

  /** Two bands that touch. */
  private static Marker bands(Cloth cloth) {
    return Trial.open(
        Trial.lay(cloth, BAND),
        600,
        copy(BAND, Form.WHOLE, "open", false, 0, 0, 0),
        copy(BAND, Form.WHOLE, "open", false, 0, 0, 100));
  }

  private static Copy first(Marker marker) {
    return marker.copies().get(0);
  }

  @Test
  void everyHardRuleHasASolverSide() {
    List<String> hard = new ArrayList<>(Rules.HARD.stream().map(Rule::id).toList());
    assertTrue(hard.removeAll(OF_FILES));
    assertEquals(
        hard.stream().sorted().toList(),
        SIDES.keySet().stream().sorted().toList(),
        "a hard rule that the search does not keep makes it fail: pair it here");
  }

  @TestFactory
  List<DynamicTest> theSearchKeepsWhatIsEasilyBroken() {
    return SIDES.entrySet().stream()
        .map(e -> DynamicTest.dynamicTest(e.getKey(), () -> holds(e.getKey(), e.getValue())))
        .toList();
  }

  private static void holds(String rule, Side side) {
    assertTrue(
        Check.of(side.broken).stream().anyMatch(f -> f.rule().id().equals(rule)),
        () -> "not broken: " + side.broken.copies());
    Marker made =
        Nester.nest(
            side.broken.lay(), side.broken.fold(), Request.of(Effort.ofSteps(20), new Seed(1)));
    assertEquals(
        "",
        Check.of(made).stream().map(f -> f.sentence(Unit.MM)).collect(Collectors.joining()),
        side.keptBy);
  }
}
