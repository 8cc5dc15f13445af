package ellwand.app;

import ellwand.cloth.Cloth;
import ellwand.cutting.CutPiece;
import ellwand.draw.piece.AlteredPiece;
import ellwand.draw.piece.PieceDrawing;
import ellwand.figures.Washing;
import ellwand.job.Job;
import ellwand.pattern.Design;
import ellwand.pattern.Making;
import ellwand.pattern.Outlined;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Draws the pieces of a job. */
public final class DrawRun {

  private DrawRun() {}

  /**
   * Every piece in every size asked for, once in each form that it is cut in, as large as in the
   * first cloth that has it so.
   *
   * @param nested all sizes of a piece on one another instead of side by side
   * @param sizes those that are drawn; where there are none, those of the order, and nested all
   * @param scale mm of piece for one mm of paper in a PDF; where absent, to fit on A4
   * @throws InputException if the style has no such size
   */
  public static DrawnPieces make(
      Job job, Unit unit, boolean nested, List<String> sizes, Optional<Double> scale) {
    Map<String, List<CutPiece>> bySize = bySize(job, shown(job, nested, sizes));
    String title = job.heading();
    String style = job.style().name();
    PieceDrawing drawing =
        nested
            ? PieceDrawing.nested(title, style, bySize, unit, remarks(job))
            : PieceDrawing.of(title, style, bySize, unit, remarks(job));
    return new DrawnPieces(job, drawing, scale);
  }

  /**
   * The same, not nested, with the length of each edge when sewn in place of its allowance.
   *
   * @throws InputException if the style has no such size
   */
  public static DrawnPieces lengths(
      Job job, Unit unit, List<String> sizes, Optional<Double> scale) {
    PieceDrawing drawing =
        PieceDrawing.lengths(
            job.heading(),
            job.style().name(),
            bySize(job, shown(job, false, sizes)),
            unit,
            remarks(job));
    return new DrawnPieces(job, drawing, scale);
  }

  private static Map<String, List<CutPiece>> bySize(Job job, List<String> sizes) {
    Map<String, List<CutPiece>> bySize = new LinkedHashMap<>();
    for (String size : sizes) {
      List<CutPiece> forms = new ArrayList<>();
      for (Cloth cloth : job.cloths()) {
        JobLays.cutPieces(job, size, cloth).forEach(piece -> add(piece, forms));
      }
      // All forms of a piece stand together.
      List<String> names = forms.stream().map(CutPiece::name).toList();
      bySize.put(
          size, forms.stream().sorted(Comparator.comparing(f -> names.indexOf(f.name()))).toList());
    }
    return bySize;
  }

  /**
   * Every altered piece before and after, with its marks and what was done.
   *
   * @param sizes those that are drawn; where there are none, those of the order
   * @param scale mm of piece for one mm of paper in a PDF; where absent, to fit on A4
   * @throws InputException if the style has no such size, or no piece of it is altered
   */
  public static DrawnPieces before(Job job, Unit unit, List<String> sizes, Optional<Double> scale) {
    Design design = job.style().design();
    List<Outlined> altered =
        design.outlined().stream().filter(piece -> !piece.alter().isEmpty()).toList();
    if (altered.isEmpty()) {
      throw new InputException(
          Problem.of(
                  "no piece of the job is altered",
                  "Draw the pieces without how they were before (--before)")
              .at(job.origin().path(), 0));
    }
    Map<String, List<AlteredPiece>> bySize = new LinkedHashMap<>();
    for (String size : shown(job, false, sizes)) {
      Making making = design.making(size);
      bySize.put(
          size, altered.stream().map(p -> AlteredPiece.of(p, making.stages(p), unit)).toList());
    }
    return new DrawnPieces(job, PieceDrawing.before(job.heading(), bySize), scale);
  }

  /** Adds a piece as it is cut from a cloth to those that are drawn, unless one of them will do. */
  private static void add(CutPiece piece, List<CutPiece> forms) {
    for (int i = 0; i < forms.size(); i++) {
      if (forms.get(i).piece().sameForm(piece.piece())) {
        forms.set(i, forms.get(i).andCut(piece.piece().cuts()));
        return;
      }
    }
    forms.add(piece);
  }

  /** Of which cloths pieces are drawn larger than their pattern, and what is only a start. */
  private static Map<String, String> remarks(Job job) {
    Map<String, String> remarks = new LinkedHashMap<>();
    job.cloths()
        .forEach(
            c ->
                Washing.largerBy(c)
                    .ifPresent(
                        by ->
                            remarks.put(
                                c.name() + ": do not lay the paper pattern on it",
                                "larger by " + by)));
    if (job.style().design().drafted()) {
      remarks.put("drafted from body measures", "a start: try it in a toile");
    }
    return remarks;
  }

  /** In the order of the style, from small to large. */
  static List<String> shown(Job job, boolean nested, List<String> asked) {
    List<String> all = job.style().sizes();
    for (String size : asked) {
      if (!all.contains(size)) {
        throw new InputException(
            Problem.of(
                    "style " + job.style().name() + " has no size '" + size + "'",
                    "Ask for sizes out of " + String.join(", ", all))
                .at(job.origin().path(), 0));
      }
    }
    Set<String> wanted =
        !asked.isEmpty() ? Set.copyOf(asked) : nested ? Set.copyOf(all) : job.garments().keySet();
    return all.stream().filter(wanted::contains).toList();
  }
}
