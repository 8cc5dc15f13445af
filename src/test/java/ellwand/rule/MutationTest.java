package ellwand.rule;

import static ellwand.rule.Trial.added;
import static ellwand.rule.Trial.changed;
import static ellwand.rule.Trial.dropped;
import static ellwand.rule.Trial.headed;
import static ellwand.rule.Trial.named;
import static ellwand.rule.Trial.posed;
import static ellwand.rule.Trial.redrawn;
import static ellwand.rule.Trial.shifted;
import static ellwand.rule.Trial.zoned;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.geometry.Box;
import ellwand.geometry.Motion;
import ellwand.lay.Copy;
import ellwand.lay.Form;
import ellwand.lay.Heading;
import ellwand.lay.Marker;
import ellwand.units.Unit;
import java.util.List;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** Random markers laid in shelves are legal; any single change is caught. */
class MutationTest {

  /** A change that always breaks a rule, and the rules of which one must tell. */
  private enum Mutation {
    DROP("count"),
    DOUBLE("count"),
    MIRROR_POSE("cutting line", "fold"),
    MIRROR_OUTLINE("cutting line"),
    TURN_OVER_SLOPED("hand"),
    SHRINK("cutting line"),
    STRETCH("cutting line"),
    TURN_POSE("grain"),
    HEAD("heading"),
    REZONE("form"),
    FORM("form"),
    GARMENT("count"),
    ONTO_ANOTHER("overlap"),
    OUT_OF_CLOTH("zone"),
    BEFORE_CUT_END("zone"),
    NUDGE_POSE("cutting line");

    final List<String> rules;

    Mutation(String... rules) {
      this.rules = List.of(rules);
    }
  }

  @Property(tries = 150)
  void shelvesAreLegal(@ForAll long seed) {
    Marker marker = Shelves.random(seed);
    assertEquals(List.of(), sentences(marker));
  }

  @Property(tries = 400)
  void anySingleChangeIsCaught(
      @ForAll long seed,
      @ForAll Mutation mutation,
      @ForAll @IntRange(min = 0, max = 1000) int which) {
    Marker marker = Shelves.random(seed);
    int index = which % marker.copies().size();
    // An opened half turned over about its own fold is where it was.
    Assume.that(
        mutation != Mutation.MIRROR_POSE || marker.copies().get(index).form() != Form.OPENED);
    Marker mutant = mutant(marker, index, mutation);
    List<String> broken = Check.of(mutant).stream().map(f -> f.rule().id()).toList();
    assertTrue(
        mutation.rules.stream().anyMatch(broken::contains),
        () -> mutation + " of " + marker.copies().get(index) + " told as " + sentences(mutant));
  }

  private static List<String> sentences(Marker marker) {
    return Check.of(marker).stream().map(f -> f.sentence(Unit.MM)).toList();
  }

  private static Marker mutant(Marker marker, int index, Mutation mutation) {
    Copy copy = marker.copies().get(index);
    Box box = copy.outline().box();
    Motion motion = copy.motion();
    return switch (mutation) {
      case DROP -> dropped(marker, index);
      case DOUBLE -> added(marker, copy);
      case MIRROR_POSE ->
          changed(
              marker, index, posed(m -> new Motion(!m.flipped(), m.turnDegrees(), m.x(), m.y())));
      case MIRROR_OUTLINE ->
          changed(
              marker,
              index,
              redrawn(o -> o.moved(new Motion(true, 0, 0, box.minY() + box.maxY() + 1))));
      case TURN_OVER_SLOPED -> Shelves.turnedOverFirstSloped(marker);
      case SHRINK -> changed(marker, index, redrawn(o -> o.scaled(0.9, 0.9)));
      case STRETCH -> changed(marker, index, redrawn(o -> o.scaled(1 + 0.1 / box.maxX(), 1)));
      case TURN_POSE ->
          changed(
              marker,
              index,
              posed(m -> new Motion(m.flipped(), m.turnDegrees() + 0.5, m.x(), m.y())));
      case HEAD ->
          changed(marker, index, headed(copy.heading() == Heading.UP ? Heading.DOWN : Heading.UP));
      case REZONE -> changed(marker, index, zoned("elsewhere"));
      case FORM ->
          changed(
              marker,
              index,
              Trial.formed(
                  copy.form() == Form.OPENED || copy.form() == Form.HALF
                      ? Form.WHOLE
                      : Form.OPENED));
      case GARMENT -> changed(marker, index, named(copy.piece(), copy.size(), copy.garment() + 1));
      case ONTO_ANOTHER -> {
        Box onto = marker.copies().get((index + 1) % marker.copies().size()).outline().box();
        yield marker.copies().size() == 1
            ? added(marker, copy)
            : changed(
                marker,
                index,
                shifted(
                    onto.centre().x() - box.centre().x(), onto.centre().y() - box.centre().y()));
      }
      case OUT_OF_CLOTH ->
          changed(marker, index, shifted(0, marker.markerWidthMm() - box.maxY() + 0.02));
      case BEFORE_CUT_END -> changed(marker, index, shifted(-box.minX() - 0.02, 0));
      case NUDGE_POSE -> changed(marker, index, posed(m -> motion.shifted(0.05, 0)));
    };
  }
}
