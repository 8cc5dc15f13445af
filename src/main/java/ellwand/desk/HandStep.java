package ellwand.desk;

import com.fasterxml.jackson.databind.JsonNode;
import ellwand.edit.HandLaid;
import ellwand.problem.InputException;
import java.util.LinkedHashSet;
import java.util.Set;

/**
 * A step by hand, as a page asks for it.
 *
 * @param what is done
 * @param copies with which, by their places in the marker
 * @param others with which they change places
 * @param alongMm how far they are moved
 * @param acrossMm likewise
 * @param degrees how far they are turned, counter-clockwise
 */
record HandStep(
    String what,
    Set<Integer> copies,
    Set<Integer> others,
    double alongMm,
    double acrossMm,
    double degrees) {

  /** No table is longer, mm. */
  private static final double FARTHEST_MM = 1e6;

  private static final Set<String> KNOWN =
      Set.of("move", "slide", "turn", "exchange", "pin", "unpin");

  HandStep {
    copies = Set.copyOf(copies);
    others = Set.copyOf(others);
    InputException.unless(
        KNOWN.contains(what),
        "this cannot be done by hand",
        "Move, slide, turn, exchange, pin or unpin pieces");
    InputException.unless(
        !copies.isEmpty() && (!what.equals("exchange") || !others.isEmpty()),
        "it is not said which piece",
        "Name some under copies, and under others those they change places with");
    InputException.unless(
        Math.abs(alongMm) <= FARTHEST_MM && Math.abs(acrossMm) <= FARTHEST_MM,
        "no table reaches so far",
        "Move it by less than 1 km");
    InputException.unless(
        Math.abs(degrees) <= 360, "this is more than a whole turn", "Turn it by 360 at most");
  }

  /**
   * Reads one.
   *
   * @throws InputException if it makes no sense
   */
  static HandStep of(JsonNode ask) {
    return new HandStep(
        ask.path("do").asText(),
        copies(ask.path("copies")),
        copies(ask.path("others")),
        ask.path("along").asDouble(),
        ask.path("across").asDouble(),
        ask.path("degrees").asDouble());
  }

  private static Set<Integer> copies(JsonNode numbers) {
    Set<Integer> copies = new LinkedHashSet<>();
    for (JsonNode number : numbers) {
      InputException.unless(
          number.isInt(), "'" + number + "' is no piece's number", "Count pieces from 0");
      copies.add(number.asInt());
    }
    return copies;
  }

  /**
   * Does it.
   *
   * @throws Declined if it cannot be done with what lies there
   */
  HandLaid on(HandLaid now) {
    require(now, copies);
    require(now, others);
    return switch (what) {
      case "pin" -> now.pin(copies);
      case "unpin" -> now.unpin(copies);
      default -> {
        requireFree(now, copies);
        requireFree(now, others);
        yield moved(now);
      }
    };
  }

  private HandLaid moved(HandLaid now) {
    if (what.equals("exchange")) {
      InputException.unless(
          copies.stream().noneMatch(others::contains),
          "a piece cannot change places with itself",
          "Name two, or two groups that share none");
      return now.exchange(copies, others);
    }
    return switch (what) {
      case "move" -> now.move(copies, alongMm, acrossMm);
      case "slide" -> now.slide(copies, alongMm, acrossMm);
      default -> now.turn(copies, degrees);
    };
  }

  private static void require(HandLaid now, Set<Integer> some) {
    if (some.stream().anyMatch(i -> i < 0 || i >= now.marker().copies().size())) {
      throw Declined.asItIsNow("there is no such piece on the table", "Look at it as it lies now");
    }
  }

  private static void requireFree(HandLaid now, Set<Integer> some) {
    some.stream()
        .filter(now.pinned()::contains)
        .findFirst()
        .ifPresent(
            copy -> {
              throw Declined.asItIsNow(
                  now.marker().copies().get(copy).piece() + " is pinned where it lies",
                  "Take its pin out to move it");
            });
  }
}
