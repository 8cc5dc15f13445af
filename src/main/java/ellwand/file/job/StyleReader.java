package ellwand.file.job;

import ellwand.cutting.Cutter;
import ellwand.file.source.Names;
import ellwand.file.source.Shape;
import ellwand.file.source.Spelling;
import ellwand.file.source.Spot;
import ellwand.pattern.Binding;
import ellwand.pattern.Draft;
import ellwand.pattern.Gathered;
import ellwand.pattern.Match;
import ellwand.pattern.Piece;
import ellwand.pattern.Seam;
import ellwand.pattern.Sizes;
import ellwand.pattern.Style;
import ellwand.problem.InputException;
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

/** Reads {@code style:} and draws it in all of {@code sizes:}. */
final class StyleReader {

  private final Shape shape;

  StyleReader(Shape shape) {
    this.shape = shape;
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
    List<Match> matches = matches(style.get("match"), spots);
    List<Draft> drafts = new ArrayList<>();
    List<Piece> drawn = new ArrayList<>();
    spots.forEach(
        (name, spot) -> {
          if (!computed(spot)) {
            Optional<Draft> draft = PieceReader.read(name, spot, heads.get(name));
            draft.ifPresent(drafts::add);
            draft
                .flatMap(d -> spot.attempt(() -> cuttable(d, spot, matches)))
                .ifPresent(drawn::add);
          }
        });
    boolean allDrawn = style.problems().size() == before && shape.holds(style);
    sizes.ifPresent(s -> checkRules(sizesSpot.get("grade"), s, spots, drafts));
    Map<String, List<Piece>> drawnBySize = new LinkedHashMap<>();
    Map<String, List<Binding>> bindingsBySize = new LinkedHashMap<>();
    Map<String, List<Gathered>> gatheredBySize = new LinkedHashMap<>();
    for (String size : sizes.map(Sizes::names).orElse(List.of())) {
      List<Piece> ofSize =
          size.equals(sizes.get().base())
              ? drawn
              : graded(sizesSpot.get("grade"), drafts, spots, sizes.get(), size, matches);
      boolean whole = allDrawn && ofSize.size() == drawn.size();
      drawnBySize.put(size, ofSize);
      bindingsBySize.put(
          size, bindings(spots, heads, whole ? Optional.of(ofSize) : Optional.empty()));
      gatheredBySize.put(
          size, gathered(spots, heads, size, whole ? Optional.of(ofSize) : Optional.empty()));
    }
    if (style.problems().size() > before || !shape.holds(style) || sizes.isEmpty()) {
      return Optional.empty();
    }
    String base = sizes.get().base();
    List<Piece> sewn = new ArrayList<>(drawnBySize.get(base));
    bindingsBySize.get(base).forEach(b -> sewn.add(b.piece()));
    List<Seam> seams =
        SeamsReader.read(style.get("seams"), together(sewn, gatheredBySize.get(base)));
    return style.attempt(
        () ->
            new Style(
                style.get("name").text().orElseThrow(),
                drawnBySize,
                bindingsBySize,
                gatheredBySize,
                seams,
                matches));
  }

  private List<Match> matches(Spot match, Map<String, Spot> spots) {
    Set<String> drawn =
        spots.entrySet().stream()
            .filter(e -> !computed(e.getValue()))
            .map(Map.Entry::getKey)
            .collect(Collectors.toCollection(LinkedHashSet::new));
    return shape.holds(match) ? MatchesReader.read(match, drawn) : List.of();
  }

  /** Cut once here, so that allowances that cannot be cut are reported with their lines. */
  private static Piece cuttable(Draft draft, Spot spot, List<Match> matches) {
    Piece bare = draft.piece();
    Piece piece = bare.asking(AsksReader.read(spot, draft, bare, matches));
    Cutter.cut(piece, 1, 1);
    return piece;
  }

  private static List<Piece> graded(
      Spot grade,
      List<Draft> drafts,
      Map<String, Spot> spots,
      Sizes sizes,
      String size,
      List<Match> matches) {
    List<Piece> graded = new ArrayList<>();
    for (Draft draft : drafts) {
      Spot spot = spots.get(draft.name());
      grade
          .get(draft.name())
          .attempt(() -> inSize(sizes, draft, spot, size, matches))
          .ifPresent(graded::add);
    }
    return graded;
  }

  private static Piece inSize(
      Sizes sizes, Draft draft, Spot spot, String size, List<Match> matches) {
    try {
      return cuttable(sizes.graded(draft, size), spot, matches);
    } catch (InputException e) {
      throw new InputException(
          e.problems().stream()
              .map(
                  p ->
                      new Problem(
                          p.file(),
                          p.line(),
                          p.piece(),
                          p.edge(),
                          "in size " + size + ", " + p.what(),
                          "See how its points move between sizes"))
              .toList());
    }
  }

  private static void checkRules(
      Spot grade, Sizes sizes, Map<String, Spot> spots, List<Draft> drafts) {
    for (String piece : sizes.rules().keySet()) {
      Optional<Draft> draft = drafts.stream().filter(d -> d.name().equals(piece)).findFirst();
      if (draft.isEmpty()) {
        grade
            .get(piece)
            .holds(
                spots.containsKey(piece) && !computed(spots.get(piece)),
                "no piece called " + Names.shown(piece) + " is drawn",
                Spelling.nearest(piece, spots.keySet())
                    .filter(p -> !p.equals(piece))
                    .map(p -> "Perhaps " + p + " is meant")
                    .orElse("Take it out: only pieces with an outline are graded"));
        continue;
      }
      List<String> known =
          Stream.concat(
                  draft.get().nodes().stream().flatMap(n -> n.name().stream()),
                  draft.get().innerLines().stream().map(l -> l.name()))
              .toList();
      for (String point : sizes.rules().get(piece).keySet()) {
        grade
            .get(piece)
            .get(point)
            .holds(
                known.contains(point),
                "no point or line of it is called " + Names.shown(point),
                known.isEmpty()
                    ? "Name its points with {point: name, at: [x, y]}"
                    : "Use one of " + String.join(", ", known));
      }
    }
  }

  /** Whether it is no drawn piece. */
  private static boolean computed(Spot spot) {
    return spot.get("gathered").present() || spot.get("binding").present();
  }

  private static List<Binding> bindings(
      Map<String, Spot> spots, Map<String, PieceHead> heads, Optional<List<Piece>> drawn) {
    List<Binding> bindings = new ArrayList<>();
    spots.forEach(
        (name, spot) -> {
          if (spot.get("binding").present()) {
            BindingReader.read(name, spot, heads.get(name), drawn).ifPresent(bindings::add);
          }
        });
    return bindings;
  }

  private static List<Gathered> gathered(
      Map<String, Spot> spots,
      Map<String, PieceHead> heads,
      String size,
      Optional<List<Piece>> drawn) {
    List<Gathered> gathered = new ArrayList<>();
    spots.forEach(
        (name, spot) -> {
          if (spot.get("gathered").present()) {
            GatheredReader.read(
                    name, spot, heads.get(name), size, drawn.map(d -> together(d, gathered)))
                .ifPresent(gathered::add);
          }
        });
    return gathered;
  }

  private static List<Piece> together(List<Piece> drawn, List<Gathered> gathered) {
    return Stream.concat(drawn.stream(), gathered.stream().map(Gathered::piece)).toList();
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
                  spot.get("outline").present() || computed(spot),
                  "it has neither outline: nor gathered: nor binding:",
                  "Draw it with outline:, or let it be computed with gathered: or binding:")) {
                usable.put(name, spot);
              }
            });
    return usable;
  }

  private Map<String, PieceHead> heads(Spot style, Map<String, Spot> spots, Set<String> cloths) {
    Spot allowance = style.get("allowance");
    Optional<Double> usual = shape.holds(allowance) ? allowance.lengthFrom0() : Optional.of(0.0);
    Map<String, PieceHead> heads = new LinkedHashMap<>();
    spots.forEach((name, spot) -> heads.put(name, PieceHead.read(spot, usual, cloths)));
    return heads;
  }
}
