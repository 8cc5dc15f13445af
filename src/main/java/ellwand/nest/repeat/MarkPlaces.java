package ellwand.nest.repeat;

import ellwand.cloth.Repeat;
import ellwand.geometry.Point;
import ellwand.lay.Lay;
import ellwand.lay.Wanted;
import ellwand.nest.repeat.Free.Axis;
import ellwand.nest.repeat.Ties.Tie;
import ellwand.nest.repeat.Ties.Tied;
import ellwand.pattern.Asks;
import ellwand.pattern.Sizes;
import ellwand.problem.InputException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Queue;

/**
 * Where in the cloth's repeat the pieces of one size want one of their marks: pieces that match
 * each other, directly or by way of others, hang together and leave one choice for all.
 */
final class MarkPlaces {

  private static final double ROUNDING_MM = 0.005;

  private final Axis axis;
  private final Repeat repeat;
  private final String size;
  private final Ties ties;
  private final Map<Tied, MarkPlace> places = new LinkedHashMap<>();
  private final Map<Integer, List<Double>> only = new HashMap<>();
  private int groups;

  /**
   * A mark and its distance from the middle of a bar in the piece's own direction.
   *
   * @param phaseMm the distance, or what is added to that of the group
   * @param sign 1, or -1 if what is chosen for the group counts the other way here
   * @param group whose distance is chosen; empty if the distance is stated
   */
  record MarkPlace(Point mark, double phaseMm, int sign, Optional<Integer> group) {}

  /** A piece that a choice is made for. */
  record Member(Wanted wanted, boolean turnedOver, MarkPlace place) {}

  /** Both ways, along first. */
  static Map<Axis, MarkPlaces> of(Lay lay, Repeat repeat, String size) {
    MarkPlaces along = new MarkPlaces(lay, repeat, size, Axis.ALONG, Optional.empty());
    return Map.of(
        Axis.ALONG,
        along,
        Axis.ACROSS,
        new MarkPlaces(lay, repeat, size, Axis.ACROSS, Optional.of(along)));
  }

  /**
   * @param along for places across: what is settled along the cloth
   * @throws InputException if pieces cannot match at all their marks
   */
  private MarkPlaces(Lay lay, Repeat repeat, String size, Axis axis, Optional<MarkPlaces> along) {
    this.axis = axis;
    this.repeat = repeat;
    this.size = size;
    ties = new Ties(lay, repeat, size, axis);
    if (periodMm() > 0) {
      ties.pieces().forEach(this::place);
      spread(new ArrayDeque<>(places.keySet()));
      for (Tie tie : ties.all()) {
        if (!places.containsKey(tie.one().body())) {
          places.put(tie.one().body(), new MarkPlace(Ties.ORIGIN, 0, 1, Optional.of(groups++)));
          spread(new ArrayDeque<>(List.of(tie.one().body())));
        }
      }
      for (int i = 0; i < ties.all().size(); i++) {
        Tie tie = ties.all().get(i);
        boolean dropped = along.isPresent() && along.get().dropped(i);
        agree(tie, offMm(tie) - (dropped ? repeat.acrossMm() : 0));
      }
    }
  }

  private void place(Wanted wanted) {
    Optional<Asks.Place> place = wanted.cut().piece().asks().place().filter(p -> !p.onBorder());
    if (place.isEmpty()) {
      return;
    }
    Optional<Double> phase = axis == Axis.ALONG ? place.get().alongMm() : place.get().acrossMm();
    if (phase.isPresent() || repeat.halfDrop()) {
      Point mark = wanted.cut().marks().get(place.get().mark());
      for (boolean turnedOver : new boolean[] {false, true}) {
        places.put(
            ties.body(wanted, turnedOver),
            new MarkPlace(mark, phase.orElse(0.0), 1, Optional.empty()));
      }
    }
  }

  private void spread(Queue<Tied> reached) {
    while (!reached.isEmpty()) {
      Tied body = reached.remove();
      for (Tie tie : ties.all()) {
        if (tie.one().body().equals(body)) {
          follow(tie.back(), reached);
        }
        if (tie.other().body().equals(body)) {
          follow(tie, reached);
        }
      }
    }
  }

  /** Places the one from the other. */
  private void follow(Tie tie, Queue<Tied> reached) {
    Tied body = tie.one().body();
    if (!places.containsKey(body)) {
      MarkPlace from = places.get(tie.other().body());
      double phase = tie.turn() * originMm(tie.other().body()) + tie.apartMm();
      places.put(body, new MarkPlace(Ties.ORIGIN, phase, tie.turn() * from.sign(), from.group()));
      reached.add(body);
    }
  }

  /** Where the origin of a piece lies, without what is chosen, mm. */
  private double originMm(Tied body) {
    MarkPlace place = places.get(body);
    return place.phaseMm() - ties.mm(place.mark());
  }

  /** How far a tie is off, without what is chosen, mm. */
  private double offMm(Tie tie) {
    return originMm(tie.one().body()) - tie.turn() * originMm(tie.other().body()) - tie.apartMm();
  }

  /** Whether a tie is met in the next column of a half drop, half a repeat further along. */
  private boolean dropped(int tie) {
    return repeat.halfDrop()
        && Math.abs(Math.IEEEremainder(offMm(ties.all().get(tie)), repeat.alongMm()))
            > repeat.alongMm() / 4;
  }

  /** After so much marks lie alike; along a half drop in this column or in the next. */
  double sameAfterMm() {
    return repeat.halfDrop() ? axis == Axis.ALONG ? periodMm() / 2 : 2 * periodMm() : periodMm();
  }

  private void agree(Tie tie, double offMm) {
    MarkPlace one = places.get(tie.one().body());
    int times = one.sign() - tie.turn() * places.get(tie.other().body()).sign();
    double missed = missMm(offMm);
    if (one.group().isPresent() && times != 0) {
      // What is chosen counts twice here, so that two places serve.
      int group = one.group().get();
      double first = -offMm / times;
      List<Double> left = only.getOrDefault(group, List.of(first, first + sameAfterMm() / 2));
      only.put(group, left.stream().filter(mm -> same(times * mm + offMm)).toList());
      missed = left.stream().mapToDouble(mm -> missMm(times * mm + offMm)).min().orElseThrow();
    }
    if (missed > repeat.matchWithinMm() + ROUNDING_MM) {
      throw new InputException(
          tie.match()
              .problem(
                  String.format(
                      Locale.ROOT,
                      "%s cannot match %s.%s as well as all else that is asked: it would be"
                          + " %.1f mm off in %s, and %.1f mm are allowed",
                      tie.match().mark(),
                      tie.match().otherPiece(),
                      tie.match().otherMark(),
                      missed,
                      Sizes.words(size),
                      repeat.matchWithinMm()),
                  "Take out one of the matches or places of these pieces, or allow more with"
                      + " match-within: of the repeat"));
    }
  }

  /** How far places that lie so far apart are from lying alike, mm. */
  private double missMm(double mm) {
    return Math.abs(Math.IEEEremainder(mm, sameAfterMm()));
  }

  private boolean same(double mm) {
    return missMm(mm) <= repeat.matchWithinMm() + ROUNDING_MM;
  }

  /**
   * What a piece wants.
   *
   * @param turnedOver for a copy that is turned over
   */
  Optional<MarkPlace> of(Wanted wanted, boolean turnedOver) {
    return Optional.ofNullable(places.get(ties.body(wanted, turnedOver)));
  }

  /** Whether a piece is to match any. */
  boolean matched(String piece) {
    return ties.all().stream()
        .anyMatch(t -> t.match().piece().equals(piece) || t.match().otherPiece().equals(piece));
  }

  int groups() {
    return groups;
  }

  /** What hangs together. */
  List<Member> members(int group) {
    List<Member> members = new ArrayList<>();
    places.forEach(
        (body, place) -> {
          if (place.group().filter(g -> g == group).isPresent()) {
            members.add(new Member(ties.wanted(body.piece()), body.turnedOver(), place));
          }
        });
    return members;
  }

  /** The only distances that serve a group, mm; empty if any does. */
  List<Double> only(int group) {
    return only.getOrDefault(group, List.of());
  }

  double periodMm() {
    return axis == Axis.ALONG ? repeat.alongMm() : repeat.acrossMm();
  }
}
