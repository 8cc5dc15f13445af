package ellwand.file.drawn;

import ellwand.pattern.GradeRule;
import java.util.List;
import java.util.Map;

/**
 * How the pieces of a drawing differ by size: as drawn in each, or by rules.
 *
 * @param names of the sizes, one or more
 * @param base the one that the drawing's own lines are in
 * @param lines of every other size, if they are drawn
 * @param rules by the names of pieces and points in the drawing, shifts as on the page, mm
 */
public record DrawnSizes(
    List<String> names,
    String base,
    Map<String, List<DrawnLine>> lines,
    Map<String, Map<String, GradeRule>> rules) {}
