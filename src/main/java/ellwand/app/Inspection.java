package ellwand.app;

import ellwand.lay.Marker;
import ellwand.rule.Check;
import ellwand.rule.Finding;
import ellwand.units.Unit;
import java.util.List;

/** The last look at a marker before anyone sees it. */
final class Inspection {

  private Inspection() {}

  /**
   * The marker itself, which keeps every hard rule.
   *
   * @throws IllegalStateException if it breaks one, which is a bug of ours
   */
  static Marker passed(Marker marker) {
    List<Finding> findings = Check.of(marker);
    if (!findings.isEmpty()) {
      throw new IllegalStateException(
          "the marker for "
              + marker.lay().cloth().name()
              + " breaks a rule: "
              + findings.get(0).sentence(Unit.MM));
    }
    return marker;
  }
}
