package ellwand.nest.choice;

import ellwand.cloth.Direction;
import ellwand.cloth.LaidCloth;
import ellwand.lay.Heading;
import ellwand.lay.Lay;
import ellwand.lay.Wanted;
import ellwand.nest.pose.NoRoomException;
import ellwand.nest.pose.Placement;
import ellwand.nest.pose.Station;
import ellwand.nest.pose.Stations;
import ellwand.nest.repeat.Free;
import ellwand.nest.repeat.Phases;
import ellwand.nest.stretch.Decision;
import ellwand.nest.stretch.StretchTask;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Sets up the planning solution of a lay. */
public final class FirstPlan {

  private final Lay lay;
  private final Phases phases;
  private final Map<Free, Double> places;

  private FirstPlan(Lay lay, Phases phases) {
    this.lay = lay;
    this.phases = phases;
    places = new HashMap<>(phases.first());
  }

  /**
   * A plan with every serving at its first station and garments heading up and down in turn, where
   * they can.
   *
   * @throws NoRoomException if something wanted fits nowhere
   */
  public static LayPlan of(Lay lay, LaidCloth cloth, Phases phases) {
    return new FirstPlan(lay, phases).plan(cloth);
  }

  private LayPlan plan(LaidCloth cloth) {
    List<List<Wanted>> wanted = Stations.servings(lay, cloth);
    List<List<Station>> anywhere = new ArrayList<>();
    for (List<Wanted> wants : wanted) {
      List<Station> stations = Stations.of(wants, lay.cloth(), cloth);
      if (stations.isEmpty()) {
        throw NoRoomException.of(lay.cloth(), cloth, wants.get(0));
      }
      anywhere.add(stations);
    }
    phases.candidates().forEach((free, values) -> choose(free, values, anywhere));
    List<Serving> servings = new ArrayList<>();
    for (int i = 0; i < wanted.size(); i++) {
      List<Station> stations =
          anywhere.get(i).stream().filter(s -> possible(s, Heading.UP)).toList();
      if (stations.isEmpty()) {
        throw NoRoomException.offRepeat(lay.cloth(), cloth, wanted.get(i).get(0));
      }
      Serving serving = new Serving(i, wanted.get(i), stations);
      serving.serveAt(stations.get(0));
      servings.add(serving);
    }
    return new LayPlan(servings, headings(servings), cloth, phases, places);
  }

  /** Takes the likeliest place in the repeat with which most of its garment has room. */
  private void choose(Free free, List<Double> values, List<List<Station>> anywhere) {
    List<List<Station>> garment =
        anywhere.stream().filter(stations -> concerns(free, stations.get(0))).toList();
    double best = values.get(0);
    long most = -1;
    for (double mm : values) {
      if (most < garment.size()) {
        places.put(free, mm);
        long served =
            garment.stream()
                .filter(stations -> stations.stream().anyMatch(s -> possible(s, Heading.UP)))
                .count();
        if (served > most) {
          most = served;
          best = mm;
        }
      }
    }
    places.put(free, best);
  }

  private static boolean concerns(Free free, Station station) {
    Wanted wanted = station.placements().get(0).wanted();
    return wanted.garment() == free.garment() && wanted.size().equals(free.size());
  }

  private boolean possible(Station station, Heading heading) {
    Map<Integer, Heading> headings = new HashMap<>();
    for (Placement placement : station.placements()) {
      headings.put(placement.wanted().garment(), heading);
      placement.secondGarment().ifPresent(second -> headings.put(second, heading));
    }
    return StretchTask.possible(
        lay.cloth(), phases, new Decision(List.of(station), headings, places));
  }

  private List<GarmentHeading> headings(List<Serving> servings) {
    if (lay.cloth().direction() != Direction.ONE_WAY_PER_GARMENT) {
      return List.of();
    }
    TreeMap<Integer, Boolean> down = new TreeMap<>();
    for (Serving serving : servings) {
      // Garments that share a piece head the same, so they begin so.
      boolean alone = serving.wants().stream().map(Wanted::garment).distinct().count() == 1;
      boolean can = alone && possible(serving.station(), Heading.DOWN);
      serving.wants().forEach(w -> down.merge(w.garment(), can, (a, b) -> a && b));
    }
    List<GarmentHeading> headings = new ArrayList<>();
    down.forEach(
        (garment, can) ->
            headings.add(
                new GarmentHeading(
                    garment, can && headings.size() % 2 == 1 ? Heading.DOWN : Heading.UP)));
    return headings;
  }
}
