package ellwand.trial;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;

/** Counts what a marker cuts for each garment. */
final class Counts {

  private final JsonNode job;
  private final JsonNode marker;
  private final List<Laid> copies;
  private final Map<String, Drawing> drawings;

  /** Whether pieces are cut larger than they are drawn. */
  private final boolean shrunk;

  private final List<String> wrong = new ArrayList<>();

  Counts(
      JsonNode job,
      JsonNode marker,
      List<Laid> copies,
      Map<String, Drawing> drawings,
      boolean shrunk) {
    this.job = job;
    this.marker = marker;
    this.copies = copies;
    this.drawings = drawings;
    this.shrunk = shrunk;
  }

  /** How many are wanted by one garment: as drawn only, pairs, on the fold. */
  private record Wanted(int wholes, int pairs, int halves) {

    static Wanted of(String cut) {
      String[] words = cut.split(" ");
      int number = words[0].matches("\\d+") ? Integer.parseInt(words[0]) : 1;
      if (cut.contains("pair")) {
        return new Wanted(0, number, 0);
      }
      return cut.contains("fold") ? new Wanted(0, 0, number) : new Wanted(number, 0, 0);
    }

    int all() {
      return wholes + 2 * pairs + halves;
    }
  }

  /** Whether each garment has of each piece what it is to have, and of the right hand. */
  List<String> faults() {
    Map<String, List<Laid>> laid = new HashMap<>();
    for (Laid copy : copies) {
      for (String garment : copy.garments()) {
        laid.computeIfAbsent(copy.piece() + "/" + garment, k -> new ArrayList<>()).add(copy);
      }
    }
    Map<String, Integer> garments = new HashMap<>();
    JsonNode order = job.path("order").path("garments");
    if (order.isObject()) {
      order.fields().forEachRemaining(e -> garments.put(e.getKey(), e.getValue().asInt()));
    } else {
      String size =
          job.get("style").has("size") ? job.get("style").get("size").asText() : onlySize();
      garments.put(size, order.asInt(1));
    }
    Set<Laid> expected = new HashSet<>();
    for (Map.Entry<String, Drawing> e : drawings.entrySet()) {
      String cut = e.getValue().piece().get("cut").path(marker.get("cloth").asText()).asText("0");
      Wanted wanted = Wanted.of(cut);
      if (wanted.all() == 0) {
        continue;
      }
      for (Map.Entry<String, Integer> size : garments.entrySet()) {
        List<String> keys =
            laid.keySet().stream()
                .filter(k -> k.startsWith(e.getKey() + "/" + size.getKey() + " "))
                .toList();
        if (keys.size() != size.getValue()) {
          wrong.add(
              "%s is there for %d garments of %s"
                  .formatted(e.getKey(), keys.size(), size.getKey()));
        }
        keys.forEach(k -> oneGarment(k, wanted, laid.get(k)));
        keys.forEach(k -> expected.addAll(laid.get(k)));
      }
    }
    copies.stream()
        .filter(c -> drawings.containsKey(c.piece()) && !expected.contains(c))
        .forEach(c -> wrong.add(c + " is wanted by nobody"));
    return wrong;
  }

  private String onlySize() {
    return copies.isEmpty() ? "" : copies.get(0).size();
  }

  private void oneGarment(String name, Wanted wanted, List<Laid> laid) {
    int drawn = 0;
    int mirrored = 0;
    int couples = 0;
    int either = 0;
    int shared = 0;
    for (Laid copy : laid) {
      boolean half = copy.form().equals("half");
      boolean opened = copy.form().equals("opened");
      if (wanted.halves() == 0 && (half || opened)) {
        wrong.add(name + " lies as a half and is none");
      }
      if (wanted.halves() > 0 && copy.form().equals("whole")) {
        wrong.add(name + " is a half and lies as a whole");
      }
      boolean twoPlies = copy.zoneOf(marker).map(z -> z.get("plies").asInt() == 2).orElse(false);
      if (copy.form().equals("pair") && !twoPlies) {
        wrong.add(name + " lies as a pair on one ply");
      }
      if (copy.secondGarment().isPresent()) {
        shared++;
      } else if (copy.form().equals("pair")) {
        couples++;
      } else if (twoPlies) {
        either++;
      } else if (copy.flipped()) {
        mirrored++;
      } else {
        drawn++;
      }
    }
    int cut = drawn + mirrored + either + shared + 2 * couples;
    if (cut != wanted.all()) {
      wrong.add(name + " is cut " + cut + " times, wanted " + wanted.all());
    }
    boolean wrongHand =
        drawn + couples > wanted.wholes() + wanted.pairs()
            || mirrored + couples > wanted.pairs()
            // One of the two plies is of the other hand.
            || shared > 0 && wanted.pairs() == 0;
    if (wanted.halves() == 0 && wrongHand && handed(laid.get(0))) {
      wrong.add(name + " has the wrong hand");
    }
  }

  /** Whether a piece surely differs from itself turned over about a line along its x axis. */
  private boolean handed(Laid copy) {
    Polygon line = copy.drawn();
    double twiceMiddle = 2 * line.getEnvelopeInternal().centre().y;
    AffineTransformation over = new AffineTransformation(1, 0, 0, 0, -1, twiceMiddle);
    double apart = Laid.farthest(line, (Polygon) over.transform(line));
    List<Coordinate> signs = shrunk ? List.of() : drawings.get(copy.piece()).signs();
    for (Coordinate sign : signs) {
      Coordinate mirrored = over.transform(sign, new Coordinate());
      apart =
          Math.max(
              apart, signs.stream().mapToDouble(s -> s.distance(mirrored)).min().orElseThrow());
    }
    return apart > 0.25;
  }
}
