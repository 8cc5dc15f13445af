package ellwand.file.interchange;

import java.util.List;
import java.util.Map;
import java.util.Set;

/** The layers of ASTM D6673, as publicly documented. */
final class Layers {

  static final String BOUNDARY = "1";
  static final String TURN_POINTS = "2";
  static final String CURVE_POINTS = "3";
  static final String NOTCHES = "4";
  static final String GRADE_REFERENCE = "5";
  static final String MIRROR_LINE = "6";
  static final String GRAIN_LINE = "7";
  static final String INNER_LINES = "8";
  static final String CUT_OUTS = "11";
  static final String DRILL_HOLES = "13";
  static final String SEWING_LINES = "14";
  static final String ANNOTATION = "15";

  /** Those that a piece of ours is written on. */
  static final List<String> WRITTEN =
      List.of(
          BOUNDARY,
          TURN_POINTS,
          CURVE_POINTS,
          NOTCHES,
          MIRROR_LINE,
          GRAIN_LINE,
          INNER_LINES,
          DRILL_HOLES,
          SEWING_LINES,
          ANNOTATION);

  /** T, castle, check and U notches beside the plain ones. */
  static final Set<String> ALL_NOTCHES = Set.of(NOTCHES, "80", "81", "82", "83");

  /** Curves for layers 1, 8, 11 and 14, which repeat what stands there. */
  static final Set<String> REPEATED = Set.of("84", "85", "86", "87");

  /** What a line on a layer is, in the words of drawings. */
  static final Map<String, String> KINDS =
      Map.ofEntries(
          Map.entry(NOTCHES, "notch"),
          Map.entry("80", "notch"),
          Map.entry("81", "notch"),
          Map.entry("82", "notch"),
          Map.entry("83", "notch"),
          Map.entry(MIRROR_LINE, "fold"),
          Map.entry(GRAIN_LINE, "grain"),
          Map.entry(SEWING_LINES, "sewing-line"));

  private Layers() {}
}
