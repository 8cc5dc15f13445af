package ellwand.rule;

import ellwand.lay.Marker;
import ellwand.units.Unit;
import java.util.List;
import java.util.Optional;

/**
 * The independent check: every hard rule, asked of the outlines in place with JTS.
 *
 * <p>The marker's lay says what is demanded, its copies what was found; copies that make no sense
 * (unknown pieces, sizes, zones) become findings, never errors.
 */
public final class Check {

  private Check() {}

  /** What the marker breaks of the hard rules; empty for a legal marker. */
  public static List<Finding> of(Marker marker) {
    return of(Inspection.of(marker));
  }

  /** As {@link #of(Marker)}, and what a file states about the marker that is not so. */
  public static List<Finding> of(Marker marker, Stated stated) {
    return of(new Inspection(marker, Optional.of(stated)));
  }

  /**
   * The marker itself, which keeps every hard rule.
   *
   * @throws IllegalStateException if it breaks one: a search gave it out, which is a bug of ours
   */
  public static Marker passed(Marker marker) {
    List<Finding> findings = of(marker);
    if (!findings.isEmpty()) {
      throw new IllegalStateException(
          "the marker for "
              + marker.lay().cloth().name()
              + " breaks a rule: "
              + findings.get(0).sentence(Unit.MM));
    }
    return marker;
  }

  /** As {@link #of(Marker)}, of a marker that is being looked at. */
  public static List<Finding> of(Inspection inspection) {
    return Rules.HARD.stream().flatMap(rule -> rule.findings(inspection).stream()).toList();
  }
}
