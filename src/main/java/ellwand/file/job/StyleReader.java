package ellwand.file.job;

import ellwand.file.source.JobShape;
import ellwand.file.source.Names;
import ellwand.file.source.Spot;
import ellwand.pattern.Computed;
import ellwand.pattern.Design;
import ellwand.pattern.Match;
import ellwand.pattern.Outlined;
import ellwand.pattern.Seam;
import ellwand.pattern.Sizes;
import ellwand.pattern.Style;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Reads {@code style:}, a design, and draws it in all of {@code sizes:}. */
final class StyleReader {

  private final JobShape shape;

  StyleReader(JobShape shape) {
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
    Set<String> outlined = outlined(spots);
    List<Match> matches =
        shape.holds(style.get("match"))
            ? MatchesReader.read(style.get("match"), outlined)
            : List.of();
    List<Outlined> drawn = new ArrayList<>();
    outlined.forEach(
        name -> PieceReader.read(name, spots.get(name), heads.get(name)).ifPresent(drawn::add));
    List<Computed> computed = computed(spots, heads, sizes.map(Sizes::names).orElse(List.of()));
    sizes.ifPresent(
        s ->
            GradeNames.check(
                sizesSpot.get("grade"),
                s,
                drawn.stream().map(Outlined::draft).toList(),
                outlined,
                spots.keySet()));
    boolean whole = style.problems().size() == before && shape.holds(style) && sizes.isPresent();
    Design design =
        new Design(
            style.get("name").text().orElse(""),
            style.sheet().units().get("style"),
            sizes.orElse(Sizes.only("")),
            drawn,
            computed,
            List.of(),
            matches);
    return new DesignTrial(design, style, sizesSpot.get("grade"))
        .style(whole)
        .flatMap(bare -> sewn(bare, style.get("seams")));
  }

  private static Optional<Style> sewn(Style bare, Spot spot) {
    int before = spot.problems().size();
    List<Seam> seams = SeamsReader.read(spot, bare.pieces(bare.design().sizes().base()));
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
          if (spot.get("gathered").present() && !spot.get("binding").present()) {
            GatheredReader.read(name, spot, heads.get(name), sizes).ifPresent(computed::add);
          }
        });
    return computed;
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
    return spot.get("gathered").present() || spot.get("binding").present();
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
