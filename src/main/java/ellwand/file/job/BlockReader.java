package ellwand.file.job;

import ellwand.file.source.Names;
import ellwand.file.source.Spelling;
import ellwand.file.source.Spot;
import ellwand.pattern.Body;
import ellwand.pattern.Extent;
import ellwand.pattern.Sizes;
import ellwand.pattern.Start;
import ellwand.pattern.block.Block;
import ellwand.pattern.block.Bodice;
import ellwand.pattern.block.CircleSkirt;
import ellwand.pattern.block.FromBody;
import ellwand.pattern.block.PieceEdge;
import ellwand.pattern.block.Side;
import ellwand.pattern.block.Skirt;
import ellwand.pattern.block.Sleeve;
import ellwand.pattern.block.Trousers;
import ellwand.problem.Problem;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/**
 * Reads {@code block: bodice front} or {@code block: {draft: straight skirt front, length: 32}} of
 * a piece, and {@code ease:} of the style.
 */
final class BlockReader {

  /** What is said of each block besides its name, in the place of its side. */
  private static final Map<String, List<String>> DETAILS = new LinkedHashMap<>();

  static {
    DETAILS.put("bodice", List.of());
    DETAILS.put("sleeve", List.of("armhole"));
    DETAILS.put("straight skirt", List.of("length"));
    DETAILS.put("flared skirt", List.of("length", "flare"));
    for (CircleSkirt.Ring ring : CircleSkirt.Ring.values()) {
      DETAILS.put(ring.word() + " circle skirt", List.of("length"));
    }
    DETAILS.put("trousers", List.of("hem"));
  }

  private static final Map<String, String> EXAMPLES =
      Map.of(
          "armhole", "armhole: [front.armhole, back.armhole]",
          "length", "length: 32 cm",
          "flare", "flare: 5 cm",
          "hem", "hem: 28 cm");

  private final Spot ease;
  private final Optional<Sizes> sizes;
  private final Map<String, Double> easeMm = new LinkedHashMap<>();
  private final TreeSet<String> eased = new TreeSet<>();

  /**
   * Reads the ease of a style.
   *
   * @param sizes if they could be read
   */
  BlockReader(Spot ease, Optional<Sizes> sizes) {
    this.ease = ease;
    this.sizes = sizes;
    ease.entries().forEach((of, spot) -> spot.length().ifPresent(mm -> easeMm.put(of, mm)));
  }

  /** Reports ease that none of the blocks read takes. */
  void checkEase() {
    ease.entries()
        .forEach(
            (of, spot) ->
                spot.holds(
                    eased.contains(of),
                    "no block of the style takes ease for " + Names.shown(of),
                    eased.isEmpty()
                        ? "Take it out: ease is for pieces that are drafted with block:"
                        : Spelling.nearest(of, eased)
                            .map(near -> "Perhaps " + near + " is meant")
                            .orElse("Use " + String.join(", ", eased))));
  }

  /** The block as a start of its piece, or nothing if it is wrong. */
  Optional<Start> read(Spot spot) {
    Optional<Block> block = block(spot);
    block.ifPresent(b -> eased.addAll(b.usualEaseMm().keySet()));
    return block.filter(b -> measured(spot, b)).map(b -> new FromBody(b, easeMm));
  }

  private Optional<Block> block(Spot spot) {
    Spot named = spot.node().isObject() ? spot.get("draft") : spot;
    String words = named.text().orElse("");
    Optional<Side> side = Side.of(words);
    String kind = side.map(s -> words.substring(0, words.lastIndexOf(' '))).orElse(words);
    List<String> details = DETAILS.get(kind);
    if (details == null || side.isEmpty() != kind.equals("sleeve")) {
      named.report(
          Problem.of(
              "no block is called " + Names.shown(words),
              Spelling.nearest(words, names())
                  .map(near -> "Perhaps " + near + " is meant")
                  .orElse("Use one of " + String.join(", ", names()))));
      return Optional.empty();
    }
    return detailed(spot, words, details) ? block(spot, kind, side) : Optional.empty();
  }

  private static List<String> names() {
    List<String> names = new ArrayList<>();
    for (String kind : DETAILS.keySet()) {
      if (kind.equals("sleeve")) {
        names.add(kind);
      } else {
        for (Side side : Side.values()) {
          names.add(kind + " " + side.word());
        }
      }
    }
    return names;
  }

  private static boolean detailed(Spot spot, String words, List<String> details) {
    boolean all = true;
    for (String key : EXAMPLES.keySet().stream().sorted().toList()) {
      boolean said = spot.node().isObject() && spot.get(key).present();
      all &=
          !said
              || spot.get(key)
                  .holds(
                      details.contains(key),
                      "a " + words + " takes no " + key + ":",
                      details.isEmpty()
                          ? "Take it out"
                          : "It takes " + String.join(": and ", details) + ":");
      all &=
          said
              || spot.holds(
                  !details.contains(key),
                  "a " + words + " needs " + key + ":",
                  "Write for example block: {draft: " + words + ", " + EXAMPLES.get(key) + "}");
    }
    return all;
  }

  private Optional<Block> block(Spot spot, String kind, Optional<Side> side) {
    Optional<Extent> length = extent(spot, "length");
    Optional<Extent> flare = extent(spot, "flare");
    return switch (kind) {
      case "bodice" -> side.map(Bodice::new);
      case "sleeve" -> sleeve(spot.get("armhole").items());
      case "straight skirt" -> length.map(l -> new Skirt(side.get(), l, Optional.empty()));
      case "flared skirt" ->
          length.flatMap(l -> flare.map(f -> new Skirt(side.get(), l, Optional.of(f))));
      case "trousers" -> extent(spot, "hem").map(hem -> new Trousers(side.get(), hem));
      default -> length.map(l -> new CircleSkirt(side.get(), CircleSkirt.Ring.of(kind), l));
    };
  }

  private Optional<Extent> extent(Spot spot, String key) {
    return spot.node().isObject() && spot.get(key).present()
        ? ExtentReader.read(spot.get(key), names(sizes))
        : Optional.empty();
  }

  private static Optional<Block> sleeve(List<Spot> sides) {
    Optional<List<PieceEdge>> front = edges(sides.get(0));
    Optional<List<PieceEdge>> back = edges(sides.get(1));
    return front.flatMap(f -> back.map(b -> new Sleeve(f, b)));
  }

  private static Optional<List<PieceEdge>> edges(Spot side) {
    List<PieceEdge> edges = new ArrayList<>();
    for (Spot spot : side.node().isArray() ? side.items() : List.of(side)) {
      String text = spot.text().orElse("");
      int dot = text.indexOf('.');
      if (!spot.holds(
          dot > 0 && dot < text.length() - 1,
          Names.shown(text) + " is no edge of a piece",
          "Write piece.edge, for example front.armhole")) {
        return Optional.empty();
      }
      edges.add(new PieceEdge(text.substring(0, dot), text.substring(dot + 1)));
    }
    return Optional.of(edges);
  }

  private static List<String> names(Optional<Sizes> sizes) {
    return sizes.map(Sizes::names).orElse(List.of());
  }

  private boolean measured(Spot spot, Block block) {
    if (sizes.isEmpty()) {
      return false;
    }
    Body body = sizes.get().body();
    boolean all = true;
    for (String measure : block.measures()) {
      List<String> missing = body.without(measure, names(sizes));
      all &=
          spot.holds(
              missing.isEmpty(),
              "no "
                  + measure
                  + " is given for "
                  + Sizes.words(missing)
                  + ", which a "
                  + block.words()
                  + " is drafted from",
              "Measure it and add it to body: of sizes:");
    }
    return all;
  }
}
