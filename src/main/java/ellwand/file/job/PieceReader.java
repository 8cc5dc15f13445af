package ellwand.file.job;

import ellwand.file.alter.Steps;
import ellwand.file.source.Names;
import ellwand.file.source.Spot;
import ellwand.pattern.Allowance;
import ellwand.pattern.Asks;
import ellwand.pattern.Draft;
import ellwand.pattern.Finish;
import ellwand.pattern.InnerLine;
import ellwand.pattern.Notch;
import ellwand.pattern.Outlined;
import ellwand.pattern.Start;
import ellwand.pattern.Step;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Reads one piece with an outline. */
final class PieceReader {

  private PieceReader() {}

  /** The piece as described, or nothing if it cannot be read. */
  static Optional<Outlined> read(
      String name, Spot spot, PieceHead head, BlockReader blocks, StartReader starts) {
    int before = spot.problems().size();
    boolean drawn = spot.get("outline").present();
    List<Step> alter = Steps.read(spot.get("alter"));
    Spot block = spot.get("block");
    Optional<Start> start =
        drawn
            ? drawn(name, spot, head)
            : block.present() ? blocks.read(block) : starts.read(spot.get("from"));
    Optional<Finish> finish = FinishReader.read(spot, head, drawn);
    if (spot.problems().size() > before || start.isEmpty() || finish.isEmpty()) {
      return Optional.empty();
    }
    Spot value = spot.get("value");
    return Optional.of(
        new Outlined(
            name,
            start.get(),
            alter,
            finish.get(),
            value.present() ? Optional.of(value.node().asDouble()) : Optional.empty(),
            place(spot.get("place"))));
  }

  private static Optional<Start> drawn(String name, Spot spot, PieceHead head) {
    int before = spot.problems().size();
    List<Draft.NamedEdge> namedEdges =
        namedEdges(spot.get("edges"), head, spot.get("alter").present());
    List<Notch> notches = notches(spot.get("notches"));
    List<InnerLine> innerLines = innerLines(spot.get("lines"));
    List<Draft.Node> nodes = LineReader.nodes(spot.get("outline"));
    if (spot.problems().size() > before || head.allowance().isEmpty()) {
      checkEnds(name, spot);
      return Optional.empty();
    }
    return Optional.of(
        new Start.Drawn(
            new Draft(
                name,
                nodes,
                namedEdges,
                head.allowance().get(),
                spot.get("fold").text(),
                head.grain(),
                notches,
                innerLines,
                head.cuts())));
  }

  private static Optional<Asks.Place> place(Spot spot) {
    return spot.get("at")
        .text()
        .map(
            at ->
                new Asks.Place(
                    at,
                    spot.get("along").length(),
                    spot.get("across").length(),
                    spot.get("on-border").isTrue()));
  }

  /** Tells of edges that name no point of the outline; for a piece that has other mistakes. */
  static void checkEnds(String piece, Spot spot) {
    List<String> names = new ArrayList<>();
    spot.get("outline").items().forEach(node -> node.get("point").text().ifPresent(names::add));
    spot.get("edges")
        .entries()
        .forEach(
            (name, edge) ->
                Stream.of("from", "to")
                    .flatMap(end -> edge.get(end).text().stream())
                    .filter(point -> !names.contains(point))
                    .forEach(point -> edge.report(Draft.noPoint(piece, name, point, names))));
  }

  /**
   * Those that the outline has.
   *
   * @param altered whether it gets more edges, which have no points yet
   */
  private static List<Draft.NamedEdge> namedEdges(Spot spot, PieceHead head, boolean altered) {
    List<Draft.NamedEdge> namedEdges = new ArrayList<>();
    spot.entries()
        .forEach(
            (name, edge) -> {
              Names.check(edge, name);
              Optional<Allowance> allowance = head.own(edge.get("allowance"));
              Optional<String> from = edge.get("from").text();
              Optional<String> to = edge.get("to").text();
              if (altered && from.isEmpty() && to.isEmpty()) {
                return;
              }
              if (edge.holds(
                  from.isPresent() && to.isPresent(),
                  "it is not said where the edge starts and ends",
                  "Give from: and to:, each the name of a point")) {
                namedEdges.add(
                    new Draft.NamedEdge(
                        name, from.get(), to.get(), allowance, edge.get("turned-back").isTrue()));
              }
            });
    return namedEdges;
  }

  static List<Notch> notches(Spot spot) {
    List<Notch> notches = new ArrayList<>();
    for (Spot notch : spot.items()) {
      Optional<Double> at = notch.get("at").lengthFrom0();
      Spot depthSpot = notch.get("depth");
      Optional<Double> depth =
          depthSpot.present() ? depthSpot.lengthAbove0() : Optional.of(Notch.USUAL_DEPTH_MM);
      int strokes = notch.get("double").isTrue() ? 2 : 1;
      if (at.isPresent() && depth.isPresent()) {
        notches.add(
            new Notch(notch.get("edge").text().orElseThrow(), at.get(), strokes, depth.get()));
      }
    }
    return notches;
  }

  static List<InnerLine> innerLines(Spot spot) {
    List<InnerLine> lines = new ArrayList<>();
    spot.entries()
        .forEach(
            (name, line) -> {
              Names.check(line, name);
              line.attempt(() -> LineReader.path(line.get("path"), line.get("closed").isTrue()))
                  .ifPresent(path -> lines.add(new InnerLine(name, path)));
            });
    return lines;
  }
}
