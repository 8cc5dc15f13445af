package ellwand.file.drawn;

import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.geometry.Motion;
import ellwand.geometry.Path;
import ellwand.pattern.Cut;
import ellwand.pattern.Draft;
import ellwand.pattern.Grain;
import ellwand.pattern.InnerLine;
import ellwand.pattern.Notch;
import ellwand.pattern.Piece;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Makes a piece of the lines that belong to it. */
final class PieceMaker {

  /** Shallower cuts are not seen, mm. */
  private static final double LEAST_NOTCH_MM = 1;

  private Parts parts;
  private final String called;
  private final Asked asked;
  private final double grainDegrees;
  private final boolean exact;
  private final ObjectNode words;
  private final List<String> notes;
  private final List<String> said = new ArrayList<>();
  private String[] names;
  private List<Integer> turns;
  private List<Stretch> stretches;

  /**
   * @param called in the drawing
   * @param grainDegrees how the grain runs where no line says so
   * @param exact whether the drawing says all in its own words
   */
  PieceMaker(Parts parts, String called, Asked asked, double grainDegrees, boolean exact) {
    this.parts = parts;
    this.called = called;
    this.asked = asked;
    this.grainDegrees = grainDegrees;
    this.exact = exact;
    this.words = PieceWords.entries(parts.labels());
    this.notes = PieceWords.sentences(parts);
    this.said.addAll(parts.said());
    this.names = OutlineNodes.marked(parts, said);
    this.turns = OutlineNodes.turns(parts);
    this.stretches =
        exact
            ? List.of()
            : new Corners(parts.outline().path().segments(), parts.outline().parts(), names)
                .stretches();
  }

  FoundPiece piece() {
    Optional<Stretch> fold = exact ? Optional.empty() : FoldFinder.fold(parts, stretches, said);
    if (asked.cuttingLineMm().isPresent() && parts.cutting().isEmpty() && !exact) {
      fold = takeOff(asked.cuttingLineMm().getAsDouble(), fold);
    }
    Motion placing = Frame.of(parts, fold, grainDegrees, said);
    List<Draft.Node> nodes = new OutlineNodes(parts, names, placing, exact).nodes();
    Draft bare = draft(nodes, named(fold), fold, List.of(), List.of());
    List<DrawnLine> left = new ArrayList<>();
    for (DrawnLine line : parts.inner()) {
      if (!isConsumed(line.label().role())) {
        left.add(line.moved(placing));
      }
    }
    List<Notch> notches = notches(bare, placing, left);
    tellOfCuts(fold.isPresent());
    Draft draft = draft(nodes, bare.namedEdges(), fold, notches, inner(left));
    return new FoundPiece(
        called, draft, words, placing, turns, Map.of(), said, parts.outline().label().line());
  }

  /** Makes the drawn outline the cutting line, and gives the fold edge of the new sewing line. */
  private Optional<Stretch> takeOff(double mm, Optional<Stretch> fold) {
    boolean clockwise = new Ring(parts.outline().path()).signedArea() < 0;
    List<Stretch> inset = Inset.of(stretches, fold, mm, clockwise);
    Optional<Stretch> folded = fold.map(f -> inset.get(stretches.indexOf(f)));
    parts = parts.within(inset);
    String[] inside = new String[parts.outline().path().segments().size()];
    for (int k = 0; k < inset.size(); k++) {
      inside[inset.get(k).from()] = names[stretches.get(k).from()];
    }
    names = inside;
    turns = turns.isEmpty() ? turns : inset.stream().map(Stretch::from).toList();
    stretches = inset;
    return folded;
  }

  /** What is drawn for other ends than to be drawn on the piece. */
  private boolean isConsumed(Optional<Role> role) {
    return role.filter(
            r ->
                Set.of(Role.GRAIN, Role.TOP, Role.ORIGIN, Role.POINT, Role.TURN, Role.FOLD)
                        .contains(r)
                    || exact && r == Role.CUTTING)
        .isPresent();
  }

  private List<Draft.NamedEdge> named(Optional<Stretch> fold) {
    List<Draft.NamedEdge> named = new ArrayList<>();
    words
        .path("edges")
        .fields()
        .forEachRemaining(
            e -> {
              if (e.getValue().has("from") && e.getValue().has("to")) {
                named.add(
                    edge(
                        e.getKey(),
                        e.getValue().get("from").asText(),
                        e.getValue().get("to").asText(),
                        OptionalDouble.empty()));
              }
            });
    if (!named.isEmpty() || exact) {
      return named;
    }
    Map<String, Double> measured = measured(fold);
    double usual = allowance(measured);
    for (int k = 0; k < stretches.size(); k++) {
      String name = stretches.get(k).name();
      Double own = measured.get(name);
      named.add(
          edge(
              name,
              names[stretches.get(k).from()],
              names[stretches.get((k + 1) % stretches.size()).from()],
              own == null || own == usual ? OptionalDouble.empty() : OptionalDouble.of(own)));
    }
    return named;
  }

  private static Draft.NamedEdge edge(
      String name, String from, String to, OptionalDouble allowanceMm) {
    return new Draft.NamedEdge(name, from, to, allowanceMm, false);
  }

  /** By edge, where a cutting line is drawn round the sewing line; none of the fold. */
  private Map<String, Double> measured(Optional<Stretch> fold) {
    Map<String, Double> measured = new LinkedHashMap<>();
    if (parts.cutting().isPresent()) {
      Ring cutting = new Ring(parts.cutting().get().path());
      stretches.stream()
          .filter(s -> fold.filter(s::equals).isEmpty())
          .forEach(s -> measured.put(s.name(), Allowances.mm(s.path(), cutting)));
    }
    return measured;
  }

  private double allowance(Map<String, Double> measured) {
    return measured.isEmpty() ? asked.allowanceMm().orElse(0) : Allowances.most(measured.values());
  }

  private Draft draft(
      List<Draft.Node> nodes,
      List<Draft.NamedEdge> edges,
      Optional<Stretch> fold,
      List<Notch> notches,
      List<InnerLine> inner) {
    return new Draft(
        exact ? called : SafeName.of(CutWords.withoutCut(called)),
        nodes,
        edges,
        allowance(measured(fold)),
        fold.map(Stretch::name),
        Grain.ALONG,
        notches,
        inner,
        cuts(fold.isPresent()));
  }

  private List<Cut> cuts(boolean onFold) {
    List<Cut> cuts = CutWords.cuts(notes);
    if (cuts.isEmpty()) {
      return List.of(new Cut(CutWords.CLOTH, 1, onFold ? Cut.How.FOLD : Cut.How.WHOLE));
    }
    return cuts.stream().map(cut -> new Cut(cut.cloth(), cut.count(), how(cut, onFold))).toList();
  }

  /** A half piece is cut on the fold, or as a pair where its words say so. */
  private static Cut.How how(Cut cut, boolean onFold) {
    if (cut.how() == Cut.How.PAIR) {
      return Cut.How.PAIR;
    }
    return onFold ? Cut.How.FOLD : Cut.How.WHOLE;
  }

  /** What is said of cuts that do not go with the lines. */
  private void tellOfCuts(boolean onFold) {
    boolean said = CutWords.cuts(notes).stream().anyMatch(c -> c.how() == Cut.How.FOLD);
    if (said && !onFold && !words.has("fold")) {
      this.said.add(
          "its words say on fold, but no line marks the edge: it is cut as drawn; call that line"
              + " fold, or name the edge with fold: in the style");
    }
  }

  /** Takes the notches out of the lines that are left. */
  private List<Notch> notches(Draft bare, Motion placing, List<DrawnLine> left) {
    if (exact && parts.first(Role.NOTCH).isEmpty()) {
      return List.of();
    }
    Piece piece = bare.piece();
    boolean clockwise = new Ring(parts.outline().path()).signedArea() < 0;
    Map<String, EdgeLine> edges = new LinkedHashMap<>();
    piece
        .edges()
        .forEach(
            e ->
                edges.put(
                    e.name(),
                    new EdgeLine(
                        clockwise ? e.line().reversed() : e.line(),
                        exact ? EdgeLine.MEASURING_MM : EdgeLine.FINE_MM)));
    Optional<Ring> cutting = parts.cutting().map(c -> new Ring(c.path().moved(placing)));
    NotchFinder finder = new NotchFinder(edges, cutting, exact);
    List<DrawnLine> marks = left.stream().filter(finder::isNotch).toList();
    List<Notch> notches = finder.notches(marks);
    if (exact) {
      left.removeAll(marks);
      return notches;
    }
    List<Notch> cut = new ArrayList<>();
    int shallower = 0;
    for (Notch notch : notches) {
      double room = piece.edge(notch.edge()).allowanceMm();
      if (room >= notch.depthMm()) {
        cut.add(notch);
      } else if (room >= LEAST_NOTCH_MM) {
        cut.add(new Notch(notch.edge(), notch.atMm(), notch.strokes(), room));
        shallower++;
      }
    }
    if (cut.size() < notches.size()) {
      said.add(
          "%d notch(es) are drawn as lines, since there is no allowance to cut them into"
              .formatted(notches.size() - cut.size()));
      left.removeIf(l -> l.label().kinds().contains(NotchFinder.AIMED));
      return List.of();
    }
    left.removeAll(marks);
    if (!cut.isEmpty()) {
      said.add(cut.size() + (cut.size() == 1 ? " notch" : " notches"));
    }
    if (shallower > 0) {
      said.add(shallower + " of them only as deep as the allowance is wide");
    }
    return cut;
  }

  private List<InnerLine> inner(List<DrawnLine> left) {
    List<InnerLine> inner = new ArrayList<>();
    Set<String> names = new HashSet<>();
    for (DrawnLine line : left) {
      String name =
          line.label()
              .name()
              .or(
                  () ->
                      line.label()
                          .role()
                          .map(r -> r.name().toLowerCase(Locale.ROOT).replace('_', ' ')))
              .map(n -> exact ? n : SafeName.of(n))
              .orElse("line " + (inner.size() + 1));
      Path path = exact ? line.path() : Even.of(line.path());
      inner.add(new InnerLine(SafeName.free(name, names), path));
    }
    return inner;
  }
}
