package ellwand.pattern;

import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import ellwand.units.Length;
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
 * @param fullness below 1 it is stretched
 * @param lengthMm finished, from the gathered edge to the hem, more than 0
 * @param panels how many equal ones share the width, each with side allowances; 0 where one
 *     rectangle is cut in as few as the cloth's width asks for
 * @param cuts what one garment needs of it, before it is split into panels
 * @param ownNotches its maker's own, measured on the edges of all of it
 */
public record Gathered(
    String name,
    Span joined,
    Fullness fullness,
    double lengthMm,
    Seams seams,
    int panels,
    Grain grain,
    List<Cut> cuts,
    List<Notch> ownNotches)
    implements Rectangle {

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
    this(
        name,
        Span.given(joinedMm),
        Fullness.of(fullness),
        lengthMm,
        seams,
        0,
        grain,
        cuts,
        List.of());
  }

  public Gathered {
    cuts = List.copyOf(cuts);
    ownNotches = List.copyOf(ownNotches);
    List<Problem> problems = new ArrayList<>();
    if (!(joined.mm() > 0)) {
      problems.add(
          Problem.inPiece(
              name, "there is nothing to gather it onto", "Give a length of more than 0"));
    }
    if (panels < 0) {
      problems.add(
          Problem.inPiece(name, "it has less than no panels", "Write panels: as 1 or more"));
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

  /** Width of the whole rectangle between its sewing lines, mm, at its least fullness. */
  public double finishedWidthMm() {
    return joined.mm() * fullness.least();
  }

  /** Width of the whole rectangle with its side allowances in a cloth, mm. */
  public double cutWidthMm(String cloth) {
    return finishedWidthMm() + seams.sidesMm(cloth);
  }

  @Override
  public Optional<String> caution(String cloth, Unit unit) {
    return joined.caution(name, cloth, fullness.least(), unit).or(() -> twice(cloth, unit));
  }

  /** Where several are cut for a length that was given, they may be meant to share it. */
  private Optional<String> twice(String cloth, Unit unit) {
    return cuts.stream()
        .filter(c -> c.cloth().equals(cloth) && c.pieces() > 1)
        .filter(c -> panels == 0 && joined.shares().isEmpty() && !fullness.open())
        .map(
            c ->
                "%s: %d cut from %s, each for %s at a fullness of %s; if all are sewn to the same %s, it is %s: then write panels: %d and cut 1"
                    .formatted(
                        name,
                        c.pieces(),
                        cloth,
                        show(joined.mm(), unit),
                        fullness,
                        show(joined.mm(), unit),
                        Fullness.shown(c.pieces() * fullness.least()),
                        c.pieces()))
        .findFirst();
  }

  @Override
  public List<String> notes(String cloth, Unit unit) {
    return joined.note(name, cloth, fullness.least(), unit).stream().toList();
  }

  private static String show(double mm, Unit unit) {
    return new Length(mm).show(unit);
  }

  /** The whole rectangle as a piece, however wide. */
  @Override
  public Piece piece() {
    return rectangle(name, finishedWidthMm(), 1, ownNotches, cuts);
  }

  /**
   * The rectangle as it is cut from one cloth: in the panels asked for, or whole if the cloth is
   * wide enough, else in the fewest equal panels, each of those asked for split alike. Only with
   * {@link Grain#ALONG} does the cloth's width matter.
   *
   * @throws InputException if even the allowances are wider than the cloth
   */
  @Override
  public Panels panels(Cut cut, double usableMm) {
    double sides = seams.sidesMm(cut.cloth());
    boolean across = cut.grain().orElse(grain).onlyAlong();
    int asked = Math.max(1, panels);
    Optional<Integer> whole =
        fullness.open() && across ? widths(usableMm - sides, asked) : Optional.empty();
    double finished = whole.map(n -> n * wholeMm(usableMm - sides)).orElse(finishedWidthMm());
    int count = whole.orElseGet(() -> across ? fewest(finished, usableMm, sides, asked) : asked);
    double each = finished / count;
    return new Panels(
        name,
        new PanelNotches(ownNotches, count, each)
            .panels(
                name, cut, (panel, own, all) -> rectangle(panel, each, count, own, List.of(all))),
        count,
        asked,
        finished + sides,
        finished / count + sides,
        usableMm,
        whole.isPresent(),
        fullness.open()
            ? Optional.of(chosen(whole, finished, across, usableMm - sides))
            : Optional.empty());
  }

  /** How many whole widths of the cloth come to a fullness that will do, the fewest. */
  private Optional<Integer> widths(double room, int asked) {
    if (!(room > 0)) {
      return Optional.empty();
    }
    double each = asked * wholeMm(room);
    int sets = (int) Math.ceil((finishedWidthMm() - SAME_MM) / each);
    return sets * each <= joined.mm() * fullness.most() + SAME_MM
        ? Optional.of(sets * asked)
        : Optional.empty();
  }

  /** A whole width less its allowances, to the tenth of a mm below. */
  private static double wholeMm(double room) {
    return Math.floor(room * 10 + SAME_MM) / 10;
  }

  private String chosen(Optional<Integer> whole, double finished, boolean across, double room) {
    String taken = "a fullness of " + Fullness.shown(finished / joined.mm());
    if (whole.isPresent()) {
      return "%s, of the %s asked for: %s of the cloth, so that nothing is left beside it"
          .formatted(taken, fullness, widths(whole.get()));
    }
    int fewer = (int) Math.floor(finishedWidthMm() / Math.max(room, 1));
    return !across || !(room > 0)
        ? taken + ", the least asked for, since its width does not lie across the cloth"
        : "%s, the least asked for: %s%s would be %s"
            .formatted(
                taken,
                fewer == 0 ? "" : widths(fewer) + " would be " + shown(fewer * room) + ", ",
                widths(fewer + 1),
                shown((fewer + 1) * room));
  }

  private static String widths(int many) {
    return many == 1 ? "one whole width" : many + " whole widths";
  }

  private String shown(double widthMm) {
    return Fullness.shown(widthMm / joined.mm());
  }

  private int fewest(double finished, double usableMm, double sides, int asked) {
    double room = usableMm - sides;
    if (finished / asked + sides <= usableMm + SAME_MM) {
      return asked;
    }
    if (!(room > 0)) {
      throw new InputException(
          Problem.inPiece(
              name,
              "the cloth is narrower than its side allowances alone",
              "Make the side allowances narrower, or take a wider cloth"));
    }
    return asked * (int) Math.ceil((finished / asked - SAME_MM) / room);
  }

  private Piece rectangle(
      String called, double width, int count, List<Notch> own, List<Cut> asCut) {
    boolean onFold = asCut.stream().anyMatch(c -> c.how() == Cut.How.FOLD);
    double drawn = onFold ? width / 2 : width;
    Point hemStart = new Point(0, 0);
    Point topStart = new Point(lengthMm, 0);
    Point topEnd = new Point(lengthMm, drawn);
    Point hemEnd = new Point(0, drawn);
    String first = onFold ? FOLD : OTHER_SIDE;
    List<Notch> notches = new ArrayList<>(QuarterMarks.on(TOP, drawn, count, onFold, seams.top));
    notches.addAll(own);
    return new Piece(
        called,
        List.of(
            new Edge(
                first, Path.line(hemStart, topStart), onFold ? Allowance.NONE : seams.side, false),
            new Edge(TOP, Path.line(topStart, topEnd), seams.top, false)
                .takenUpTo(joined.mm() / count * drawn / width, Gathers.How.DRAWN_UP),
            new Edge(SIDE, Path.line(topEnd, hemEnd), seams.side, false),
            new Edge(HEM, Path.line(hemEnd, hemStart), seams.hem, seams.hemTurnedBack)),
        onFold ? Optional.of(FOLD) : Optional.empty(),
        grain,
        notches,
        List.of(),
        asCut);
  }
}
