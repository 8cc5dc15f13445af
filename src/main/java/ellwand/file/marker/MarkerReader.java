package ellwand.file.marker;

import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.cloth.Direction;
import ellwand.cloth.Fold;
import ellwand.cloth.KeepOut;
import ellwand.cloth.Zone;
import ellwand.file.source.Fields;
import ellwand.file.source.Folder;
import ellwand.file.source.Json;
import ellwand.file.source.Sheet;
import ellwand.file.source.Source;
import ellwand.file.source.Spot;
import ellwand.file.source.Tree;
import ellwand.geometry.Box;
import ellwand.geometry.Motion;
import ellwand.lay.Copy;
import ellwand.lay.Form;
import ellwand.lay.Heading;
import ellwand.lay.Marker;
import ellwand.lay.Scope;
import ellwand.pattern.Cut;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import ellwand.rule.Stated;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Reads marker.json, also one written by hand; what it says may be wrong, but it is all there. */
public final class MarkerReader {

  private static final int MAX_BYTES = 50_000_000;

  private MarkerReader() {}

  /**
   * Reads a marker file.
   *
   * @param name its path, or a name for it
   * @throws InputException with every problem found
   */
  public static MarkerFile read(String name, Folder from) {
    Source source = Source.read(name, from, MAX_BYTES);
    Tree tree = Tree.ofJson(source);
    if (!(tree.root() instanceof ObjectNode root) || !root.path("ellwand").asText().equals("1")) {
      throw new InputException(
          Problem.of("this is no marker of Ellwand", "Name a file that ends with .marker.json")
              .at(name, 1));
    }
    List<Problem> problems = new ArrayList<>();
    Sheet sheet = new Sheet(root, tree.places(), Map.of(), List.of(source), Map.of());
    Spot spot = Spot.root(sheet, problems);
    Optional<MarkerFile> file = spot.attempt(() -> file(new Fields(spot)));
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
    return file.orElseThrow();
  }

  private static MarkerFile file(Fields in) {
    return new MarkerFile(
        in.group("job").text("path"),
        in.group("job").text("sha256"),
        in.text("cloth"),
        in.has("remnant") ? Optional.of(in.text("remnant")) : Optional.empty(),
        scope(in.group("job")),
        in.word("fold", Fold.values(), Fold::words),
        in.word("direction", Direction.values(), Direction::words),
        new Stated(
            in.number("markerWidth"),
            in.number("length"),
            in.number("clothLength"),
            in.number("utilisation"),
            in.number("gap")),
        search(in),
        in.list("zones", MarkerReader::zone),
        in.list("keepOuts", MarkerReader::keepOut),
        in.list("demand", MarkerReader::demand),
        in.list("copies", MarkerReader::copy),
        pinned(in));
  }

  private static Set<Integer> pinned(Fields in) {
    List<Boolean> pinned = in.list("copies", c -> c.has("pinned") && c.flag("pinned"));
    return IntStream.range(0, pinned.size())
        .filter(pinned::get)
        .boxed()
        .collect(Collectors.toSet());
  }

  private static Scope scope(Fields job) {
    if (job.has("part") && job.flag("part")) {
      return Scope.PART;
    }
    return job.has("garments") ? new Scope.Garments(garments(job.group("garments"))) : Scope.WHOLE;
  }

  private static Optional<Marker.Search> search(Fields in) {
    return in.has("byHand") && in.flag("byHand")
        ? Optional.empty()
        : Optional.of(
            new Marker.Search(
                in.whole("seed", Long.MAX_VALUE),
                (int) in.whole("threads", 100_000),
                in.text("effort"),
                in.flag("stoppedEarly")));
  }

  private static Map<String, Integer> garments(Fields in) {
    Map<String, Integer> garments = new LinkedHashMap<>();
    in.spot().entries().keySet().forEach(size -> garments.put(size, (int) in.whole(size, 100_000)));
    return garments;
  }

  private static Zone zone(Fields in) {
    return new Zone(
        in.text("id"),
        box(in.number("x0"), in.number("y0"), in.number("x1"), in.number("y1")),
        (int) in.whole("plies", 100_000),
        Set.copyOf(in.words("foldEdges", Zone.Side.values(), Json::word)),
        in.word("sideUp", Zone.Face.values(), Json::word));
  }

  private static Box box(double x0, double y0, double x1, double y1) {
    if (x0 > x1 || y0 > y1) {
      throw InputException.of(
          "the zone ends before it begins", "Write x1 of at least x0, and y1 of at least y0");
    }
    return new Box(x0, y0, x1, y1);
  }

  private static KeepOut keepOut(Fields in) {
    return new KeepOut(in.text("zone"), in.text("flaw"), in.outline("outline"));
  }

  private static MarkerFile.Demand demand(Fields in) {
    return new MarkerFile.Demand(
        in.text("piece"),
        in.text("size"),
        (int) in.whole("garment", 100_000),
        in.word("how", Cut.How.values(), Json::word));
  }

  private static Copy copy(Fields in) {
    Motion motion =
        new Motion(in.flag("flipped"), in.number("turn"), in.number("x"), in.number("y"));
    return new Copy(
        in.text("piece"),
        in.text("size"),
        (int) in.whole("garment", 100_000),
        in.has("secondGarment")
            ? OptionalInt.of((int) in.whole("secondGarment", 100_000))
            : OptionalInt.empty(),
        in.word("form", Form.values(), Json::word),
        in.text("zone"),
        in.word("heading", Heading.values(), Json::word),
        motion,
        in.outline("outline"));
  }
}
