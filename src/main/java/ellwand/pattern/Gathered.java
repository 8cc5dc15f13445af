package ellwand.pattern;

import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A rectangle gathered onto what it joins. Its finished width is the joined length times the
 * fullness: 10 in of ruffle from 15, 20 or 30 in at 1.5, 2 or 3 to 1 (the ruffle gauge page of
 * instructables.com).
 *
 * <p>It is drawn with its finished length along x, the gathered edge towards +x, so that with
 * {@link Grain#ALONG} its width lies across the cloth. Edges are called {@value #TOP}, {@value
 * #HEM}, {@value #SIDE} and {@value #OTHER_SIDE}, or {@value #FOLD} instead of the latter where it
 * is cut on the fold.
 *
 * @param joined what one of it is gathered onto, finished and more than 0
 * @param fullness 1 or more; 1 is not gathered
 * @param lengthMm finished, from the gathered edge to the hem, more than 0
 * @param cuts what one garment needs of it, before it is split into panels
 */
public record Gathered(
    String name,
    Span joined,
    double fullness,
    double lengthMm,
    Seams seams,
    Grain grain,
    List<Cut> cuts) {

  public static final String TOP = "top";
  public static final String HEM = "hem";
  public static final String SIDE = "side";
  public static final String OTHER_SIDE = "other side";
  public static final String FOLD = "fold";

  private static final double SAME_MM = 1e-6;

  /**
   * Allowances.
   *
   * @param side at each side, and at each join between panels
   */
  public record Seams(Allowance top, Allowance hem, Allowance side, boolean hemTurnedBack) {

    /** The same in every cloth, mm. */
    public Seams(double topMm, double hemMm, double sideMm, boolean hemTurnedBack) {
      this(Allowance.of(topMm), Allowance.of(hemMm), Allowance.of(sideMm), hemTurnedBack);
    }

    /** Both side allowances in a cloth, mm. */
    double sidesMm(String cloth) {
      return 2 * side.in(cloth).orElse(0);
    }
  }

  /** One that is gathered onto so many mm. */
  public Gathered(
      String name,
      double joinedMm,
      double fullness,
      double lengthMm,
      Seams seams,
      Grain grain,
      List<Cut> cuts) {
    this(name, Span.given(joinedMm), fullness, lengthMm, seams, grain, cuts);
  }

  public Gathered {
    cuts = List.copyOf(cuts);
    List<Problem> problems = new ArrayList<>();
    if (!(joined.mm() > 0)) {
      problems.add(
          Problem.inPiece(
              name, "there is nothing to gather it onto", "Give a length of more than 0"));
    }
    if (!(fullness >= 1 && Double.isFinite(fullness))) {
      problems.add(
          Problem.inPiece(
              name,
              "a fullness of " + fullness + " is less than the edge it is sewn to",
              "Write 1.5 for half as much again, 2 for twice as much"));
    }
    if (cuts.stream().map(c -> c.how() == Cut.How.FOLD).distinct().count() > 1) {
      problems.add(
          Problem.inPiece(
              name,
              "it is cut on the fold in one cloth and otherwise in another",
              "Cut a rectangle that is computed alike in all cloths"));
    }
    if (!(lengthMm > 0)) {
      problems.add(
          Problem.inPiece(name, "its finished length is nothing", "Give one of more than 0"));
    }
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
  }

  /** Width of the whole rectangle between its sewing lines, mm. */
  public double finishedWidthMm() {
    return joined.mm() * fullness;
  }

  /** Width of the whole rectangle with its side allowances in a cloth, mm. */
  public double cutWidthMm(String cloth) {
    return finishedWidthMm() + seams.sidesMm(cloth);
  }

  /** What its maker should look at before it is cut from a cloth. */
  Optional<String> caution(String cloth, Unit unit) {
    return joined.caution(name, cloth, fullness, unit);
  }

  /** What each of several is sewn to. */
  Optional<String> note(String cloth, Unit unit) {
    return joined.note(name, cloth, fullness, unit);
  }

  /** The whole rectangle as a piece, however wide. */
  public Piece piece() {
    return rectangle(finishedWidthMm(), cuts);
  }

  /**
   * The rectangle as it is cut from one cloth: whole if that is wide enough, else the fewest equal
   * panels. Only with {@link Grain#ALONG} does the cloth's width matter.
   *
   * @param usableMm what may be cut across the open cloth, before any growth for shrinkage
   * @throws InputException if even the allowances are wider than the cloth
   */
  public Panels panels(Cut cut, double usableMm) {
    double sides = seams.sidesMm(cut.cloth());
    int panels = cut.grain().orElse(grain).onlyAlong() ? fewest(usableMm, sides) : 1;
    Cut all = new Cut(cut.cloth(), cut.count() * panels, cut.how(), cut.grain());
    return new Panels(
        rectangle(finishedWidthMm() / panels, List.of(all)).inCloth(cut.cloth()),
        panels,
        finishedWidthMm() + sides,
        finishedWidthMm() / panels + sides,
        usableMm);
  }

  private int fewest(double usableMm, double sides) {
    double room = usableMm - sides;
    if (finishedWidthMm() + sides <= usableMm + SAME_MM) {
      return 1;
    }
    if (!(room > 0)) {
      throw new InputException(
          Problem.inPiece(
              name,
              "the cloth is narrower than its side allowances alone",
              "Make the side allowances narrower, or take a wider cloth"));
    }
    return (int) Math.ceil((finishedWidthMm() - SAME_MM) / room);
  }

  /** Drawn up to what it joins, or stretched where it is narrower. */
  private Edge top(Path line) {
    Edge flat = new Edge(TOP, line, seams.top, false);
    double away = line.length() * (1 - 1 / fullness);
    return away == 0 ? flat : flat.with(new Gathers(line.start(), line.end(), away));
  }

  private Piece rectangle(double width, List<Cut> asCut) {
    boolean onFold = asCut.stream().anyMatch(c -> c.how() == Cut.How.FOLD);
    double drawn = onFold ? width / 2 : width;
    Point hemStart = new Point(0, 0);
    Point topStart = new Point(lengthMm, 0);
    Point topEnd = new Point(lengthMm, drawn);
    Point hemEnd = new Point(0, drawn);
    String first = onFold ? FOLD : OTHER_SIDE;
    return new Piece(
        name,
        List.of(
            new Edge(
                first, Path.line(hemStart, topStart), onFold ? Allowance.NONE : seams.side, false),
            top(Path.line(topStart, topEnd)),
            new Edge(SIDE, Path.line(topEnd, hemEnd), seams.side, false),
            new Edge(HEM, Path.line(hemEnd, hemStart), seams.hem, seams.hemTurnedBack)),
        onFold ? Optional.of(FOLD) : Optional.empty(),
        grain,
        List.of(),
        List.of(),
        asCut);
  }
}
