package ellwand.file.drawn;

import ellwand.geometry.Point;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Tells which closed lines of a drawing are pieces, and which other lines belong to which. */
public final class PieceFinder {

  /** Closed lines that enclose less are marks and letters, square mm. */
  private static final double LEAST_MM2 = 100;

  /** No more than a slip of the pen, whatever it is called, square mm. */
  private static final double LEAST_NAMED_MM2 = 1;

  /** As many as a style holds. */
  private static final int MOST_PIECES = 500;

  /** A piece has no more; see the job's schema. */
  private static final int MOST_POINTS = 2_000;

  private static final int MOST_INNER_LINES = 2_000;

  /** Lines of no piece that are told one by one. */
  private static final int MOST_TOLD = 5;

  /** How far a fold line or a notch may lie outside its piece, mm; our own choice. */
  private static final double BESIDE_MM = 5;

  /** Between which distances a line inside a piece is taken for its sewing line, mm. */
  private static final double[] SEAM_MM = {2, 40};

  private final Drawing drawing;
  private final Asked asked;
  private final List<String> said;
  private final List<Outer> outers = new ArrayList<>();
  private final List<DrawnLine> strays = new ArrayList<>();
  private int small;

  /** A piece's outermost line and what belongs to it. */
  private static final class Outer {
    final DrawnLine line;
    final Ring ring;
    final List<DrawnLine> inner = new ArrayList<>();
    final List<DrawnText> texts = new ArrayList<>();

    Outer(DrawnLine line, Ring ring) {
      this.line = line;
      this.ring = ring;
    }
  }

  private PieceFinder(Drawing drawing, Asked asked, List<String> said) {
    this.drawing = drawing.only(asked.layers());
    this.asked = asked;
    this.said = said;
  }

  /**
   * The pieces of a drawing.
   *
   * @param said takes what was left out or mended, one sentence each
   * @throws InputException if there is none, or one cannot be made
   */
  public static List<FoundPiece> find(Drawing drawing, Asked asked, List<String> said) {
    return new PieceFinder(drawing, asked, said).found();
  }

  private List<FoundPiece> found() {
    List<DrawnLine> lines = Closing.of(drawing.lines(), said);
    outline(lines);
    if (outers.isEmpty() && exact()) {
      // All of its pieces may be made from measures or from one another.
      return List.of();
    }
    if (outers.isEmpty()) {
      throw noPiece();
    }
    Map<Label, Outer> owners = owners();
    Set<DrawnLine> own = Collections.newSetFromMap(new IdentityHashMap<>());
    outers.forEach(o -> own.add(o.line));
    for (DrawnLine line : lines) {
      if (!own.contains(line)) {
        give(line, owners);
      }
    }
    tellOfStrays();
    drawing.texts().forEach(text -> give(text, owners));
    List<FoundPiece> pieces = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    for (Outer outer : outers) {
      Parts parts = parts(outer, owners);
      String called = parts.name().orElse("piece " + (pieces.size() + 1));
      try {
        pieces.add(new PieceMaker(parts, called, asked, drawing.grainDegrees(), exact()).piece());
      } catch (InputException e) {
        e.problems().stream()
            .map(p -> p.piece(called).at(drawing.file(), outer.line.label().line()))
            .forEach(problems::add);
      }
    }
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
    return pieces;
  }

  /** Whether the drawing says all in its own words, so that nothing is to be rounded or named. */
  private boolean exact() {
    return drawing.words().isPresent();
  }

  private InputException noPiece() {
    String where = asked.layers().isEmpty() ? "" : " on the layers asked for";
    return small > 0
        ? refused(
            "its closed lines%s, %d of them, enclose less than 1 cm² or cross themselves"
                .formatted(where, small),
            "See that no outline crosses itself, and that the drawing has its true size"
                + " (--drawing-unit for DXF, --dpi for SVG)")
        : refused(
            "no closed line in it encloses a piece" + where,
            "Close the outlines in the drawing; lines up to half a mm apart are closed for you"
                + read());
  }

  /** How the file was read, such as without hidden layers, may be why nothing was found. */
  private String read() {
    return drawing.said().isEmpty()
        ? ""
        : ". How it was read: " + String.join(" ", drawing.said()).replaceFirst("\\.$", "");
  }

  private InputException refused(String what, String remedy) {
    return new InputException(Problem.of(what, remedy).at(drawing.file(), 0));
  }

  /** Of the closed lines those that lie in no other. */
  private void outline(List<DrawnLine> lines) {
    List<Outer> closed = new ArrayList<>();
    for (DrawnLine line : lines) {
      Optional<Role> role = line.label().role();
      if (!line.closed()
          || role.isPresent() && role.get() != Role.SEWING && role.get() != Role.CUTTING) {
        continue;
      }
      checkPoints(line);
      Ring ring = new Ring(line.path());
      if (ring.area() >= (role.isPresent() ? LEAST_NAMED_MM2 : LEAST_MM2)) {
        closed.add(new Outer(line, ring));
      } else {
        small++;
      }
    }
    closed.sort(Comparator.comparingDouble(o -> -o.ring.area()));
    for (Outer candidate : closed) {
      if (outers.stream().noneMatch(o -> o.ring.holds(candidate.ring))) {
        outers.add(candidate);
        if (outers.size() > MOST_PIECES) {
          throw refused(
              "it has more than " + MOST_PIECES + " closed outlines",
              "Leave out what is no piece, or name the layers to read (--layers)");
        }
      }
    }
    outers.sort(Comparator.comparingInt(o -> o.line.label().line()));
    if (small > 0) {
      said.add(small + " closed line(s) of less than 1 cm² are taken for marks, not for pieces.");
    }
  }

  private void checkPoints(DrawnLine line) {
    if (line.path().segments().size() > MOST_POINTS) {
      throw new InputException(
          Problem.of(
                  "a closed line has %,d points, and a piece at most %,d"
                      .formatted(line.path().segments().size(), MOST_POINTS),
                  "Simplify it in the drawing program")
              .at(drawing.file(), line.label().line()));
    }
  }

  /** Of every group that holds one piece, that piece. */
  private Map<Label, Outer> owners() {
    Map<Label, Outer> owners = new LinkedHashMap<>();
    Map<Label, Integer> counts = new LinkedHashMap<>();
    for (Outer outer : outers) {
      for (Label label : outer.line.label().groups()) {
        owners.put(label, outer);
        counts.merge(label, 1, Integer::sum);
      }
    }
    counts.forEach(
        (label, count) -> {
          if (count > 1) {
            owners.remove(label);
          }
        });
    return owners;
  }

  private void give(DrawnLine line, Map<Label, Outer> owners) {
    Optional<Role> role = line.label().role();
    if (role.filter(Role.LEFT_OUT::equals).isPresent()) {
      return;
    }
    Optional<Outer> outer =
        byGroup(line.label(), owners)
            .filter(o -> line.label().chain().stream().anyMatch(Label::isPiece))
            .or(() -> outers.stream().filter(o -> o.ring.contains(line.middle())).findFirst())
            .or(() -> byGroup(line.label(), owners))
            .or(() -> beside(line));
    outer.ifPresentOrElse(o -> o.inner.add(line), () -> strays.add(line));
  }

  private void tellOfStrays() {
    for (DrawnLine line : strays.subList(0, Math.min(strays.size(), MOST_TOLD))) {
      said.add(
          "%s belongs to no piece and is left out."
              .formatted(
                  line.label().name().map(n -> "Line " + n).orElse("A line") + at(line.label())));
    }
    if (strays.size() > MOST_TOLD) {
      said.add(
          "%,d more lines belong to no piece and are left out."
              .formatted(strays.size() - MOST_TOLD));
    }
  }

  private static String at(Label label) {
    return label.line() > 0 ? " (line " + label.line() + " of the file)" : "";
  }

  private void give(DrawnText text, Map<Label, Outer> owners) {
    outers.stream()
        .filter(o -> o.ring.contains(text.at()))
        .findFirst()
        .or(() -> byGroup(text.label(), owners))
        .ifPresent(o -> o.texts.add(text));
  }

  private static Optional<Outer> byGroup(Label label, Map<Label, Outer> owners) {
    return label.chain().stream().filter(owners::containsKey).findFirst().map(owners::get);
  }

  private Optional<Outer> beside(DrawnLine line) {
    Point middle = line.middle();
    return outers.stream()
        .filter(o -> o.ring.box().grown(BESIDE_MM).contains(middle))
        .filter(o -> o.ring.distance(middle) <= BESIDE_MM)
        .min(Comparator.comparingDouble(o -> o.ring.distance(middle)));
  }

  private Parts parts(Outer outer, Map<Label, Outer> owners) {
    List<String> guesses = new ArrayList<>();
    List<DrawnLine> inner = new ArrayList<>(outer.inner);
    if (inner.size() > MOST_INNER_LINES) {
      int before = inner.size();
      inner.removeIf(l -> l.label().role().filter(r -> r != Role.INNER).isEmpty());
      guesses.add(before - inner.size() + " inner lines are left out, since there are so many");
    }
    Optional<DrawnLine> sewing = sewing(outer, inner, guesses);
    sewing.ifPresent(inner::remove);
    if (!exact()) {
      tellOfClosed(inner, guesses);
    }
    List<Label> labels =
        outer.line.label().groups().stream().filter(l -> owners.get(l) == outer).toList();
    return new Parts(
        sewing.orElse(outer.line),
        sewing.map(s -> outer.line),
        inner,
        outer.texts,
        name(labels, outer.texts, guesses),
        labels,
        guesses);
  }

  /** A frame that nobody called one would else swallow all pieces untold. */
  private static void tellOfClosed(List<DrawnLine> inner, List<String> guesses) {
    List<DrawnLine> closed =
        inner.stream()
            .filter(l -> l.closed() && l.label().role().isEmpty())
            .filter(l -> new Ring(l.path()).area() >= LEAST_MM2)
            .toList();
    if (!closed.isEmpty()) {
      String names =
          closed.stream()
              .flatMap(l -> l.label().pieceName().stream())
              .distinct()
              .limit(MOST_TOLD)
              .collect(Collectors.joining(", "));
      guesses.add(
          "%d closed line(s) in it%s are drawn on it, not cut out as pieces; if they are pieces,"
                  .formatted(closed.size(), names.isEmpty() ? "" : " (" + names + ")")
              + " call the line round them frame");
    }
  }

  /** The line inside that is sewn along, so that the outer one is cut along. */
  private static Optional<DrawnLine> sewing(
      Outer outer, List<DrawnLine> inner, List<String> guesses) {
    List<DrawnLine> closed = inner.stream().filter(DrawnLine::closed).toList();
    Optional<DrawnLine> named =
        closed.stream()
            .filter(l -> l.label().role().filter(Role.SEWING::equals).isPresent())
            .filter(l -> new Ring(l.path()).area() >= LEAST_NAMED_MM2)
            .max(Comparator.comparingDouble(l -> new Ring(l.path()).area()));
    if (named.isPresent()) {
      return named;
    }
    Optional<DrawnLine> beside =
        closed.stream()
            .filter(l -> l.label().role().isEmpty())
            .filter(l -> outer.ring.isFollowedBy(new Ring(l.path()), SEAM_MM[0], SEAM_MM[1]))
            .findFirst();
    beside.ifPresent(
        l -> guesses.add("the line that runs beside its outline is taken for its sewing line"));
    return beside;
  }

  private Optional<String> name(List<Label> labels, List<DrawnText> texts, List<String> guesses) {
    Optional<String> drawn = labels.stream().flatMap(l -> l.pieceName().stream()).findFirst();
    if (drawn.isPresent()) {
      return drawn;
    }
    Optional<String> written =
        texts.stream().flatMap(t -> CutWords.name(t.words()).stream()).findFirst();
    guesses.add(
        written
            .map(w -> "named after the words in it")
            .orElse("it has no name in the drawing, so it got a number"));
    return written;
  }
}
