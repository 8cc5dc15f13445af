package ellwand.file.source;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import ellwand.units.Length;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * An entry of a job, which knows where it was written and passes problems on with their place.
 *
 * @param node null if the entry is not there
 */
public record Spot(Sheet sheet, JsonPointer at, JsonNode node, List<Problem> problems) {

  /** Lengths above 0 but below this are slips of the pen, mm: cloth is not cut so finely. */
  private static final double MIN_MM = 0.1;

  /** Lengths beyond this are slips of the pen, mm: 100 m. */
  private static final double MAX_MM = 100_000;

  /** The whole job; problems found anywhere in it go to the list. */
  public static Spot root(Sheet sheet, List<Problem> problems) {
    return new Spot(sheet, JsonPointer.empty(), sheet.root(), problems);
  }

  /** Whether anything is written here. */
  public boolean present() {
    return node != null && !node.isNull();
  }

  /** The entry under a key, there or not. */
  public Spot get(String key) {
    return new Spot(sheet, at.appendProperty(key), node == null ? null : node.get(key), problems);
  }

  /** The entries of a list. */
  public List<Spot> items() {
    List<Spot> items = new ArrayList<>();
    for (int i = 0; node != null && i < node.size(); i++) {
      items.add(new Spot(sheet, at.appendIndex(i), node.get(i), problems));
    }
    return items;
  }

  /** The entries of a mapping by key, in the order in which they are written. */
  public Map<String, Spot> entries() {
    Map<String, Spot> entries = new LinkedHashMap<>();
    if (present()) {
      node.fieldNames().forEachRemaining(key -> entries.put(key, get(key)));
    }
    return entries;
  }

  /** A text, or a number as it would be written. */
  public Optional<String> text() {
    return present() ? Optional.of(node.asText()) : Optional.empty();
  }

  /** Whether {@code true} is written here. */
  public boolean isTrue() {
    return present() && node.asBoolean();
  }

  /** A length in mm. */
  public Optional<Double> length() {
    return present() ? attempt(this::mm) : Optional.empty();
  }

  /** A length in mm that must be 0 or more. */
  public Optional<Double> lengthFrom0() {
    return length()
        .filter(mm -> holds(mm >= 0, key() + " must not be less than 0", "Write 0 or more"));
  }

  /** A length in mm that must be more than 0. */
  public Optional<Double> lengthAbove0() {
    return length()
        .filter(mm -> holds(mm > 0, key() + " must be more than 0", "Write a length above 0"))
        .filter(
            mm ->
                holds(mm >= MIN_MM, key() + " is less than 0.1 mm", "See that the unit is right"));
  }

  private double mm() {
    Unit bare = sheet.units().get(at.getMatchingProperty());
    double mm =
        node.isNumber() ? node.asDouble() * bare.mm() : Length.parse(node.asText(), bare).mm();
    if (!(Math.abs(mm) <= MAX_MM)) {
      throw InputException.of(
          "'" + node.asText() + "' is more than 100 m", "See that the unit is right");
    }
    return mm;
  }

  /** Reports a problem here unless the condition holds, and returns the condition. */
  public boolean holds(boolean condition, String otherwise, String remedy) {
    if (!condition) {
      report(Problem.of(otherwise, remedy));
    }
    return condition;
  }

  /** As written, {@code width:}. */
  private String key() {
    return at.last().getMatchingProperty() + ":";
  }

  /** What is made, or nothing and a problem here if it cannot be. */
  public <T> Optional<T> attempt(Supplier<T> maker) {
    try {
      return Optional.of(maker.get());
    } catch (InputException e) {
      e.problems().forEach(this::report);
    }
    return Optional.empty();
  }

  /** Adds a problem of this entry, or of one inside it that has told its place. */
  public void report(Problem problem) {
    problems.add(problem.file().isPresent() ? problem : named(problem));
  }

  /** The problem with the place of this entry. */
  Problem named(Problem problem) {
    return JobWords.named(problem, sheet, at);
  }
}
