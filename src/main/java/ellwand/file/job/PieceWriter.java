package ellwand.file.job;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.file.alter.Steps;
import ellwand.file.source.Json;
import ellwand.file.source.Measures;
import ellwand.geometry.Path;
import ellwand.geometry.Segment;
import ellwand.pattern.Allowance;
import ellwand.pattern.Asks;
import ellwand.pattern.Cut;
import ellwand.pattern.Draft;
import ellwand.pattern.Finish;
import ellwand.pattern.Grain;
import ellwand.pattern.InnerLine;
import ellwand.pattern.Notch;
import ellwand.pattern.Outlined;
import ellwand.pattern.Start;
import ellwand.pattern.block.FromBody;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Writes the pieces of a design, each with all that its entry says. */
final class PieceWriter {

  private final Measures measures;

  PieceWriter(Measures measures) {
    this.measures = measures;
  }

  ObjectNode outlined(Outlined piece) {
    ObjectNode node = piece.start().draft().map(this::drawn).orElseGet(() -> taken(piece));
    piece.finish().edges().forEach((name, said) -> edge(node, name, said, piece.finish().cuts()));
    if (!piece.alter().isEmpty()) {
      Steps.write(piece.alter(), node.putArray("alter"), measures);
    }
    piece.place().ifPresent(place -> node.set("place", place(place)));
    piece.value().ifPresent(value -> node.set("value", Json.number(value)));
    return node;
  }

  private ObjectNode drawn(Draft draft) {
    ObjectNode node = head(draft.cuts(), draft.grain());
    node.set("allowance", allowance(draft.allowance(), draft.cuts()));
    draft.fold().ifPresent(fold -> node.put("fold", fold));
    ArrayNode outline = node.putArray("outline");
    draft.nodes().forEach(point -> outline.add(point(point)));
    for (Draft.NamedEdge named : draft.namedEdges()) {
      ObjectNode edge = node.withObject("/edges").putObject(named.name());
      edge.put("from", named.from()).put("to", named.to());
      named.allowance().ifPresent(own -> edge.set("allowance", allowance(own, draft.cuts())));
      if (named.turnedBack()) {
        edge.put("turned-back", true);
      }
    }
    noted(node, draft.notches(), draft.innerLines());
    return node;
  }

  /** One that is made from others. */
  private ObjectNode taken(Outlined piece) {
    Finish finish = piece.finish();
    ObjectNode node = Json.object();
    if (!finish.cuts().isEmpty()) {
      node.set("cut", cut(finish.cuts()));
    }
    finish.grain().ifPresent(grain -> grain(node, finish.cuts(), grain));
    finish.allowance().ifPresent(a -> node.set("allowance", allowance(a, finish.cuts())));
    finish.fold().ifPresent(fold -> node.put("fold", fold));
    if (piece.start() instanceof Start.Copy copy) {
      if (copy.part().isEmpty()) {
        node.put("from", copy.piece());
      } else {
        node.putObject("from").put("piece", copy.piece()).put("part", copy.part().get());
      }
    } else if (piece.start() instanceof Start.OfBlock block) {
      ObjectNode from = node.putObject("from");
      from.put("file", block.file()).put("piece", block.piece());
      block.part().ifPresent(part -> from.put("part", part));
    } else if (piece.start() instanceof FromBody drafted) {
      node.set("block", new BlockWriter(measures).block(drafted.block()));
    } else {
      throw new IllegalStateException(piece.start() + " has no form");
    }
    noted(node, finish.notches(), finish.innerLines());
    return node;
  }

  private void edge(ObjectNode piece, String name, Finish.EdgeFinish said, List<Cut> cuts) {
    ObjectNode edge = piece.withObject("/edges").putObject(name);
    said.allowance().ifPresent(a -> edge.set("allowance", allowance(a, cuts)));
    said.turnedBack().ifPresent(back -> edge.put("turned-back", back));
  }

  void noted(ObjectNode node, List<Notch> notched, List<InnerLine> lines) {
    if (!notched.isEmpty()) {
      ArrayNode notches = node.putArray("notches");
      notched.forEach(notch -> notches.add(notch(notch)));
    }
    lines.forEach(
        line -> node.withObject("/lines").putObject(line.name()).set("path", path(line.line())));
  }

  ObjectNode head(List<Cut> cuts, Grain grain) {
    ObjectNode node = Json.object();
    if (!cuts.isEmpty()) {
      node.set("cut", cut(cuts));
    }
    if (!grain.equals(Grain.ALONG) || cuts.stream().anyMatch(cut -> cut.grain().isPresent())) {
      grain(node, cuts, grain);
    }
    return node;
  }

  private static void grain(ObjectNode node, List<Cut> cuts, Grain grain) {
    if (cuts.stream().anyMatch(cut -> cut.grain().isPresent())) {
      ObjectNode byCloth = node.putObject("grain");
      cuts.forEach(cut -> byCloth.put(cut.cloth(), cut.grain().orElse(grain).word()));
    } else {
      node.put("grain", grain.word());
    }
    grain
        .toleranceDegrees()
        .ifPresent(degrees -> node.set("grain-tolerance", Json.number(degrees)));
    grain
        .heads()
        .ifPresent(
            heads -> node.put("direction", heads == Grain.Heads.ANY_WAY ? "any way" : "one way"));
  }

  JsonNode allowance(Allowance whole, List<Cut> cuts) {
    boolean mixed = whole.usualMm().isPresent() && !whole.mmByCloth().isEmpty();
    Allowance allowance = mixed ? whole.only(cuts.stream().map(Cut::cloth).toList()) : whole;
    if (allowance.usualMm().isPresent()) {
      return measures.number(allowance.usualMm().getAsDouble());
    }
    ObjectNode byCloth = Json.object();
    // In the order of the cuts, however they were said.
    Stream.concat(cuts.stream().map(Cut::cloth), allowance.mmByCloth().keySet().stream())
        .distinct()
        .filter(allowance.mmByCloth()::containsKey)
        .forEach(cloth -> byCloth.set(cloth, measures.number(allowance.mmByCloth().get(cloth))));
    return byCloth;
  }

  static ObjectNode cut(List<Cut> cuts) {
    ObjectNode node = Json.object();
    for (Cut cut : cuts) {
      if (cut.how() == Cut.How.WHOLE) {
        node.put(cut.cloth(), cut.count());
      } else {
        node.put(cut.cloth(), cut.toString());
      }
    }
    return node;
  }

  private JsonNode point(Draft.Node point) {
    if (point.name().isEmpty() && point.arriving().isEmpty()) {
      return measures.place(point.at());
    }
    ObjectNode node = Json.object();
    point.name().ifPresent(name -> node.put("point", name));
    node.set("at", measures.place(point.at()));
    point
        .arriving()
        .ifPresent(
            curve ->
                node.putArray("curve")
                    .add(measures.place(curve.control1()))
                    .add(measures.place(curve.control2())));
    return node;
  }

  private ArrayNode path(Path line) {
    ArrayNode path = Json.object().arrayNode();
    path.add(measures.place(line.start()));
    for (Segment segment : line.segments()) {
      Optional<Draft.Curve> curve =
          segment instanceof Segment.Cubic cubic
              ? Optional.of(new Draft.Curve(cubic.control1(), cubic.control2()))
              : Optional.empty();
      path.add(point(new Draft.Node(Optional.empty(), segment.end(), curve)));
    }
    return path;
  }

  private ObjectNode notch(Notch notch) {
    ObjectNode node = Json.object();
    node.put("edge", notch.edge());
    node.set("at", measures.number(notch.atMm()));
    if (notch.strokes() == 2) {
      node.put("double", true);
    }
    if (notch.depthMm() != Notch.USUAL_DEPTH_MM) {
      node.set("depth", measures.number(notch.depthMm()));
    }
    return node;
  }

  private ObjectNode place(Asks.Place place) {
    ObjectNode node = Json.object();
    node.put("at", place.mark());
    place.alongMm().ifPresent(mm -> node.set("along", measures.number(mm)));
    place.acrossMm().ifPresent(mm -> node.set("across", measures.number(mm)));
    if (place.onBorder()) {
      node.put("on-border", true);
    }
    return node;
  }
}
