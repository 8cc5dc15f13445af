package ellwand.app;

import ellwand.draw.piece.PaperPiece;
import ellwand.draw.sheet.Colour;
import ellwand.draw.sheet.Ink;
import ellwand.draw.sheet.Item;
import ellwand.draw.tiles.PagePlan;
import ellwand.draw.tiles.PrintHead;
import ellwand.draw.tiles.PrintPaper;
import ellwand.draw.tiles.Tiling;
import ellwand.geometry.Box;
import ellwand.geometry.Motion;
import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import ellwand.nest.OnPaper;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import ellwand.units.Length;
import ellwand.units.Unit;
import ellwand.work.Effort;
import ellwand.work.Request;
import ellwand.work.Seed;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Pieces laid on the paper that they are printed on, so that they take little of it.
 *
 * @param paper upright or on its side
 * @param frame of all of it
 */
record PaperLayout(PrintPaper paper, Box frame, List<Motion> motions) {

  /** Between pieces, to cut them apart before they are cut out, mm. */
  private static final double GAP_MM = 5;

  /** The same for each width of paper that is tried. */
  private static final Effort EFFORT = Effort.ofSteps(60);

  private static final int MOST_ROWS = 8;

  private static final double SHIFT_MM = 10;

  private static final List<Double> QUARTERS = List.of(0.0, 90.0, 180.0, 270.0);

  /** On the pages that take least of them, tried upright and on their sides. */
  static PaperLayout onPages(List<PaperPiece> pieces, PrintHead head, PrintPaper paper) {
    OnPaper nest = nest(pieces, head, QUARTERS);
    double area = area(pieces);
    Choice best = Choice.NONE;
    for (PrintPaper turned : List.of(paper, paper.onItsSide())) {
      if (turned.innerWidthMm() < head.box().length()) {
        continue;
      }
      int rows = 1;
      while (Tiling.across(turned.innerHeightMm(), rows) < nest.leastWidthMm()) {
        rows++;
      }
      // Once it is wider than long, more rows only make it shorter than a page.
      double wide = 0;
      for (int tried = 0; tried < MOST_ROWS && wide * wide <= 2 * area; tried++) {
        wide = Tiling.across(turned.innerHeightMm(), rows + tried);
        Optional<List<Motion>> found = nest.within(wide, request());
        if (found.isPresent()) {
          best = best.or(shifted(pieces, found.get(), head, turned, wide));
        }
      }
    }
    return best.layout();
  }

  /**
   * A layout, and what it takes.
   *
   * @param worth pages, and joins where they are as many; less is better
   */
  private record Choice(PaperLayout layout, int worth) {

    static final Choice NONE = new Choice(null, Integer.MAX_VALUE);

    Choice or(Choice other) {
      return other.worth < worth ? other : this;
    }
  }

  /** Moved on along the paper, away from the head, as far as that saves pages or joins. */
  private static Choice shifted(
      List<PaperPiece> pieces,
      List<Motion> motions,
      PrintHead head,
      PrintPaper paper,
      double widthMm) {
    Choice best = Choice.NONE;
    double step = Tiling.step(paper.innerWidthMm());
    for (double shift = 0; shift < step; shift += SHIFT_MM) {
      double by = shift;
      List<Motion> moved = motions.stream().map(m -> m.shifted(by, 0)).toList();
      PaperLayout layout = of(pieces, moved, head, paper, widthMm);
      PagePlan plan = layout.plan(pieces, head);
      best = best.or(new Choice(layout, plan.tiles().size() * 10_000 + plan.joins().size()));
    }
    return best;
  }

  /**
   * On a roll as short as is found.
   *
   * @throws InputException naming each piece that is too wide
   */
  static PaperLayout onRoll(List<PaperPiece> pieces, PrintHead head, PrintPaper roll, Unit unit) {
    OnPaper nest = nest(pieces, head, QUARTERS);
    refuseTooWide(pieces, nest, roll, unit);
    return unbroken(nest, pieces, head, roll);
  }

  /** Every piece with its top to the right, on one page; as wide as it may be, or must. */
  static PaperLayout projected(
      List<PaperPiece> pieces, PrintHead head, Optional<PrintPaper> roll, Unit unit) {
    OnPaper nest = nest(pieces, head, List.of(0.0));
    roll.ifPresent(r -> refuseTooWide(pieces, nest, r, unit));
    // Pieces fill some two thirds of their page, which comes out a little wider than high so.
    double width = Math.max(Math.sqrt(area(pieces)), nest.leastWidthMm());
    return unbroken(nest, pieces, head, roll.orElseGet(() -> PrintPaper.unbroken(width)));
  }

  private static PaperLayout unbroken(
      OnPaper nest, List<PaperPiece> pieces, PrintHead head, PrintPaper roll) {
    double width = roll.innerWidthMm();
    List<Motion> motions = nest.within(width, request()).orElseThrow();
    return of(pieces, motions, head, roll, width);
  }

  private static OnPaper nest(List<PaperPiece> pieces, PrintHead head, List<Double> turns) {
    Box box = head.box();
    return new OnPaper(
        pieces.stream().map(PaperPiece::outline).toList(),
        turns,
        GAP_MM,
        new Box(0, 0, box.length(), box.width()));
  }

  private static double area(List<PaperPiece> pieces) {
    return pieces.stream().mapToDouble(p -> p.outline().area()).sum();
  }

  private static Request request() {
    return Request.of(EFFORT, new Seed(1));
  }

  private static void refuseTooWide(
      List<PaperPiece> pieces, OnPaper nest, PrintPaper roll, Unit unit) {
    List<Problem> problems = new ArrayList<>();
    for (int i = 0; i < pieces.size(); i++) {
      double least = nest.leastWidthMm(i);
      if (least > roll.innerWidthMm()) {
        Length rollMm = new Length(least + roll.widthMm() - roll.innerWidthMm());
        problems.add(
            Problem.of(
                pieces.get(i).title()
                    + " does not fit on "
                    + roll.name()
                    + ", of which "
                    + new Length(roll.innerWidthMm()).show(unit)
                    + " are printed",
                "Take a roll at least "
                    + up(rollMm, unit).show(unit)
                    + " wide, or pages that are joined: A0, A3, A4 or Letter (--paper)"));
      }
    }
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
  }

  /** Not less than that, where it is shown. */
  private static Length up(Length length, Unit unit) {
    return new Length(Math.ceil(length.mm() / unit.stepMm()) * unit.stepMm());
  }

  private static PaperLayout of(
      List<PaperPiece> pieces,
      List<Motion> motions,
      PrintHead head,
      PrintPaper paper,
      double widthMm) {
    double end = head.box().length();
    for (int i = 0; i < pieces.size(); i++) {
      Outline placed = pieces.get(i).outline().moved(motions.get(i));
      end = Math.max(end, placed.box().maxX() + GAP_MM / 2);
    }
    return new PaperLayout(paper, new Box(0, 0, end, widthMm), motions);
  }

  /** The outlines in place. */
  List<List<Point>> outlines(List<PaperPiece> pieces) {
    List<List<Point>> outlines = new ArrayList<>();
    for (int i = 0; i < pieces.size(); i++) {
      outlines.add(pieces.get(i).outline().moved(motions.get(i)).points());
    }
    return outlines;
  }

  private PagePlan plan(List<PaperPiece> pieces, PrintHead head) {
    List<Item> areas = new ArrayList<>(head.ground(new Point(frame.minX(), frame.maxY())));
    areas.add(new Item.Lines("piece", outlines(pieces), true, Ink.area(Colour.WHITE)));
    return PagePlan.of(new Tiling(paper, frame), areas);
  }
}
