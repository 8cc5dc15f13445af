package ellwand.pattern;

import ellwand.problem.InputException;
import ellwand.problem.Problem;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Notches that a maker places on a rectangle, shared out to its panels. Panels lie side by side
 * from the start of the top on; each notch stands on the one that holds it.
 *
 * @param notches measured on the edges of the whole rectangle
 * @param count how many panels, 1 or more
 * @param widthMm of one between its sewing lines
 */
record PanelNotches(List<Notch> notches, int count, double widthMm) {

  /** Draws a panel as it is cut, by its name and its own notches. */
  interface Drawing {
    Piece panel(String name, List<Notch> own, Cut cut);
  }

  /** Panels that are cut alike. */
  private record Alike(List<Notch> notches, List<Integer> numbers) {

    /** What they are called beside others of the rectangle: {@code frill panels 1+3}. */
    String named(String rectangle) {
      return "%s panel%s %s"
          .formatted(
              rectangle,
              numbers.size() == 1 ? "" : "s",
              numbers.stream().map(String::valueOf).collect(Collectors.joining("+")));
    }
  }

  private static final double SAME_MM = 1e-6;

  /**
   * One panel of each kind, in the order of the first of each, as often as a garment needs it.
   *
   * @param cut of the whole rectangle
   * @throws InputException if each is cut on the fold, where both halves would have the same
   */
  List<Piece> panels(String rectangle, Cut cut, Drawing drawing) {
    if (cut.how() == Cut.How.FOLD && count > 1 && !notches.isEmpty()) {
      throw new InputException(
          Problem.inPiece(
              rectangle,
              "it is cut in %d panels on the fold, so that none can have notches of its own"
                  .formatted(count),
              "Cut it whole, not on the fold, or take its notches: out"));
    }
    List<Alike> kinds = alike();
    return kinds.stream()
        .map(
            kind ->
                drawing
                    .panel(
                        kinds.size() == 1 ? rectangle : kind.named(rectangle),
                        kind.notches,
                        new Cut(
                            cut.cloth(), cut.count() * kind.numbers.size(), cut.how(), cut.grain()))
                    .inCloth(cut.cloth()))
        .toList();
  }

  private List<Alike> alike() {
    Map<List<Notch>, List<Integer>> numbers = new LinkedHashMap<>();
    IntStream.range(0, count)
        .forEach(i -> numbers.computeIfAbsent(on(i), n -> new ArrayList<>()).add(i + 1));
    return numbers.entrySet().stream().map(e -> new Alike(e.getKey(), e.getValue())).toList();
  }

  private List<Notch> on(int panel) {
    List<Notch> held = new ArrayList<>();
    for (Notch notch : notches) {
      switch (notch.edge()) {
        case Gathered.TOP -> add(notch, panel, held);
        case Gathered.HEM -> add(notch, count - 1 - panel, held);
        case Gathered.SIDE -> {
          if (panel == count - 1) {
            held.add(notch);
          }
        }
        default -> {
          if (panel == 0) {
            held.add(notch);
          }
        }
      }
    }
    return held;
  }

  /**
   * Adds a notch as it stands on a panel, if it does.
   *
   * @param before how many panels the edge has run along before it comes to this one
   */
  private void add(Notch notch, int before, List<Notch> held) {
    int holder = Math.min(count - 1, (int) Math.floor((notch.atMm() + SAME_MM) / widthMm));
    if (holder == before) {
      // Rounded, so that panels which hold theirs at the same place are the same.
      double at = Math.rint((notch.atMm() - before * widthMm) / SAME_MM) * SAME_MM;
      held.add(count == 1 ? notch : notch.at(Math.max(0, at)));
    }
  }
}
