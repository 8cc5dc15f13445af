package ellwand.pattern;

import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import ellwand.units.Length;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A waistband, cuff, casing or strap: as long as what it joins, or a share of it where it is
 * stretched, and an overlap at one end.
 *
 * <p>It is drawn with its length along x, its joined edge below. Edges are called {@value #JOINED},
 * {@value #END}, {@value #FAR} and {@value #OTHER_END}, or {@value #FOLD} instead of the latter
 * where it is cut on the fold.
 *
 * @param joined what one of it is sewn to, finished and more than 0
 * @param share of that, more than 0: 0.8 for a rib
 * @param overlapMm more at its end, to be fastened, 0 or more
 * @param heightMm finished, more than 0
 * @param doubled whether it is folded along its middle, so that it is cut twice as high
 * @param ownNotches its maker's own, beside those at its quarters
 */
public record Band(
    String name,
    Span joined,
    double share,
    double overlapMm,
    double heightMm,
    boolean doubled,
    Seams seams,
    Grain grain,
    List<Cut> cuts,
    List<Notch> ownNotches)
    implements Rectangle {

  public static final String JOINED = "joined edge";
  public static final String END = "end";
  public static final String FAR = "far edge";
  public static final String OTHER_END = "other end";
  public static final String FOLD = "fold";

  /** Along the middle of one that is doubled. */
  public static final String FOLD_LINE = "fold line";

  /** Below this share few cloths stretch; common practice for ribs is 0.7 to 0.9. */
  private static final double LEAST_USUAL = 0.5;

  /** Allowances: of the edge that is sewn on, of the one across, and of the ends. */
  public record Seams(Allowance joined, Allowance far, Allowance ends) {}

  public Band {
    cuts = List.copyOf(cuts);
    ownNotches = List.copyOf(ownNotches);
    List<Problem> problems = new ArrayList<>();
    if (!(joined.mm() > 0 && heightMm > 0 && share > 0 && overlapMm >= 0)) {
      problems.add(
          Problem.inPiece(
              name, "a band is longer and higher than nothing", "Give its from: and height:"));
    }
    boolean onFold = cuts.stream().anyMatch(c -> c.how() == Cut.How.FOLD);
    if (cuts.stream().map(c -> c.how() == Cut.How.FOLD).distinct().count() > 1) {
      problems.add(
          Problem.inPiece(
              name,
              "it is cut on the fold in one cloth and otherwise in another",
              "Cut a band alike in all cloths"));
    } else if (onFold && overlapMm > 0) {
      problems.add(
          Problem.inPiece(
              name,
              "with an overlap its ends are not alike, so it has no half",
              "Cut it whole, or leave the overlap out"));
    } else if (onFold && cuts.stream().anyMatch(c -> c.grain().orElse(grain).lengthwise())) {
      problems.add(
          Problem.inPiece(
              name,
              "it lies along the grain, so that its middle cannot lie on a lengthwise fold",
              "Write grain: across, or cut it whole"));
    }
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
  }

  /** Between the sewing lines of its ends, mm. */
  public double finishedLengthMm() {
    return joined.mm() * share + overlapMm;
  }

  @Override
  public Optional<String> caution(String cloth, Unit unit) {
    return joined
        .caution(name, cloth, share, unit)
        .or(
            () ->
                share < LEAST_USUAL
                    ? Optional.of(
                        "%s: it is stretched to %s times its length; see that its cloth gives so much"
                            .formatted(name, Fullness.shown(1 / share)))
                    : Optional.empty());
  }

  @Override
  public List<String> notes(String cloth, Unit unit) {
    List<String> notes = new ArrayList<>();
    if (share != 1 || overlapMm > 0) {
      notes.add(
          "%s: %s long, %s of the %s that it joins%s"
              .formatted(
                  name,
                  show(finishedLengthMm(), unit),
                  share == 1
                      ? "all"
                      : String.format(Locale.ROOT, "%.1f", 100 * share).replace(".0", "") + " %",
                  show(joined.mm(), unit),
                  overlapMm > 0 ? " and " + show(overlapMm, unit) + " to overlap" : ""));
    }
    joined.note(name, cloth, share, unit).ifPresent(notes::add);
    return notes;
  }

  private static String show(double mm, Unit unit) {
    return new Length(mm).show(unit);
  }

  @Override
  public Panels panels(Cut cut, double usableMm) {
    return Panels.whole(
        piece().cut(List.of(cut)).inCloth(cut.cloth()), finishedLengthMm(), usableMm);
  }

  @Override
  public Piece piece() {
    boolean onFold = cuts.stream().anyMatch(c -> c.how() == Cut.How.FOLD);
    double length = onFold ? finishedLengthMm() / 2 : finishedLengthMm();
    double height = doubled ? 2 * heightMm : heightMm;
    Point a = new Point(0, 0);
    Point b = new Point(length, 0);
    Point c = new Point(length, height);
    Point d = new Point(0, height);
    return new Piece(
        name,
        List.of(
            new Edge(JOINED, Path.line(a, b), seams.joined, false)
                .takenUpTo((joined.mm() + overlapMm) / (onFold ? 2 : 1), Gathers.How.DRAWN_UP),
            new Edge(END, Path.line(b, c), seams.ends, false),
            new Edge(FAR, Path.line(c, d), seams.far, false),
            onFold
                ? new Edge(FOLD, Path.line(d, a), Allowance.NONE, false)
                : new Edge(OTHER_END, Path.line(d, a), seams.ends, false)),
        onFold ? Optional.of(FOLD) : Optional.empty(),
        grain,
        notches(onFold, length),
        doubled
            ? List.of(
                new InnerLine(
                    FOLD_LINE, Path.line(new Point(0, heightMm), new Point(length, heightMm))))
            : List.of(),
        cuts);
  }

  /** The quarters of what it joins, where the overlap begins, and its own. */
  private List<Notch> notches(boolean onFold, double length) {
    List<Notch> notches =
        new ArrayList<>(
            QuarterMarks.on(JOINED, length - (onFold ? 0 : overlapMm), 1, onFold, seams.joined));
    if (overlapMm > 0) {
      notches.addAll(QuarterMarks.at(JOINED, List.of(length - overlapMm), seams.joined));
    }
    notches.addAll(ownNotches);
    return notches;
  }
}
