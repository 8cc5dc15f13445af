package ellwand.file.job;

import ellwand.cutting.Cutter;
import ellwand.file.source.Spot;
import ellwand.pattern.Design;
import ellwand.pattern.MadeFrom;
import ellwand.pattern.Making;
import ellwand.pattern.Outlined;
import ellwand.pattern.Piece;
import ellwand.pattern.PieceSet;
import ellwand.pattern.Style;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * Draws a design in every size and cuts it once. What cannot be is told where it is written: a
 * drawn piece's mistake at its entry, that of another size at its grading, and a computed piece's
 * at what it measures, since the rest of it was tried when it was planned.
 */
final class DesignTrial {

  private final Design design;
  private final Spot style;
  private final Spot grade;

  /**
   * @param style the entry that the design was read from
   * @param grade the entry of its grading
   */
  DesignTrial(Design design, Spot style, Spot grade) {
    this.design = design;
    this.style = style;
    this.grade = grade;
  }

  /**
   * The style, or nothing if a piece cannot be drawn.
   *
   * @param whole whether every piece could be read; if not, none is computed
   */
  Optional<Style> style(boolean whole) {
    Map<String, PieceSet> bySize = new LinkedHashMap<>();
    String base = design.sizes().base();
    List<Piece> inBase = drawn(design.outlined(), base);
    List<String> good = inBase.stream().map(Piece::name).toList();
    // What is wrong with a piece as it is drawn would be told again in each size.
    List<Outlined> others =
        design.outlined().stream().filter(piece -> good.contains(piece.name())).toList();
    for (String size : design.sizes().names()) {
      List<Piece> drawn = size.equals(base) ? inBase : drawn(others, size);
      if (whole && drawn.size() == design.outlined().size()) {
        completed(drawn, size).ifPresent(pieces -> bySize.put(size, pieces));
      }
    }
    return bySize.size() == design.sizes().names().size()
        ? Optional.of(new Style(design, bySize))
        : Optional.empty();
  }

  /** In the order of the design; what is wrong with a piece is not told of those made from it. */
  private List<Piece> drawn(List<Outlined> wanted, String size) {
    Making making = design.making(size);
    Map<String, Piece> pieces = new HashMap<>();
    for (Outlined outlined : MadeFrom.inOrder(wanted)) {
      if (pieces.keySet().containsAll(outlined.needs())) {
        try {
          Piece piece = making.finished(outlined);
          piece.inCloths().forEach(inCloth -> Cutter.cut(inCloth, 1, 1));
          pieces.put(outlined.name(), piece);
        } catch (InputException e) {
          e.problems().forEach(p -> tell(p, outlined.name(), size));
        }
      }
    }
    return wanted.stream().map(p -> pieces.get(p.name())).filter(Objects::nonNull).toList();
  }

  private void tell(Problem problem, String piece, String size) {
    if (size.equals(design.sizes().base())) {
      entry(piece).report(problem);
    } else if (problem.file().isPresent()) {
      entry(piece).report(inSize(problem, size, problem.remedy()));
    } else if (grade.get(piece).present()) {
      grade.get(piece).report(inSize(problem, size, "See how its points move between sizes"));
    } else {
      entry(piece).report(inSize(problem, size, problem.remedy()));
    }
  }

  private static Problem inSize(Problem problem, String size, String remedy) {
    return new Problem(
        problem.file(),
        problem.line(),
        problem.piece(),
        problem.edge(),
        "in size " + size + ", " + problem.what(),
        remedy);
  }

  private Optional<PieceSet> completed(List<Piece> drawn, String size) {
    try {
      return Optional.of(design.completed(drawn, size));
    } catch (InputException e) {
      e.problems().forEach(p -> tellComputed(p, size));
      return Optional.empty();
    }
  }

  /** Of its edges only its own notches can be wrong in one size and right in another. */
  private void tellComputed(Problem problem, String size) {
    Spot notches = entry(problem.piece().orElseThrow()).get("notches");
    if (problem.edge().isPresent() && notches.present()) {
      notches.report(
          size.equals(design.sizes().base()) ? problem : inSize(problem, size, problem.remedy()));
    } else {
      measured(problem.piece().get()).report(problem);
    }
  }

  private Spot entry(String piece) {
    return style.get("pieces").get(piece);
  }

  private Spot measured(String piece) {
    return StyleReader.RULES.stream()
        .map(rule -> entry(piece).get(rule).get("from"))
        .filter(Spot::present)
        .findFirst()
        .orElse(entry(piece));
  }
}
