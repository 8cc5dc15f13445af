package ellwand.pattern;

import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.geometry.Segment;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import ellwand.units.Length;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A rectangle that is folded in pleats to the length that it joins. It is drawn as a {@link
 * Gathered} one, edges called the same, with a line for each edge of a fold and each line that it
 * is laid to, and notches at their ends.
 *
 * @param joined what one of it is sewn to when folded, finished and more than 0
 * @param lengthMm finished, from the pleated edge to the hem, more than 0
 * @param panels how many equal ones share the pleats; 0 for as few as the cloth's width asks for
 * @param ownNotches its maker's own, measured on the edges of all of it
 */
public record Pleated(
    String name,
    Span joined,
    Pleating pleating,
    double lengthMm,
    Gathered.Seams seams,
    int panels,
    Grain grain,
    List<Cut> cuts,
    List<Notch> ownNotches)
    implements Rectangle {

  /** The edge of a fold, as it shows. */
  public static final String FOLD_LINE = "pleat fold";

  /** Where that is laid to. */
  public static final String LAID_TO = "laid to";

  /** Which way it is laid. */
  public static final String ARROW = "lay this way";

  /** Arrows stand at this share of the length, heads so long, mm. */
  private static final double ARROW_AT = 0.85;

  private static final double ARROW_HEAD_MM = 6;

  private static final double SAME_MM = 1e-6;

  public Pleated {
    cuts = List.copyOf(cuts);
    ownNotches = List.copyOf(ownNotches);
    List<Problem> problems = new ArrayList<>();
    if (!(joined.mm() > 0 && lengthMm > 0)) {
      problems.add(
          Problem.inPiece(
              name, "it is sewn to nothing, or has no length", "Give lengths of more than 0"));
    }
    if (panels < 0 || panels > 0 && pleating.count() % panels != 0) {
      problems.add(
          Problem.inPiece(
              name,
              pleating.words() + " cannot be shared out alike to " + panels + " panels",
              "Write panels: as a number that divides " + pleating.count()));
    }
    if (cuts.stream().anyMatch(c -> c.how() == Cut.How.FOLD)) {
      problems.add(
          Problem.inPiece(
              name,
              "pleats are not cut on the fold, where half of them would turn round",
              "Cut it whole, for example 1; a wide one comes in panels"));
    }
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
  }

  /** Width of the whole rectangle between its sewing lines, mm. */
  public double finishedWidthMm() {
    return pleating.widthMm(joined.mm());
  }

  /** How many times as wide as what it joins. */
  public double fullness() {
    return finishedWidthMm() / joined.mm();
  }

  private double everyMm() {
    return joined.mm() / pleating.count();
  }

  @Override
  public Optional<String> caution(String cloth, Unit unit) {
    return joined
        .caution(name, cloth, fullness(), unit)
        .or(
            () ->
                pleating.overlaps(everyMm())
                    ? Optional.of(
                        "%s: pleats %s deep lie over one another, since there is one every %s; make them shallower or fewer unless that is meant"
                            .formatted(name, show(pleating.depthMm(), unit), show(everyMm(), unit)))
                    : Optional.empty());
  }

  @Override
  public List<String> notes(String cloth, Unit unit) {
    List<String> notes = new ArrayList<>();
    notes.add(
        "%s: %s %s deep, one every %s, fold %s to %s, a fullness of %s"
            .formatted(
                name,
                pleating.words(),
                show(pleating.depthMm(), unit),
                show(everyMm(), unit),
                show(finishedWidthMm(), unit),
                show(joined.mm(), unit),
                Fullness.shown(fullness())));
    joined.note(name, cloth, fullness(), unit).ifPresent(notes::add);
    return notes;
  }

  private static String show(double mm, Unit unit) {
    return new Length(mm).show(unit);
  }

  @Override
  public Piece piece() {
    return rectangle(name, 1, ownNotches, cuts);
  }

  /**
   * As it is cut from one cloth: in the panels asked for, or in the fewest that are narrow enough
   * and share the pleats out alike.
   *
   * @throws InputException if a panel of one pleat is wider than the cloth
   */
  @Override
  public Panels panels(Cut cut, double usableMm) {
    double sides = seams.sidesMm(cut.cloth());
    int asked = Math.max(1, panels);
    int count = asked;
    if (cut.grain().orElse(grain).onlyAlong()) {
      while (count <= pleating.count()
          && !(pleating.count() % count == 0
              && count % asked == 0
              && finishedWidthMm() / count + sides <= usableMm + SAME_MM)) {
        count++;
      }
      if (count > pleating.count()) {
        throw new InputException(
            Problem.inPiece(
                name,
                "a panel of one pleat is %.1f cm wide, more than the cloth"
                    .formatted((finishedWidthMm() / pleating.count() + sides) / Unit.CM.mm()),
                "Fold more pleats, less deep, or take a wider cloth"));
      }
    }
    int shared = count;
    return new Panels(
        name,
        new PanelNotches(ownNotches, count, finishedWidthMm() / count)
            .panels(name, cut, (panel, own, all) -> rectangle(panel, shared, own, List.of(all))),
        count,
        asked,
        finishedWidthMm() + sides,
        finishedWidthMm() / count + sides,
        usableMm,
        false,
        Optional.empty());
  }

  private Piece rectangle(String called, int count, List<Notch> own, List<Cut> asCut) {
    double width = finishedWidthMm() / count;
    Point hemStart = new Point(0, 0);
    Point topStart = new Point(lengthMm, 0);
    Point topEnd = new Point(lengthMm, width);
    Point hemEnd = new Point(0, width);
    List<InnerLine> lines = new ArrayList<>();
    List<Double> places = new ArrayList<>();
    double each = everyMm() + pleating.takesMm();
    for (int i = 0; i < pleating.count() / count; i++) {
      add(FOLD_LINE, i * each, pleating.folds(everyMm()), lines, places);
      add(LAID_TO, i * each, pleating.laidTo(everyMm()), lines, places);
      for (int fold = 0; fold < pleating.ways().length; fold++) {
        double at = i * each + pleating.folds(everyMm())[fold];
        lines.add(arrow(at, pleating.ways()[fold], width));
      }
    }
    List<Notch> notches = new ArrayList<>(QuarterMarks.at(Gathered.TOP, places, seams.top()));
    notches.addAll(own);
    return new Piece(
        called,
        List.of(
            new Edge(Gathered.OTHER_SIDE, Path.line(hemStart, topStart), seams.side(), false),
            new Edge(Gathered.TOP, Path.line(topStart, topEnd), seams.top(), false)
                .takenUpTo(joined.mm() / count, Gathers.How.PLEATED),
            new Edge(Gathered.SIDE, Path.line(topEnd, hemEnd), seams.side(), false),
            new Edge(
                Gathered.HEM, Path.line(hemEnd, hemStart), seams.hem(), seams.hemTurnedBack())),
        Optional.empty(),
        grain,
        notches,
        lines,
        asCut);
  }

  /** From the edge of a fold towards where it is laid, as far as the panel goes. */
  private InnerLine arrow(double from, double way, double width) {
    double to = Math.max(0, Math.min(width, from + way * 2 * pleating.depthMm()));
    double head = Math.min(ARROW_HEAD_MM, Math.abs(to - from) / 3);
    double x = lengthMm * ARROW_AT;
    return new InnerLine(
        ARROW,
        new Path(
            List.of(
                line(x, from, x, to),
                line(x, to, x + head, to - way * head),
                line(x + head, to - way * head, x, to),
                line(x, to, x - head, to - way * head))));
  }

  private static Segment line(double x, double y, double toX, double toY) {
    return new Segment.Line(new Point(x, y), new Point(toX, toY));
  }

  private void add(
      String line, double start, double[] at, List<InnerLine> lines, List<Double> places) {
    for (double mm : at) {
      if (start + mm == 0) {
        continue;
      }
      places.add(start + mm);
      lines.add(
          new InnerLine(
              line, Path.line(new Point(0, start + mm), new Point(lengthMm, start + mm))));
    }
  }
}
