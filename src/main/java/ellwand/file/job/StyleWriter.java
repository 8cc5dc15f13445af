package ellwand.file.job;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.file.source.Json;
import ellwand.file.source.Measures;
import ellwand.file.source.Yaml;
import ellwand.geometry.Point;
import ellwand.job.Wear;
import ellwand.pattern.Bars;
import ellwand.pattern.Design;
import ellwand.pattern.Draft;
import ellwand.pattern.GradeRule;
import ellwand.pattern.Match;
import ellwand.pattern.Outlined;
import ellwand.pattern.Seam;
import ellwand.pattern.Sizes;
import ellwand.pattern.block.FromBody;
import ellwand.units.Unit;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Writes a design as a file that jobs can name: {@code style: {file: coat.yaml}}, and {@code sizes:
 * {file: coat.yaml}} where it has several or body measures. The same design gives the same bytes.
 * Shifts that follow body measures are written as what they came to in each size.
 */
public final class StyleWriter {

  private final Design design;
  private final Measures measures;
  private final PieceWriter pieces;

  private StyleWriter(Design design) {
    this.design = design;
    this.measures = new Measures(design.unit());
    this.pieces = new PieceWriter(measures);
  }

  /**
   * The bytes of the file.
   *
   * @param wear what the garment is for
   */
  public static byte[] bytes(Design design, Set<Wear> wear) {
    return Yaml.bytes(new StyleWriter(design).file(wear));
  }

  /** The same as a tree. */
  public static ObjectNode tree(Design design, Set<Wear> wear) {
    return new StyleWriter(design).file(wear);
  }

  /**
   * The entry of one piece.
   *
   * @param unit that bare numbers stand for
   */
  public static ObjectNode entry(Draft draft, Unit unit) {
    return new PieceWriter(new Measures(unit)).outlined(new Outlined(draft));
  }

  /**
   * The entry of the sizes.
   *
   * @param unit that bare numbers stand for
   */
  public static ObjectNode sizes(Sizes sizes, Unit unit) {
    return sizes(sizes, new Measures(unit));
  }

  private ObjectNode file(Set<Wear> wear) {
    ObjectNode file = Json.object();
    file.put("ellwand", 1);
    file.put("unit", design.unit().symbol());
    file.set("style", style(wear));
    if (design.sizes().names().size() > 1 || !design.sizes().body().mmBySize().isEmpty()) {
      file.set("sizes", sizes(design.sizes(), measures));
    }
    return file;
  }

  private ObjectNode style(Set<Wear> wear) {
    ObjectNode style = Json.object();
    style.put("name", design.name());
    style.put("size", design.sizes().base());
    if (!wear.isEmpty()) {
      ArrayNode words = style.putArray("wear");
      wear.forEach(w -> words.add(Json.word(w)));
    }
    design.outlined().stream()
        .flatMap(p -> p.start() instanceof FromBody drafted ? Stream.of(drafted) : Stream.of())
        .findFirst()
        .filter(drafted -> !drafted.easeMm().isEmpty())
        .ifPresent(
            drafted -> {
              ObjectNode ease = style.putObject("ease");
              drafted.easeMm().forEach((of, mm) -> ease.set(of, measures.number(mm)));
            });
    ObjectNode byName = style.putObject("pieces");
    for (Outlined piece : design.outlined()) {
      byName.set(piece.name(), pieces.outlined(piece));
    }
    design
        .computed()
        .forEach(
            piece ->
                byName.set(piece.name(), new ComputedWriter(pieces, measures).computed(piece)));
    if (!design.trims().isEmpty()) {
      ObjectNode trims = style.putObject("trims");
      design.trims().forEach(trim -> trims.set(trim.name(), new TrimWriter(measures).trim(trim)));
    }
    if (!design.seams().isEmpty()) {
      ArrayNode seams = style.putArray("seams");
      design.seams().forEach(seam -> seams.add(seam(seam)));
    }
    if (!design.matches().isEmpty()) {
      ArrayNode matches = style.putArray("match");
      design.matches().forEach(match -> matches.add(match(match)));
    }
    return style;
  }

  private JsonNode seam(Seam seam) {
    ArrayNode sides = Json.object().arrayNode();
    for (List<String> side : List.of(seam.one(), seam.other())) {
      if (side.size() == 1) {
        sides.add(side.get(0));
      } else {
        side.forEach(sides.addArray()::add);
      }
    }
    if (seam.easeMm() == 0) {
      return sides;
    }
    ObjectNode eased = Json.object();
    eased.set("join", sides);
    eased.set("ease", measures.number(seam.easeMm()));
    return eased;
  }

  private static JsonNode match(Match match) {
    ArrayNode points = Json.object().arrayNode();
    points.add(match.piece() + "." + match.mark());
    points.add(match.otherPiece() + "." + match.otherMark());
    if (match.bars() == Bars.ACROSS) {
      return points;
    }
    ObjectNode barred = Json.object();
    barred.set("points", points);
    barred.put("bars", Json.word(match.bars()));
    return barred;
  }

  private static ObjectNode sizes(Sizes sizes, Measures measures) {
    ObjectNode node = Json.object();
    ArrayNode names = node.putArray("names");
    sizes.names().forEach(names::add);
    if (!sizes.body().mmBySize().isEmpty()) {
      ObjectNode body = node.putObject("body");
      sizes
          .body()
          .mmBySize()
          .forEach(
              (size, of) -> {
                ObjectNode row = body.putObject(size);
                of.forEach((measure, mm) -> row.set(measure, measures.number(mm)));
              });
    }
    if (!sizes.rules().isEmpty()) {
      ObjectNode grade = node.putObject("grade");
      sizes
          .rules()
          .forEach(
              (piece, rules) -> {
                ObjectNode ofPiece = grade.putObject(piece);
                rules.forEach((point, rule) -> ofPiece.set(point, rule(rule, sizes, measures)));
              });
    }
    return node;
  }

  private static JsonNode rule(GradeRule rule, Sizes sizes, Measures measures) {
    if (rule instanceof GradeRule.Step step) {
      return measures.place(step.aSizeMm());
    }
    Map<String, Point> bySize = ((GradeRule.EachSize) rule).bySizeMm();
    ObjectNode node = Json.object();
    sizes.names().stream()
        .filter(bySize::containsKey)
        .forEach(size -> node.set(size, measures.place(bySize.get(size))));
    return node;
  }
}
