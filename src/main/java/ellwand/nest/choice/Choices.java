package ellwand.nest.choice;

import ellwand.lay.Heading;
import ellwand.lay.Wanted;
import ellwand.nest.pose.Station;
import ellwand.nest.repeat.Free;
import ellwand.nest.stretch.Decision;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Says what could be chosen otherwise. */
public final class Choices {

  private Choices() {}

  /**
   * Decisions one change away: all copies of a piece served otherwise, or a garment turned round.
   * The first garment keeps its heading, since turning the whole lay changes nothing.
   */
  public static List<Decision> neighbours(LayPlan plan, Decision from) {
    List<Decision> neighbours = new ArrayList<>();
    List<Serving> servings = plan.servings();
    for (int i = 0; i < servings.size(); i++) {
      if (!firstOfItsPiece(servings, i)) {
        continue;
      }
      for (int option = 0; option < servings.get(i).stations().size(); option++) {
        Decision changed = from;
        for (int j = i; j < servings.size(); j++) {
          // In a garment of other pieces the place in the repeat may leave fewer stations.
          List<Station> stations = servings.get(j).stations();
          if (samePiece(servings.get(i), servings.get(j)) && option < stations.size()) {
            changed = changed.at(j, stations.get(option));
          }
        }
        if (!changed.equals(from)) {
          neighbours.add(changed);
        }
      }
    }
    plan.headings().stream()
        .skip(1)
        .forEach(
            h -> {
              Heading now = from.headings().get(h.garment());
              neighbours.add(
                  from.heading(h.garment(), now == Heading.UP ? Heading.DOWN : Heading.UP));
            });
    plan.phases()
        .forEach(
            (free, values) ->
                values.stream()
                    .filter(mm -> Math.abs(mm - from.phases().get(free)) > 0.01)
                    .forEach(mm -> neighbours.add(from.phase(free, mm))));
    return neighbours.stream()
        .map(Decision::agreeing)
        .filter(decision -> !decision.equals(from))
        .filter(decision -> keepsFold(plan, decision))
        .toList();
  }

  /** Who names a fold wants it: open is a way to lie of its own. */
  private static boolean keepsFold(LayPlan plan, Decision decision) {
    return decision.stations().stream().anyMatch(Station::folded)
        || plan.servings().stream()
            .flatMap(serving -> serving.stations().stream())
            .noneMatch(Station::folded);
  }

  /**
   * The decision alone if anything lies folded or nothing can; else those in which it holds but for
   * one serving that does.
   */
  public static List<Decision> keepingFold(LayPlan plan, Decision decision) {
    if (keepsFold(plan, decision)) {
      return List.of(decision);
    }
    List<Decision> keeping = new ArrayList<>();
    for (int i = 0; i < plan.servings().size(); i++) {
      if (firstOfItsPiece(plan.servings(), i)) {
        for (Station station : plan.servings().get(i).stations()) {
          if (station.folded()) {
            keeping.add(decision.at(i, station).agreeing());
          }
        }
      }
    }
    return keeping;
  }

  /**
   * Decisions in which it may be shortest to lay the copies one behind the other: each served where
   * that takes least, and all where the cloth lies open, or all but one where it has to be folded.
   */
  public static List<Decision> rows(LayPlan plan) {
    Map<Integer, Heading> up =
        plan.headings().stream()
            .collect(Collectors.toMap(GarmentHeading::garment, h -> Heading.UP));
    Map<Free, Double> phases = plan.decision().phases();
    Comparator<Station> shortest = Comparator.comparingDouble(Station::rowMm);
    Comparator<Station> last = Comparator.comparingInt(s -> -s.stretch());
    return Stream.of(shortest, last.thenComparing(shortest))
        .map(
            order ->
                plan.servings().stream().map(s -> Collections.min(s.stations(), order)).toList())
        .distinct()
        .flatMap(stations -> keepingFold(plan, new Decision(stations, up, phases)).stream())
        .toList();
  }

  private static boolean firstOfItsPiece(List<Serving> servings, int index) {
    return servings.subList(0, index).stream()
        .noneMatch(earlier -> samePiece(earlier, servings.get(index)));
  }

  private static boolean samePiece(Serving a, Serving b) {
    Wanted first = a.wants().get(0);
    Wanted second = b.wants().get(0);
    return first.cut().equals(second.cut())
        && first.size().equals(second.size())
        && a.wants().size() == b.wants().size();
  }
}
