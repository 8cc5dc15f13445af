package ellwand.file.alter;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import ellwand.file.source.Measures;
import ellwand.file.source.Spot;
import ellwand.pattern.alter.Manner;
import ellwand.pattern.alter.Reach;
import ellwand.problem.InputException;
import ellwand.units.Unit;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Details that several steps have. */
final class Details {

  private static final Pattern SHARE = Pattern.compile("(\\d{1,4})\\s*/\\s*(\\d{1,4})");

  private Details() {}

  /** A text that must be there. */
  static Optional<String> text(Spot step, String key, String example) {
    Spot spot = step.get(key);
    return step.holds(
            spot.present(), "the step has no " + key + ":", "Add it, for example " + example)
        ? spot.text()
        : Optional.empty();
  }

  /** A length that must be there, any sign. */
  static Optional<Double> length(Spot step, String key, String example) {
    return text(step, key, example).flatMap(t -> step.get(key).length());
  }

  /** A length that must be there, above 0. */
  static Optional<Double> lengthAbove0(Spot step, String key, String example) {
    return text(step, key, example).flatMap(t -> step.get(key).lengthAbove0());
  }

  /** {@code 2 cm} or {@code 1/2}. */
  static Optional<Reach> reach(Spot step, String key, String example) {
    return text(step, key, example)
        .flatMap(
            text ->
                SHARE.matcher(text.strip()).matches()
                    ? share(step.get(key)).map(s -> (Reach) s)
                    : step.get(key).length().map(Reach.Mm::new));
  }

  /** {@code 1/3}. */
  static Optional<Reach.Share> share(Spot spot) {
    return spot.text()
        .flatMap(
            text ->
                spot.attempt(
                    () -> {
                      Matcher matcher = SHARE.matcher(text.strip());
                      if (!matcher.matches() || Integer.parseInt(matcher.group(2)) == 0) {
                        throw InputException.of(
                            "'" + text + "' is no share of a length", "Write for example 1/3");
                      }
                      return new Reach.Share(
                          Integer.parseInt(matcher.group(1)), Integer.parseInt(matcher.group(2)));
                    }));
  }

  /** One text or a list of them. */
  static List<String> texts(Spot spot) {
    return spot.present() && spot.node().isArray()
        ? spot.items().stream().flatMap(i -> i.text().stream()).toList()
        : spot.text().stream().toList();
  }

  /** {@code square to shoulder}, {@code along shoulder}, {@code free}. */
  static Optional<Manner> manner(Spot spot) {
    return spot.text()
        .flatMap(
            text ->
                spot.attempt(
                    () -> {
                      for (Manner.How how : Manner.How.values()) {
                        String word = how.name().toLowerCase().replace('_', ' ') + " ";
                        if (how != Manner.How.FREE && text.startsWith(word)) {
                          return new Manner(
                              how, Optional.of(text.substring(word.length()).strip()));
                        }
                      }
                      if (text.equals("free")) {
                        return Manner.FREE;
                      }
                      throw InputException.of(
                          "'" + text + "' does not say how the line runs",
                          "Write for example square to shoulder, along shoulder, or free");
                    }));
  }

  static JsonNode written(Reach reach, Measures measures) {
    return reach instanceof Reach.Mm mm
        ? measures.number(mm.mm())
        : TextNode.valueOf(reach.words(Unit.CM));
  }

  /** One text as it is, several as a list. */
  static void put(ObjectNode into, String key, List<String> texts) {
    if (texts.size() == 1) {
      into.put(key, texts.get(0));
    } else {
      texts.forEach(into.putArray(key)::add);
    }
  }
}
