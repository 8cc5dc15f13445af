package ellwand.draw.marker;

import ellwand.cloth.Cloth;
import ellwand.cloth.Direction;
import ellwand.cloth.Fold;
import ellwand.cloth.LaidCloth;
import ellwand.cloth.Repeat;
import ellwand.cloth.Zone;
import ellwand.draw.sheet.Shown;
import ellwand.figures.Washing;
import ellwand.lay.Marker;
import ellwand.pattern.Grain;
import ellwand.pattern.Piece;
import ellwand.rule.WorstMatch;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** How a cloth is laid, in words. */
final class ClothWords {

  private ClothWords() {}

  /** Sentences for the person who lays it. */
  static List<String> of(Marker marker, Shown shown) {
    Cloth cloth = marker.lay().cloth();
    List<String> words = new ArrayList<>();
    words.add(folding(marker, shown));
    if (marker.zones().size() > 1) {
      marker.zones().forEach(z -> words.add(sentence(of(z, shown))));
    }
    Washing.atTable(cloth, marker.lay().wanted().stream().map(w -> w.cut().piece()).toList())
        .ifPresent(words::add);
    if (lies(marker) != Fold.OPEN && opened(marker).isPresent()) {
      words.add("Cut the folded part first, then open the rest.");
    }
    words.addAll(headings(marker));
    cloth.repeat().ifPresent(repeat -> words.addAll(of(repeat, marker, shown)));
    if (cloth.grainToleranceDegrees() > 0 && cloth.repeat().isEmpty()) {
      words.add(
          String.format(
              Locale.ROOT,
              "Pieces may lie up to %.1f degrees off the grain.",
              cloth.grainToleranceDegrees()));
    }
    List<Zone> fromSelvedge =
        marker.zones().stream().filter(zone -> fromSelvedge(marker, zone)).toList();
    if (cloth.selvedgeMm() > 0 && !fromSelvedge.isEmpty()) {
      words.add(
          (fromSelvedge.size() < marker.zones().size() ? "Where it is opened, m" : "M")
              + "easurements across start inside the selvedges, "
              + shown.length(cloth.selvedgeMm())
              + " from each edge of the cloth.");
    }
    if (cloth.fusingMarginMm() > 0) {
      words.add(
          "A fusing margin of "
              + shown.length(cloth.fusingMarginMm())
              + " is kept all round each piece, so that it can be fused before it is cut out: begin"
              + " the marker that far from the cut end, and leave as much beyond its other end.");
    }
    return words;
  }

  /** Which way tops point. */
  private static List<String> headings(Marker marker) {
    List<String> words = new ArrayList<>();
    words.add(
        switch (marker.lay().cloth().direction()) {
          case ANY_WAY -> "Tops may point either way.";
          case ONE_WAY -> "All tops point the same way: the cloth has a direction.";
          case ONE_WAY_PER_GARMENT -> "All tops of one garment point the same way.";
        });
    own(marker, Grain.Heads.ANY_WAY)
        .ifPresent(
            names -> words.add("The tops of these may point either way even so: " + names + "."));
    own(marker, Grain.Heads.ONE_WAY)
        .ifPresent(names -> words.add("All tops of these point the same way: " + names + "."));
    return words;
  }

  /** How it is folded, or not. */
  private static String folding(Marker marker, Shown shown) {
    Cloth cloth = marker.lay().cloth();
    return switch (lies(marker)) {
      case OPEN ->
          cloth.tubular()
              ? "Cut the tube open along one of its folds and lay it open, right side up."
              : "Lay the cloth open, right side up.";
      case LENGTHWISE -> lengthwise(marker, shown);
      case STACKED -> lengthwise(marker, shown) + " Spread every ply folded so.";
      case PART ->
          "Fold "
              + measured(cloth).map(from -> "the edge" + from).orElse("one edge of the cloth")
              + " over by "
              + shown.length(firstFold(marker).box().width())
              + beyond(cloth)
              + ", right sides together.";
      case DOUBLE ->
          "Fold both edges of the cloth over, right sides together: "
              + (besideMm(marker) > 0
                  ? "the selvedges lie " + shown.length(besideMm(marker)) + " apart, the first "
                  : "the selvedges meet ")
              + shown.length(firstFold(marker).box().width() + cloth.selvedgeMm())
              + " from the first fold"
              + measured(cloth).map(from -> ", which is that of the edge" + from).orElse("")
              + ".";
      case CROSSWISE ->
          "Fold the cloth across "
              + shown.length(marker.acrossMm())
              + " from its cut end, right sides together: the upper ply runs the other way. The"
              + " fold is where the marker begins.";
      case TURNED ->
          "Cut the cloth across "
              + shown.length(marker.acrossMm())
              + " from its cut end and turn the length cut off round, so that both run the"
              + " same way; lay it right side down on the rest.";
      case FACE_TO_FACE ->
          "Spread an even number of plies face to face: every second one right side down on the"
              + " one below.";
      case TUBULAR ->
          "Lay the tube flat, as it comes: a fold on each side."
              + opened(marker)
                  .map(
                      zone ->
                          " Beyond "
                              + shown.length(zone.box().minX())
                              + " cut it open along "
                              + measured(cloth).map(from -> "the fold" + from).orElse("one of them")
                              + ".")
                  .orElse("");
    };
  }

  /** Whether anything lies double; where nothing does, all of the cloth is opened. */
  private static boolean folded(Marker marker) {
    return marker.zones().stream().anyMatch(z -> z.plies() == 2);
  }

  /** How it lies in the end. */
  static Fold lies(Marker marker) {
    return folded(marker) ? marker.fold() : Fold.OPEN;
  }

  /** What the marker begins at, and places along it are measured from. */
  static String start(Marker marker) {
    return marker.zones().stream().anyMatch(z -> z.foldEdges().contains(Zone.Side.LOW_X))
        ? "fold"
        : cutAllRound(marker) ? "near end" : "cut end";
  }

  /** Whether distances across a zone are measured from the side of the cloth, not from a fold. */
  static boolean fromSelvedge(Marker marker, Zone zone) {
    boolean opened = zone.plies() == 1 && zone.box().minY() <= 0;
    return !zone.foldEdges().contains(Zone.Side.LOW_Y) && (opened || !marker.fold().hasBorder());
  }

  /** Whether it is a remnant without selvedges, of any shape. */
  static boolean cutAllRound(Marker marker) {
    Cloth cloth = marker.lay().cloth();
    return cloth.selvedgeMm() == 0 && cloth.stock().isPresent();
  }

  /** Which of its edges is meant, where that matters. */
  private static Optional<String> measured(Cloth cloth) {
    List<String> what = new ArrayList<>();
    if (!cloth.flaws().isEmpty()) {
      what.add("flaws");
    }
    cloth.repeat().ifPresent(repeat -> what.add("stripes"));
    return what.isEmpty()
        ? Optional.empty()
        : Optional.of(" that its " + String.join(" and ", what) + " are measured from");
  }

  /** The zone that is opened behind one that lies double. */
  static Optional<Zone> opened(Marker marker) {
    return marker.zones().stream().filter(z -> z.plies() == 1 && z.box().minX() > 0).findFirst();
  }

  /** Which pieces say so themselves, unless the cloth says the same. */
  private static Optional<String> own(Marker marker, Grain.Heads heads) {
    Direction same = heads == Grain.Heads.ANY_WAY ? Direction.ANY_WAY : Direction.ONE_WAY;
    if (marker.lay().cloth().direction() == same) {
      return Optional.empty();
    }
    String names =
        marker.lay().wanted().stream()
            .map(w -> w.cut().piece())
            .filter(p -> p.grain().heads().equals(Optional.of(heads)))
            .map(Piece::name)
            .distinct()
            .collect(Collectors.joining(", "));
    return names.isEmpty() ? Optional.empty() : Optional.of(names);
  }

  private static String lengthwise(Marker marker, Shown shown) {
    if (cutAllRound(marker)) {
      return "Fold the remnant lengthwise, right sides together, "
          + shown.length(firstFold(marker).box().width())
          + " from its widest place.";
    }
    double off = offMiddleMm(marker);
    return "Fold the cloth lengthwise, right sides together, so that "
        + (off == 0
            ? "the selvedges meet."
            : "one selvedge lies " + shown.length(2 * off) + " inside the other.");
  }

  /** How far from the middle of the cloth a lengthwise fold lies, mm; 0 for other folds. */
  static double offMiddleMm(Marker marker) {
    if (!marker.fold().alongMiddle() || firstFold(marker).plies() == 1) {
      return 0;
    }
    double off = marker.lay().cloth().usableWidthMm() / 2 - firstFold(marker).box().width();
    return off < 0.05 ? 0 : off;
  }

  /** What an edge that is folded over covers besides. */
  private static String beyond(Cloth cloth) {
    if (cloth.fusingMarginMm() > 0) {
      return " plus the selvedge and the fusing margin";
    }
    return cloth.selvedgeMm() > 0 ? " plus the selvedge" : "";
  }

  private static List<String> of(Repeat repeat, Marker marker, Shown shown) {
    List<String> words = new ArrayList<>();
    uneven(repeat).ifPresent(words::add);
    repeat.borderMm().ifPresent(mm -> words.add(border(mm, marker, shown)));
    WorstMatch.of(marker)
        .filter(worst -> !worst.exact())
        .ifPresent(worst -> words.add("Matches are " + worst.words(shown.unit()) + "."));
    if (repeat.acrossMm() > 0 && folded(marker)) {
      foldsOn(repeat, marker).ifPresent(line -> words.add("The fold lies " + line + "."));
    }
    if (repeat.alongMm() > 0 && marker.fold() == Fold.CROSSWISE && folded(marker)) {
      words.add("The fold lies along the middle of a stripe.");
    } else if (repeat.alongMm() > 0) {
      words.add(
          "Cut the end so that the middle of a stripe lies "
              + shown.length(repeat.startAlongMm())
              + " from it.");
    }
    if (repeat.acrossMm() > 0) {
      words.add(
          "The middle of a stripe lies "
              + shown.length(repeat.startAcrossMm())
              + " from the edge of the cloth"
              + (folded(marker) ? "; pin the plies so that stripes lie on stripes." : "."));
    }
    return words;
  }

  /** In which direction a repeat has no mirror line. */
  private static Optional<String> uneven(Repeat repeat) {
    List<String> from = new ArrayList<>();
    if (repeat.alongMm() > 0 && !repeat.evenAlong()) {
      from.add("from either end");
    }
    if (repeat.acrossMm() > 0 && !repeat.evenAcross()) {
      from.add("from either side");
    }
    return from.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "The repeat is uneven: it looks different "
                + String.join(" and ", from)
                + ". The thin line beside each stripe says which way round.");
  }

  private static String border(double mm, Marker marker, Shown shown) {
    Cloth cloth = marker.lay().cloth();
    boolean low = mm <= cloth.widthMm() / 2;
    String from = shown.length(low ? mm : cloth.widthMm() - mm) + " from its selvedge.";
    return lies(marker) == Fold.OPEN
        ? "Lay the selvedge with the border at the "
            + (low ? "bottom" : "top")
            + " of the drawing: the border runs "
            + from
        : "The border runs " + from;
  }

  /** Which selvedge of open cloth carries a border, if one does. */
  static Optional<Zone.Side> borderSide(Marker marker) {
    Cloth cloth = marker.lay().cloth();
    return cloth
        .repeat()
        .filter(repeat -> lies(marker) == Fold.OPEN)
        .flatMap(Repeat::borderMm)
        .map(mm -> mm <= cloth.widthMm() / 2 ? Zone.Side.LOW_Y : Zone.Side.HIGH_Y);
  }

  /** Where in the repeat the fold along the cloth is, or the first of two, if there is one. */
  private static Optional<String> foldsOn(Repeat repeat, Marker marker) {
    Cloth cloth = marker.lay().cloth();
    return LaidCloth.like(cloth, marker.fold(), marker.zones()).stream()
        .flatMap(laid -> laid.bands().stream())
        .filter(band -> band.foldEdges().contains(Zone.Side.LOW_Y))
        .mapToDouble(band -> band.layers().get(0).open(band.lowY()) + cloth.selvedgeMm())
        .mapToObj(mm -> (mm - repeat.startAcrossMm()) / repeat.acrossMm())
        .map(
            bars ->
                Math.abs(bars - Math.rint(bars)) < 0.25
                    ? "on the middle of a stripe"
                    : "half way between the middles of two stripes")
        .findFirst();
  }

  /** How much lies single between the selvedges of a double fold, mm; 0 where they meet. */
  static double besideMm(Marker marker) {
    double between =
        marker.zones().stream()
                .filter(z -> z.foldEdges().equals(Set.of(Zone.Side.HIGH_Y)))
                .mapToDouble(z -> z.box().minY())
                .findFirst()
                .orElse(0)
            - firstFold(marker).box().maxY()
            - 2 * marker.lay().cloth().selvedgeMm();
    return between < 0.05 ? 0 : between;
  }

  /** The zone that is measured from the first fold. */
  private static Zone firstFold(Marker marker) {
    return marker.zones().stream()
        .filter(z -> z.plies() == 2)
        .findFirst()
        .orElse(marker.zones().get(0));
  }

  private static String sentence(String words) {
    return Character.toUpperCase(words.charAt(0)) + words.substring(1) + ".";
  }

  /** How it lies in one zone. */
  static String of(Zone zone, Shown shown) {
    String from = zone.box().minX() > 0 ? " from " + shown.length(zone.box().minX()) : "";
    String side = zone.sideUp() == Zone.Face.RIGHT ? "right side up" : "wrong side up";
    return zone.id() + from + ": " + (zone.plies() == 2 ? "2 plies" : "1 ply") + ", " + side;
  }
}
