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
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Says what could be chosen otherwise. */
public final class Choices {

  /** Places in the repeat that are not two. */
  private static final double SAME_MM = 0.01;

  private Choices() {}

  /**
   * Decisions one change away: all copies of a piece served otherwise, or a garment turned round.
   */
  public static List<Decision> neighbours(LayPlan plan, Decision from) {
    return questions(plan).stream()
        .flatMap(List::stream)
        .map(answer -> answer.apply(from).agreeing())
        .filter(decision -> !decision.equals(from))
        .filter(decision -> keepsFold(plan, decision))
        .toList();
  }

  /**
   * Every decision in which all copies of a piece are served alike; none where there are more than
   * so many.
   */
  static List<Decision> all(LayPlan plan, int most) {
    List<List<UnaryOperator<Decision>>> questions = questions(plan);
    double number = questions.stream().mapToDouble(List::size).reduce(1, (a, b) -> a * b);
    if (number > most) {
      return List.of();
    }
    List<Decision> all = List.of(plan.decision());
    for (List<UnaryOperator<Decision>> answers : questions) {
      all =
          all.stream()
              .flatMap(decision -> answers.stream().map(answer -> answer.apply(decision)))
              .toList();
    }
    return all.stream()
        .map(Decision::agreeing)
        .distinct()
        .filter(decision -> keepsFold(plan, decision))
        .toList();
  }

  /**
   * What can be chosen, each with its answers: where all copies of a piece are served, how a
   * garment heads, where in the repeat something lies. The first garment keeps its heading, since
   * turning the whole lay changes nothing.
   */
  private static List<List<UnaryOperator<Decision>>> questions(LayPlan plan) {
    List<List<UnaryOperator<Decision>>> questions = new ArrayList<>();
    for (int i = 0; i < plan.servings().size(); i++) {
      if (firstOfItsPiece(plan.servings(), i)) {
        int piece = i;
        questions.add(
            IntStream.range(0, plan.servings().get(i).stations().size())
                .mapToObj(
                    option ->
                        (UnaryOperator<Decision>)
                            decision -> served(plan.servings(), piece, option, decision))
                .toList());
      }
    }
    plan.headings().stream()
        .skip(1)
        .map(GarmentHeading::garment)
        .forEach(
            garment ->
                questions.add(
                    List.of(
                        decision -> decision.heading(garment, Heading.UP),
                        decision -> decision.heading(garment, Heading.DOWN))));
    plan.phases()
        .forEach(
            (free, values) ->
                questions.add(
                    values.stream()
                        .map(mm -> (UnaryOperator<Decision>) decision -> at(free, mm, decision))
                        .toList()));
    return questions;
  }

  private static Decision served(List<Serving> servings, int piece, int option, Decision decision) {
    Decision changed = decision;
    for (int j = piece; j < servings.size(); j++) {
      // In a garment of other pieces the place in the repeat may leave fewer stations.
      List<Station> stations = servings.get(j).stations();
      if (samePiece(servings.get(piece), servings.get(j)) && option < stations.size()) {
        changed = changed.at(j, stations.get(option));
      }
    }
    return changed;
  }

  private static Decision at(Free free, double mm, Decision decision) {
    return Math.abs(mm - decision.phases().get(free)) > SAME_MM
        ? decision.phase(free, mm)
        : decision;
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
