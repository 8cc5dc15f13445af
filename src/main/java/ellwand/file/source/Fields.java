package ellwand.file.source;

import com.fasterxml.jackson.databind.JsonNode;
import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;

/**
 * The fields of a JSON object that must all be there. The first that is not ends the object: an
 * {@link InputException} says which, and {@link #list} reports it.
 */
public record Fields(Spot spot) {

  /** Coordinates beyond this are no marker's, mm: 10 km. */
  private static final double MAX = 1e7;

  private InputException refused(String key, String what, String remedy) {
    return new InputException(spot.get(key).named(Problem.of(what, remedy)));
  }

  private JsonNode field(String key) {
    Spot field = spot.get(key);
    if (!field.present()) {
      throw refused(key, "there is no " + key, "Add it");
    }
    return field.node();
  }

  /** Whether the field is there. */
  public boolean has(String key) {
    return spot.get(key).present();
  }

  /** A field that is a text. */
  public String text(String key) {
    JsonNode node = field(key);
    if (!node.isTextual()) {
      throw refused(key, key + " is not a text", "Put it in quotes");
    }
    return node.asText();
  }

  /** A field that is a number in mm or degrees. */
  public double number(String key) {
    return number(field(key), key);
  }

  private double number(JsonNode node, String key) {
    if (!node.isNumber() || !(Math.abs(node.asDouble()) <= MAX)) {
      throw refused(
          key, key + " is not a number of mm or degrees", "Write it without unit and quotes");
    }
    return node.asDouble();
  }

  /** A field that is a whole number, from -{@code max} to {@code max}. */
  public long whole(String key, long max) {
    JsonNode node = field(key);
    if (!node.isIntegralNumber() || !node.canConvertToLong() || Math.abs(node.asLong()) > max) {
      throw refused(key, key + " is not a whole number", "Write one of at most " + max);
    }
    return node.asLong();
  }

  /** A field that is true or false. */
  public boolean flag(String key) {
    JsonNode node = field(key);
    if (!node.isBoolean()) {
      throw refused(key, key + " is neither true nor false", "Write one of the two");
    }
    return node.asBoolean();
  }

  /** The one of the known values whose word the field holds. */
  public <T> T word(String key, T[] known, Function<T, String> words) {
    return word(field(key), key, known, words);
  }

  private <T> T word(JsonNode node, String key, T[] known, Function<T, String> words) {
    return Arrays.stream(known)
        .filter(k -> words.apply(k).equals(node.asText()))
        .findFirst()
        .orElseThrow(
            () ->
                refused(
                    key,
                    key + " cannot be '" + Names.shown(node.asText()) + "'",
                    "Use " + String.join(", ", Arrays.stream(known).map(words).toList())));
  }

  /** A field that is a list of such words. */
  public <T> List<T> words(String key, T[] known, Function<T, String> words) {
    List<T> list = new ArrayList<>();
    array(key).forEach(node -> list.add(word(node, key, known, words)));
    return list;
  }

  /** A field that is a list of points, mm. */
  public List<Point> points(String key) {
    List<Point> points = new ArrayList<>();
    for (JsonNode node : array(key)) {
      if (node.size() != 2) {
        throw refused(key, "a point in " + key + " is not [x, y]", "Write two numbers");
      }
      points.add(new Point(number(node.get(0), key), number(node.get(1), key)));
    }
    return points;
  }

  public Outline outline(String key) {
    return Outline.around(points(key))
        .orElseThrow(
            () ->
                refused(
                    key,
                    key + " encloses nothing",
                    "Give it three points or more, each as [x, y]"));
  }

  private JsonNode array(String key) {
    JsonNode node = field(key);
    if (!node.isArray()) {
      throw refused(key, key + " is not a list", "Put it in brackets");
    }
    return node;
  }

  /** The fields of an object in a field. */
  public Fields group(String key) {
    field(key);
    return new Fields(spot.get(key));
  }

  /** What is made of each object in a list; of those that cannot be made, the problem is kept. */
  public <T> List<T> list(String key, Function<Fields, T> maker) {
    array(key);
    return spot.get(key).items().stream()
        .flatMap(item -> item.attempt(() -> maker.apply(new Fields(item))).stream())
        .toList();
  }
}
