package ellwand.nest;

import ellwand.cloth.Cloth;
import ellwand.cloth.Zone;
import ellwand.geometry.Box;
import ellwand.lay.Copy;
import ellwand.lay.Form;
import ellwand.lay.Lay;
import ellwand.lay.Marker;
import ellwand.lay.Wanted;
import ellwand.rule.Check;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;

/** Markers laid one behind the other, of which a lay takes the garments that it wants. */
public final class EndToEnd {

  private record Garment(String size, int number) {}

  private final Map<String, Deque<Integer>> wanted = new LinkedHashMap<>();
  private final List<Copy> copies = new ArrayList<>();

  private EndToEnd(Lay lay) {
    garments(lay)
        .forEach(
            garment ->
                wanted
                    .computeIfAbsent(garment.size, size -> new ArrayDeque<>())
                    .add(garment.number));
  }

  /**
   * The marker of a lay that others make so; what else they hold is left out. Empty if they lack
   * something, break a hard rule there, have more than one zone, or make none that is shorter.
   *
   * @param markers one at least, of the same style on the same cloth, all laid in the same way
   * @param shorterThanMm that the marker is to be
   */
  public static Optional<Marker> of(Lay lay, List<Marker> markers, double shorterThanMm) {
    Marker first = markers.get(0);
    if (markers.stream().anyMatch(m -> m.zones().size() != 1 || m.fold() != first.fold())) {
      return Optional.empty();
    }
    EndToEnd row = new EndToEnd(lay);
    markers.forEach(marker -> row.add(marker, lay.cloth()));
    Zone zone = first.zones().get(0);
    return Optional.of(
            new Marker(
                lay,
                first.fold(),
                List.of(
                    new Zone(
                        zone.id(),
                        new Box(0, zone.box().minY(), row.endMm(), zone.box().maxY()),
                        zone.plies(),
                        zone.foldEdges(),
                        zone.sideUp())),
                row.copies,
                first.search()))
        // The check takes far longer than all before it.
        .filter(marker -> marker.lengthMm() < shorterThanMm && Check.of(marker).isEmpty());
  }

  private static Set<Garment> garments(Lay lay) {
    Set<Garment> garments = new LinkedHashSet<>();
    lay.wanted().forEach((Wanted w) -> garments.add(new Garment(w.size(), w.garment())));
    return garments;
  }

  private double endMm() {
    return copies.stream().mapToDouble(c -> c.outline().box().maxX()).max().orElse(0);
  }

  private void add(Marker marker, Cloth cloth) {
    double fromX = copies.isEmpty() ? 0 : cloth.wholeRepeatsMm(endMm() + cloth.gapMm());
    Map<Garment, Integer> numbers = new HashMap<>();
    for (Garment garment : garments(marker.lay())) {
      Deque<Integer> left = wanted.getOrDefault(garment.size, new ArrayDeque<>());
      if (!left.isEmpty()) {
        numbers.put(garment, left.remove());
      }
    }
    for (Copy copy : marker.copies()) {
      List<Integer> mine =
          copy.garments().stream()
              .flatMap(g -> Stream.ofNullable(numbers.get(new Garment(copy.size(), g))))
              .toList();
      if (!mine.isEmpty()) {
        copies.add(
            new Copy(
                copy.piece(),
                copy.size(),
                mine.get(0),
                mine.size() > 1 ? OptionalInt.of(mine.get(1)) : OptionalInt.empty(),
                form(marker, copy, mine.size()),
                copy.zone(),
                copy.heading(),
                copy.motion().shifted(fromX, 0),
                copy.shifted(fromX, 0).outline()));
      }
    }
  }

  /** Of what two garments share one alone has the twin to spare. */
  private static Form form(Marker marker, Copy copy, int garments) {
    if (garments == copy.garments().size()) {
      return copy.form();
    }
    boolean half =
        marker.lay().wantedBy(copy).filter(w -> w.cut().piece().fold().isPresent()).isPresent();
    return half ? Form.OPENED : Form.WHOLE;
  }
}
