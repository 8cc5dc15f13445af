package ellwand.app;

import ellwand.draw.sheet.Drawing;
import ellwand.draw.tiles.FullSize;
import ellwand.draw.tiles.PrintHead;
import ellwand.draw.tiles.PrintPaper;
import ellwand.draw.tiles.Tiling;
import ellwand.geometry.Box;
import ellwand.geometry.Point;
import ellwand.problem.InputException;
import ellwand.units.Length;
import ellwand.units.Unit;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/** A marker on the paper that it is printed on, beside the head. */
final class MarkerLayout {

  private static final double GAP_MM = 5;

  /** So that what begins on the second page does not touch the first, mm. */
  private static final double HAIR_MM = 0.1;

  private MarkerLayout() {}

  /**
   * @param drawings of the marker full size, with words beside the given lines
   * @param outlines of its copies
   * @param name of the marker
   * @throws InputException if it is wider than a roll
   */
  static FullSize of(
      Function<List<List<Point>>, Drawing> drawings,
      PrintHead head,
      List<List<Point>> outlines,
      PrintPaper paper,
      String name,
      Unit unit) {
    Drawing drawing = drawings.apply(List.of());
    if (paper.isRoll()) {
      refuseTooWide(across(drawing, head), "", paper, name, unit);
      return printed(drawing, head, outlines, paper);
    }
    Tiling fewest =
        Stream.of(paper, paper.onItsSide())
            .map(turned -> printed(drawing, head, outlines, turned).plan())
            .min(Comparator.comparingInt(plan -> plan.tiles().size()))
            .orElseThrow()
            .tiling();
    return printed(drawings.apply(fewest.joins()), head, outlines, fewest.paper());
  }

  /**
   * Refuses before it is made a marker that will be wider than a roll.
   *
   * @param empty drawings of its cloth in every way in which it may lie, with nothing on it
   */
  static void refuseTooWide(
      List<Drawing> empty, PrintHead head, PrintPaper roll, String name, Unit unit) {
    empty.stream()
        .mapToDouble(drawing -> across(drawing, head))
        .min()
        .ifPresent(across -> refuseTooWide(across, "at least ", roll, name, unit));
  }

  private static double across(Drawing drawing, PrintHead head) {
    return Math.max(drawing.frame().width(), head.box().width());
  }

  private static void refuseTooWide(
      double across, String atLeast, PrintPaper roll, String name, Unit unit) {
    if (across > roll.innerWidthMm()) {
      double needed = across + roll.widthMm() - roll.innerWidthMm();
      double shown = Math.ceil(needed / unit.stepMm()) * unit.stepMm();
      throw InputException.of(
          "the marker of %s is %s%s wide with its words, and of %s %s are printed"
              .formatted(
                  name,
                  atLeast,
                  new Length(across).show(unit),
                  roll.name(),
                  new Length(roll.innerWidthMm()).show(unit)),
          "Take a roll at least "
              + new Length(shown).show(unit)
              + " wide, or pages that are joined: A0, A3, A4 or Letter (--paper)");
    }
  }

  /** The head at the left: on pages of little more than its width the marker begins on the next. */
  private static FullSize printed(
      Drawing drawing, PrintHead head, List<List<Point>> outlines, PrintPaper paper) {
    double beside = head.box().length() + GAP_MM;
    double step = Tiling.step(paper.innerWidthMm());
    boolean next = !paper.isRoll() && step < 2 * beside;
    double shift = next ? Math.max(step, beside) + HAIR_MM : beside;
    Box frame = drawing.frame();
    double across = across(drawing, head);
    Box all = new Box(frame.minX() - shift, frame.maxY() - across, frame.maxX(), frame.maxY());
    return FullSize.of(
        new Drawing(drawing.title(), all, drawing.items()),
        head,
        outlines,
        paper,
        FullSize.Ground.LIGHT);
  }
}
