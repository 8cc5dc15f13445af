package ellwand.nest.pose;

import ellwand.cloth.Band;
import ellwand.cloth.Cloth;
import ellwand.cloth.Direction;
import ellwand.cloth.LaidCloth;
import ellwand.cloth.Zone.Face;
import ellwand.cutting.CutPiece;
import ellwand.lay.Form;
import ellwand.lay.Heading;
import ellwand.lay.Lay;
import ellwand.lay.Wanted;
import ellwand.nest.pose.Placement.Hand;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;

/** What has to be served, and where each could be. */
public final class Stations {

  private Stations() {}

  /**
   * The lay's wants as servings: one each, but two of a size that a double zone can cut at once go
   * together: wholes of a symmetric piece, and half pieces. They may be for two garments where they
   * have room on both plies, unless each has to match its own garment's stripes. What has a hand
   * cannot be for two: plies of a double zone mirror each other, so that the second garment would
   * get the wrong hand, however it is laid.
   */
  public static List<List<Wanted>> servings(Lay lay, LaidCloth cloth) {
    Map<CutPiece, Boolean> shared = new IdentityHashMap<>();
    List<List<Wanted>> servings = new ArrayList<>();
    Map<String, Wanted> waiting = new LinkedHashMap<>();
    for (Wanted wanted : lay.wanted()) {
      if (!twoAtOnce(lay, wanted)) {
        servings.add(List.of(wanted));
        continue;
      }
      String size = wanted.cut().name() + "/" + wanted.size();
      boolean any = shared.computeIfAbsent(wanted.cut(), cut -> mayShare(lay, wanted, cloth));
      String key = any ? size : size + "/" + wanted.garment();
      Wanted first = waiting.remove(key);
      if (first == null) {
        waiting.put(key, wanted);
      } else {
        servings.add(List.of(first, wanted));
      }
    }
    waiting.values().forEach(wanted -> servings.add(List.of(wanted)));
    return servings;
  }

  private static boolean mayShare(Lay lay, Wanted wanted, LaidCloth cloth) {
    Placement pair = Placement.of(lay.cloth(), wanted, Form.PAIR, Hand.AS_DRAWN);
    return !matched(lay, wanted)
        && cloth.bands().stream()
            .filter(band -> band.plies() == 2)
            .anyMatch(band -> longest(List.of(pair), List.of(band)) < Double.POSITIVE_INFINITY);
  }

  private static boolean matched(Lay lay, Wanted wanted) {
    String piece = wanted.cut().name();
    return lay.cloth().repeat().isPresent()
        && lay.matches().stream()
            .anyMatch(m -> m.piece().equals(piece) || m.otherPiece().equals(piece));
  }

  private static boolean twoAtOnce(Lay lay, Wanted wanted) {
    boolean alike =
        switch (wanted.how()) {
          case WHOLE -> wanted.cut().symmetric();
          case FOLD -> true;
          case PAIR -> false;
        };
    boolean anyWay = Lay.direction(lay.cloth(), wanted.cut()) == Direction.ANY_WAY;
    return alike
        && Placement.cutsTwo(
            wanted.cut(), anyWay ? EnumSet.allOf(Heading.class) : EnumSet.of(Heading.UP));
  }

  /** Every station at which the wants could be served; empty if they fit nowhere. */
  public static List<Station> of(List<Wanted> wants, Cloth of, LaidCloth cloth) {
    List<Station> onGrain = of(wants, of, cloth, placement -> placement);
    // Only so is a tolerance of no account for what fits without.
    return onGrain.isEmpty() ? of(wants, of, cloth, Placement::turnedToFit) : onGrain;
  }

  private static List<Station> of(
      List<Wanted> wants, Cloth of, LaidCloth cloth, UnaryOperator<Placement> made) {
    List<Station> stations = new ArrayList<>();
    for (int stretch = 0; stretch < cloth.stretches().size(); stretch++) {
      // What may lie alike in several bands is one station, so that it is tried in each of them.
      Map<List<Placement>, List<Band>> bands = new LinkedHashMap<>();
      for (Band band : cloth.stretches().get(stretch)) {
        for (List<Placement> plain : placements(of, wants, band)) {
          List<Placement> placements = plain.stream().map(made).toList();
          if (longest(placements, List.of(band)) < Double.POSITIVE_INFINITY) {
            bands.computeIfAbsent(placements, r -> new ArrayList<>()).add(band);
          }
        }
      }
      for (Map.Entry<List<Placement>, List<Band>> e : bands.entrySet()) {
        stations.add(
            new Station(
                stretch,
                e.getValue(),
                e.getKey(),
                cloth.lengths(stretch),
                longest(e.getKey(), e.getValue()),
                cloth.lengths(stretch)
                    * e.getKey().stream().mapToDouble(r -> r.drawn().cutting().area()).sum()));
      }
    }
    // The first is where the search begins: within a stretch rather not where a twin is wasted.
    stations.sort(Comparator.comparingInt(Station::stretch).thenComparing(Station::wastesTwin));
    return stations;
  }

  private static double longest(List<Placement> placements, List<Band> bands) {
    return placements.stream().mapToDouble(r -> shortest(r, bands)).max().orElseThrow();
  }

  private static double shortest(Placement placement, List<Band> bands) {
    return bands.stream()
        .flatMap(band -> Pose.of(placement, band, EnumSet.allOf(Heading.class)).stream())
        .mapToDouble(pose -> pose.outline().box().length())
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  private static List<List<Placement>> placements(Cloth cloth, List<Wanted> wants, Band band) {
    Wanted first = wants.get(0);
    boolean single = band.plies() == 1;
    Hand drawn = band.sideUp() == Face.RIGHT ? Hand.AS_DRAWN : Hand.MIRRORED;
    Hand mirrored = drawn == Hand.AS_DRAWN ? Hand.MIRRORED : Hand.AS_DRAWN;
    return switch (first.how()) {
      case FOLD -> {
        List<List<Placement>> ways = new ArrayList<>();
        if (!band.foldEdges().isEmpty()) {
          ways.add(wants.stream().map(w -> Placement.of(cloth, w, Form.HALF, Hand.FREE)).toList());
        }
        ways.add(
            single || wants.size() == 1
                ? wants.stream()
                    .map(w -> Placement.of(cloth, w, Form.OPENED, Hand.AS_DRAWN))
                    .toList()
                : List.of(Placement.ofTwo(cloth, first, wants.get(1), Hand.AS_DRAWN)));
        yield ways;
      }
      case PAIR ->
          single
              ? List.of(
                  List.of(
                      Placement.of(cloth, first, Form.WHOLE, drawn),
                      Placement.of(cloth, first, Form.WHOLE, mirrored)))
              : List.of(List.of(Placement.of(cloth, first, Form.PAIR, Hand.FREE)));
      case WHOLE -> {
        if (single) {
          yield List.of(
              wants.stream().map(w -> Placement.of(cloth, w, Form.WHOLE, drawn)).toList());
        }
        yield List.of(
            List.of(
                wants.size() == 2
                    ? Placement.ofTwo(cloth, first, wants.get(1), Hand.FREE)
                    : Placement.of(cloth, first, Form.WHOLE, Hand.FREE)));
      }
    };
  }
}
