package ellwand.file.job;

import ellwand.file.source.JobShape;
import ellwand.file.source.Names;
import ellwand.file.source.Spot;
import ellwand.pattern.Allowance;
import ellwand.pattern.Computed;
import ellwand.pattern.Design;
import ellwand.pattern.MadeFrom;
import ellwand.pattern.Match;
import ellwand.pattern.Outlined;
import ellwand.pattern.Seam;
import ellwand.pattern.Sizes;
import ellwand.pattern.Style;
import ellwand.pattern.Trim;
import ellwand.problem.Problem;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Reads {@code style:}, a design, and draws it in all of {@code sizes:}. */
final class StyleReader {

  /** What a piece can be computed by. */
  static final List<String> RULES = List.of("gathered", "pleated", "band", "binding");

  private final JobShape shape;
  private final boolean block;

  /** Of a style that is to be cut. */
  StyleReader(JobShape shape) {
    this(shape, false);
  }

  /**
   * Of any style.
   *
   * @param block whether pieces are only taken from it
   */
  StyleReader(JobShape shape, boolean block) {
    this.shape = shape;
    this.block = block;
  }

  /**
   * The style, or nothing if any piece of it is wrong.
   *
   * @param cloths names that pieces may be cut from
   */
  Optional<Style> read(Spot style, Spot sizesSpot, Set<String> cloths) {
    if (!style.present()) {
      return Optional.empty();
    }
    int before = style.problems().size();
    Optional<Sizes> sizes = SizesReader.read(sizesSpot, style.get("size"), shape);
    Map<String, Spot> spots = usable(style.get("pieces"));
    Map<String, PieceHead> heads = heads(style, spots, cloths);
    Set<String> outlined = outlined(spots);
    List<Match> matches =
        shape.holds(style.get("match"))
            ? MatchesReader.read(style.get("match"), outlined)
            : List.of();
    BlockReader blocks = new BlockReader(style.get("ease"), sizes);
    StartReader starts = new StartReader();
    List<Outlined> read = new ArrayList<>();
    outlined.forEach(
        name ->
            PieceReader.read(name, spots.get(name), heads.get(name), blocks, starts)
                .ifPresent(read::add));
    blocks.checkEase();
    List<Outlined> drawn = makeable(read, style.get("pieces"));
    checkCut(style.get("pieces"), drawn, outlined);
    List<Computed> computed = computed(spots, heads, sizes.map(Sizes::names).orElse(List.of()));
    sizes.ifPresent(
        s -> GradeNames.check(sizesSpot.get("grade"), s, drawn, outlined, spots.keySet()));
    boolean whole = style.problems().size() == before && shape.holds(style) && sizes.isPresent();
    Design design =
        new Design(
            style.get("name").text().orElse(""),
            style.sheet().units().get("style"),
            sizes.orElse(Sizes.only("")).grading(drawn),
            drawn,
            computed,
            List.of(),
            matches);
    return new DesignTrial(design, style, sizesSpot.get("grade"))
        .style(whole)
        .flatMap(bare -> sewn(bare, style.get("seams")))
        .flatMap(sewn -> trimmed(sewn, style.get("trims")));
  }

  private Optional<Style> trimmed(Style sewn, Spot spot) {
    if (!shape.holds(spot)) {
      return Optional.empty();
    }
    int before = spot.problems().size();
    List<Trim> trims = TrimsReader.read(spot, sewn);
    return spot.problems().size() > before
        ? Optional.empty()
        : Optional.of(new Style(sewn.design().trimmed(trims), sewn.bySize()));
  }

  private static Optional<Style> sewn(Style bare, Spot spot) {
    int before = spot.problems().size();
    List<Seam> seams = SeamsReader.read(spot, bare.pieces(bare.drawnSize()));
    return spot.problems().size() > before
        ? Optional.empty()
        : Optional.of(new Style(bare.design().sewn(seams), bare.bySize()));
  }

  /** Bindings first: they go round drawn pieces only. */
  private static List<Computed> computed(
      Map<String, Spot> spots, Map<String, PieceHead> heads, List<String> sizes) {
    List<Computed> computed = new ArrayList<>();
    spots.forEach(
        (name, spot) -> {
          if (spot.get("binding").present()) {
            BindingReader.read(name, spot, heads.get(name), sizes).ifPresent(computed::add);
          }
        });
    spots.forEach(
        (name, spot) -> {
          if (!spot.get("binding").present()) {
            rectangle(name, spot, heads.get(name), sizes).ifPresent(computed::add);
          }
        });
    return computed;
  }

  private static Optional<? extends Computed> rectangle(
      String name, Spot spot, PieceHead head, List<String> sizes) {
    if (spot.get("gathered").present()) {
      return GatheredReader.read(name, spot, head, sizes);
    }
    return spot.get("pleated").present()
        ? PleatedReader.read(name, spot, head, sizes)
        : spot.get("band").present() ? BandReader.read(name, spot, head, sizes) : Optional.empty();
  }

  /**
   * Those that can be made; what is wrong with the others is told, if it was not.
   *
   * @param pieces all of them, also those that could not be read
   */
  private static List<Outlined> makeable(List<Outlined> read, Spot pieces) {
    Set<String> all = new LinkedHashSet<>(pieces.entries().keySet());
    all.removeIf(name -> computed(pieces.get(name)));
    List<Outlined> left = new ArrayList<>(read);
    while (true) {
      List<Problem> problems = MadeFrom.problems(left);
      if (problems.isEmpty()) {
        return left;
      }
      Set<String> names = left.stream().map(Outlined::name).collect(Collectors.toSet());
      for (Problem problem : problems) {
        String name = problem.piece().orElseThrow();
        Outlined piece = left.stream().filter(p -> p.name().equals(name)).findFirst().orElseThrow();
        if (piece.needs().stream().noneMatch(n -> all.contains(n) && !names.contains(n))) {
          pieces.get(name).report(problem);
        }
      }
      left.removeIf(p -> problems.stream().anyMatch(q -> q.piece().orElseThrow().equals(p.name())));
    }
  }

  /** Tells of pieces that are neither cut nor needed for another. */
  private void checkCut(Spot pieces, List<Outlined> drawn, Set<String> outlined) {
    boolean derived =
        pieces.entries().values().stream()
            .anyMatch(p -> p.get("from").present() || p.get("alter").present());
    if (block || derived && drawn.size() < outlined.size()) {
      return;
    }
    Set<String> needed =
        drawn.stream().flatMap(p -> p.needs().stream()).collect(Collectors.toSet());
    pieces
        .entries()
        .forEach(
            (name, spot) ->
                spot.holds(
                    spot.get("cut").present() || !spot.node().isObject() || needed.contains(name),
                    "it has no cut:",
                    "Add it, for example cut: {main: 1 on fold}"));
  }

  private static Set<String> outlined(Map<String, Spot> spots) {
    Set<String> outlined = new LinkedHashSet<>();
    spots.forEach(
        (name, spot) -> {
          if (!computed(spot)) {
            outlined.add(name);
          }
        });
    return outlined;
  }

  /** Whether it is no drawn piece. */
  private static boolean computed(Spot spot) {
    return RULES.stream().anyMatch(rule -> spot.get(rule).present());
  }

  /** The pieces that have the right shape and either an outline or a rule. */
  private Map<String, Spot> usable(Spot pieces) {
    Map<String, Spot> usable = new LinkedHashMap<>();
    pieces
        .entries()
        .forEach(
            (name, spot) -> {
              Names.check(spot, name);
              if (!shape.holds(spot)) {
                PieceReader.checkEnds(name, spot);
              } else if (spot.holds(
                      !starts(spot).isEmpty() || computed(spot),
                      "it has neither outline: nor from: nor block: nor gathered:, pleated:, band:"
                          + " or binding:",
                      "Draw it with outline:, copy another with from:, draft it with block:, or let"
                          + " it be computed with gathered:, pleated:, band: or binding:")
                  && spot.holds(
                      starts(spot).size() < 2,
                      "it has both " + String.join(": and ", starts(spot)) + ":",
                      "Take one of them out")) {
                usable.put(name, spot);
              }
            });
    return usable;
  }

  private static List<String> starts(Spot piece) {
    return Stream.of("outline", "from", "block").filter(k -> piece.get(k).present()).toList();
  }

  private Map<String, PieceHead> heads(Spot style, Map<String, Spot> spots, Set<String> cloths) {
    Spot allowance = style.get("allowance");
    Optional<Allowance> usual =
        !allowance.present()
            ? Optional.empty()
            : shape.holds(allowance)
                // What is wrong with it is told once, not for every piece.
                ? AllowanceReader.read(allowance, cloths).or(() -> Optional.of(Allowance.NONE))
                : Optional.of(Allowance.NONE);
    Map<String, PieceHead> heads = new LinkedHashMap<>();
    spots.forEach((name, spot) -> heads.put(name, PieceHead.read(spot, usual, cloths)));
    return heads;
  }
}
