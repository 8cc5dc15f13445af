package ellwand.file.drawn;

import ellwand.file.source.Yaml;
import ellwand.geometry.Motion;
import ellwand.geometry.Point;
import ellwand.pattern.Draft;
import ellwand.pattern.GradeRule;
import ellwand.pattern.Notch;
import ellwand.pattern.Piece;
import ellwand.pattern.Sizes;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToIntFunction;
import java.util.stream.Stream;

/** Grades the pieces of a drawing as it draws them in each size, or as its rules say. */
public final class PiecesInSizes {

  /** What a line may stray before it is told, mm: the trueness that is promised. */
  private static final double WORTH_SAYING_MM = 0.01;

  /** The same for a notch or an inner line, mm: cloth is not marked truer. */
  private static final double INNER_MM = 0.5;

  private final Drawing drawing;
  private final DrawnSizes drawn;
  private final Sizes sizes;
  private final Map<String, Map<String, FoundPiece>> others = new LinkedHashMap<>();

  private PiecesInSizes(Drawing drawing, DrawnSizes drawn, Asked asked) {
    this.drawing = drawing;
    this.drawn = drawn;
    this.sizes = new Sizes(drawn.names(), drawn.base(), Map.of());
    drawn
        .lines()
        .forEach(
            (size, lines) -> {
              Map<String, FoundPiece> byName = new LinkedHashMap<>();
              PieceFinder.find(drawing.with(lines), asked, new ArrayList<>())
                  .forEach(p -> byName.put(p.calledInDrawing(), p));
              others.put(size, byName);
            });
  }

  /**
   * The pieces with their grading.
   *
   * @param base those found in the size that the drawing's own lines are in
   * @throws InputException if the sizes of a piece do not go together
   */
  public static List<FoundPiece> graded(Drawing drawing, List<FoundPiece> base, Asked asked) {
    if (drawing.sizes().filter(s -> s.names().size() > 1).isEmpty()) {
      return base;
    }
    PiecesInSizes in = new PiecesInSizes(drawing, drawing.sizes().get(), asked);
    return base.stream().map(in::located).toList();
  }

  private FoundPiece located(FoundPiece piece) {
    try {
      return graded(piece);
    } catch (InputException e) {
      throw new InputException(
          e.problems().stream()
              .map(p -> p.piece().isPresent() ? p : p.piece(piece.calledInDrawing()))
              .map(p -> p.file().isPresent() ? p : p.at(drawing.file(), piece.line()))
              .toList());
    }
  }

  private FoundPiece graded(FoundPiece piece) {
    if (drawn.rules().containsKey(piece.calledInDrawing())) {
      return piece.graded(piece.draft(), ruled(piece), List.of());
    }
    Map<String, FoundPiece> own = new LinkedHashMap<>();
    others.forEach(
        (size, pieces) ->
            Optional.ofNullable(pieces.get(piece.calledInDrawing()))
                .ifPresent(p -> own.put(size, p)));
    if (own.isEmpty()) {
      return piece.graded(
          piece.draft(), Map.of(), List.of("it is drawn in one size and taken for all"));
    }
    if (own.size() < others.size()) {
      String lacks = others.keySet().stream().filter(s -> !own.containsKey(s)).findFirst().get();
      throw refused(piece, "it is not drawn in size " + lacks + ", as it is in others");
    }
    Map<String, SizedOutline> shapes = new LinkedHashMap<>();
    own.forEach((size, p) -> shapes.put(size, new SizedOutline(p.draft().nodes(), p.turns())));
    GradeFit.Fitted fitted =
        GradeFit.of(piece.draft(), piece.turns(), sizes, shapes, true)
            .orElseThrow(() -> refused(piece, counts(piece, own)));
    List<String> said = new ArrayList<>();
    if (fitted.straysMm() > WORTH_SAYING_MM) {
      said.add(mm("its outline in other sizes is graded within %.2f mm", fitted.straysMm()));
    }
    own.entrySet().stream()
        .filter(e -> !e.getValue().words().path("cut").equals(piece.words().path("cut")))
        .findFirst()
        .ifPresent(
            e ->
                said.add(
                    "it is cut otherwise in size %s (%s), which a style says for all sizes"
                        .formatted(e.getKey(), Yaml.line(e.getValue().words().path("cut")))));
    double notches = farthest(fitted, own, PiecesInSizes::notches);
    if (notches > INNER_MM) {
      said.add(
          mm(
              "its notches keep their share of the edge, in some size %.1f mm from the drawn",
              notches));
    }
    double lines = farthest(fitted, own, PiecesInSizes::lineEnds);
    if (lines > INNER_MM) {
      said.add(
          mm("its inner lines move with its points, in some size %.1f mm from the drawn", lines));
    }
    otherwise("notches", d -> d.notches().size(), piece, own).ifPresent(said::add);
    otherwise("inner lines", d -> d.innerLines().size(), piece, own).ifPresent(said::add);
    return piece.graded(fitted.draft(), fitted.rules(), said);
  }

  private static String mm(String text, double mm) {
    return String.format(Locale.ROOT, text, mm);
  }

  private static String counts(FoundPiece piece, Map<String, FoundPiece> own) {
    return own.entrySet().stream()
        .filter(e -> e.getValue().turns().size() != piece.turns().size())
        .findFirst()
        .map(
            e ->
                "its outline has %d turn points, and %d in size %s, so that nobody can tell which stand for which"
                    .formatted(piece.turns().size(), e.getValue().turns().size(), e.getKey()))
        .orElse("no turn points are marked on its outline");
  }

  private InputException refused(FoundPiece piece, String what) {
    return new InputException(
        Problem.inPiece(
                piece.calledInDrawing(),
                what,
                "Read one size alone (--sizes %s)".formatted(drawn.base()))
            .at(drawing.file(), piece.line()));
  }

  /** Shifts on the page as shifts of the piece, which is turned to lie along its grain. */
  private Map<String, GradeRule> ruled(FoundPiece piece) {
    Motion turn = piece.placing().unshifted();
    Map<String, GradeRule> rules = new LinkedHashMap<>();
    drawn
        .rules()
        .get(piece.calledInDrawing())
        .forEach(
            (point, rule) -> {
              Map<String, Point> shifts = new LinkedHashMap<>();
              for (String size : sizes.names()) {
                int steps = sizes.names().indexOf(size) - sizes.names().indexOf(sizes.base());
                if (steps != 0) {
                  shifts.put(size, Even.of(turn.apply(rule.shiftMm(size, steps))));
                }
              }
              GradeFit.rule(shifts, sizes).ifPresent(r -> rules.put(point, r));
            });
    return rules;
  }

  /** What is drawn in some size another number of times, as pleats are. */
  private Optional<String> otherwise(
      String what, ToIntFunction<Draft> count, FoundPiece piece, Map<String, FoundPiece> own) {
    int here = count.applyAsInt(piece.draft());
    return own.entrySet().stream()
        .filter(e -> count.applyAsInt(e.getValue().draft()) != here)
        .findFirst()
        .map(
            e ->
                "it has %d %s in size %s; the %d of size %s are those which a style draws in all sizes"
                    .formatted(
                        count.applyAsInt(e.getValue().draft()),
                        what,
                        e.getKey(),
                        here,
                        sizes.base()));
  }

  /** How far what is graded lies in any size from what is drawn there, or that from it, mm. */
  private double farthest(
      GradeFit.Fitted fitted, Map<String, FoundPiece> own, Function<Draft, List<Point>> places) {
    double most = 0;
    Sizes graded =
        new Sizes(sizes.names(), sizes.base(), Map.of(fitted.draft().name(), fitted.rules()));
    for (Map.Entry<String, FoundPiece> other : own.entrySet()) {
      List<Point> drawnThere = places.apply(other.getValue().draft());
      List<Point> gradedThere = places.apply(graded.graded(fitted.draft(), other.getKey()));
      most = Math.max(most, farthest(gradedThere, drawnThere));
      most = Math.max(most, farthest(drawnThere, gradedThere));
    }
    return most;
  }

  /** Of some points from the nearest of others; where there are none of these, from nothing. */
  private static double farthest(List<Point> points, List<Point> others) {
    return points.stream()
        .mapToDouble(p -> others.stream().mapToDouble(p::distance).min().orElse(0))
        .max()
        .orElse(0);
  }

  private static List<Point> notches(Draft draft) {
    Piece piece = draft.piece();
    return piece.notches().stream().map((Notch n) -> at(piece, n)).toList();
  }

  private static List<Point> lineEnds(Draft draft) {
    return draft.innerLines().stream()
        .flatMap(line -> Stream.of(line.line().start(), line.line().end()))
        .toList();
  }

  private static Point at(Piece piece, Notch notch) {
    return piece.edge(notch.edge()).line().tangent(notch.atMm()).at();
  }
}
