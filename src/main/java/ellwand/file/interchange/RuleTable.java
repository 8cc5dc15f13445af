package ellwand.file.interchange;

import ellwand.file.drawn.SafeName;
import ellwand.geometry.Point;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import ellwand.units.Unit;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A grade rule table, which goes with a pattern of ASTM D6673 that is drawn in its sample size: for
 * each rule, by its number, how far a point lies in each size from where it is drawn.
 *
 * <p>The form of the file is from memory: {@code Units}, {@code Grade Rule Table}, {@code Number of
 * Sizes}, {@code Size List} and {@code Sample Size}, then {@code Rule: DELTA n} with a pair of
 * shifts for each size. What is written counts from the sample size. What is read may also count
 * from each size to the next, which shows by where the zeros stand.
 *
 * @param name by which patterns speak of it
 * @param sizes in order
 * @param base the sample size, one of them
 * @param shiftsMm by number of the rule and size; that of the sample size is 0
 */
record RuleTable(
    String name,
    Unit unit,
    List<String> sizes,
    String base,
    Map<Integer, Map<String, Point>> shiftsMm) {

  private static final int MOST_BYTES = 5_000_000;
  private static final Pattern ENTRY =
      Pattern.compile("\\s*([A-Za-z][A-Za-z ]*?)\\s*:\\s*(.*?)\\s*");
  private static final Pattern RULE = Pattern.compile("(?i)delta\\s+(\\d{1,6})");
  private static final Pattern NUMBER =
      Pattern.compile("[-+]?(\\d+\\.?\\d*|\\.\\d+)([eE][-+]?\\d+)?");

  /** Whether a file is one, by its beginning. */
  static boolean looksLike(byte[] bytes) {
    String head =
        new String(bytes, 0, Math.min(bytes.length, 4000), StandardCharsets.ISO_8859_1)
            .toLowerCase(Locale.ROOT);
    return head.contains("grade rule table") && head.contains("size list:");
  }

  /** The bytes of the file. */
  byte[] bytes() {
    double mm = unit == Unit.INCH ? unit.mm() : 1;
    StringBuilder text = new StringBuilder();
    text.append("Units: ").append(unit == Unit.INCH ? "ENGLISH" : "METRIC").append("\r\n");
    text.append("Grade Rule Table: ").append(name).append("\r\n");
    text.append("Number of Sizes: ").append(sizes.size()).append("\r\n");
    String between = sizes.stream().anyMatch(s -> s.contains(" ")) ? ", " : " ";
    text.append("Size List: ").append(String.join(between, sizes)).append("\r\n");
    text.append("Sample Size: ").append(base).append("\r\n");
    shiftsMm.forEach(
        (number, bySize) -> {
          text.append("Rule: DELTA ").append(number).append("\r\n");
          for (String size : sizes) {
            Point shift = bySize.getOrDefault(size, new Point(0, 0));
            text.append(
                String.format(Locale.ROOT, "%.6f, %.6f\r\n", shift.x() / mm, shift.y() / mm));
          }
        });
    return text.append("End\r\n").toString().getBytes(StandardCharsets.US_ASCII);
  }

  /**
   * Reads one.
   *
   * @param said takes how its shifts were understood where it does not show
   * @throws InputException if it is not whole
   */
  static RuleTable read(String file, byte[] bytes, List<String> said) {
    if (bytes.length > MOST_BYTES) {
      throw refused(file, 0, "a grade rule table of more than 5 MB is none");
    }
    Map<String, String> head = new LinkedHashMap<>();
    Map<Integer, List<Double>> numbers = new LinkedHashMap<>();
    List<Double> open = null;
    int line = 0;
    for (String text : new String(bytes, StandardCharsets.ISO_8859_1).split("\\R")) {
      line++;
      Matcher entry = ENTRY.matcher(text);
      if (text.isBlank() || text.strip().equalsIgnoreCase("end")) {
        continue;
      }
      if (entry.matches() && entry.group(1).equalsIgnoreCase("rule")) {
        Matcher rule = RULE.matcher(entry.group(2));
        if (!rule.matches()) {
          throw refused(
              file,
              line,
              "'%s' is no rule: DELTA and a number is expected".formatted(shown(entry.group(2))));
        }
        open = new ArrayList<>();
        numbers.put(Integer.parseInt(rule.group(1)), open);
      } else if (entry.matches()) {
        head.putIfAbsent(entry.group(1).toLowerCase(Locale.ROOT), entry.group(2));
      } else if (open != null) {
        for (String word : text.strip().split("[,\\s]+")) {
          if (!NUMBER.matcher(word).matches()) {
            throw refused(
                file, line, "a shift is expected where '%s' stands".formatted(shown(word)));
          }
          open.add(Double.parseDouble(word));
        }
      }
    }
    return table(file, head, numbers, said);
  }

  private static RuleTable table(
      String file,
      Map<String, String> head,
      Map<Integer, List<Double>> numbers,
      List<String> said) {
    String list = head.getOrDefault("size list", "");
    List<String> sizes =
        Arrays.stream(list.split(list.contains(",") ? "\\s*,\\s*" : "\\s+"))
            .filter(s -> !s.isEmpty())
            .map(SafeName::of)
            .distinct()
            .toList();
    String sample = head.getOrDefault("sample size", "");
    String base = sample.isEmpty() ? "" : SafeName.of(sample);
    if (!sizes.contains(base) || sizes.size() < 2) {
      throw refused(
          file,
          0,
          "its sizes are '%s', and its sample size is '%s'".formatted(shown(list), shown(base)));
    }
    Unit unit =
        head.getOrDefault("units", "").toUpperCase(Locale.ROOT).startsWith("ENGLISH")
            ? Unit.INCH
            : Unit.MM;
    Map<Integer, List<Point>> rows = new LinkedHashMap<>();
    numbers.forEach(
        (rule, row) -> {
          if (row.size() != 2 * sizes.size()) {
            throw refused(
                file,
                0,
                "rule %d has %d numbers, and two for each of %d sizes are %d"
                    .formatted(rule, row.size(), sizes.size(), 2 * sizes.size()));
          }
          List<Point> shifts = new ArrayList<>();
          for (int i = 0; i < row.size(); i += 2) {
            shifts.add(new Point(row.get(i), row.get(i + 1)).times(unit.mm()));
          }
          rows.put(rule, shifts);
        });
    int at = sizes.indexOf(base);
    boolean fromBase = rows.values().stream().allMatch(r -> r.get(at).norm() == 0);
    boolean fromFirst = rows.values().stream().allMatch(r -> r.get(0).norm() == 0);
    if (!fromBase && !fromFirst) {
      throw refused(
          file,
          0,
          "its shifts count neither from its sample size nor from size to size, since neither the"
              + " sample nor the first size has only zeros");
    }
    if (fromBase && fromFirst) {
      said.add(
          "%s: its shifts are taken to count from size %s; if they are too large, they count from each size to the next."
              .formatted(file, base));
    }
    Map<Integer, Map<String, Point>> shifts = new LinkedHashMap<>();
    rows.forEach((rule, row) -> shifts.put(rule, bySize(sizes, fromBase ? row : summed(row, at))));
    return new RuleTable(head.getOrDefault("grade rule table", ""), unit, sizes, base, shifts);
  }

  /** Shifts from size to size, as shifts from the sample size. */
  private static List<Point> summed(List<Point> steps, int base) {
    List<Point> sums = new ArrayList<>();
    Point sum = new Point(0, 0);
    for (Point step : steps) {
      sum = sum.plus(step);
      sums.add(sum);
    }
    Point drawn = sums.get(base);
    sums.replaceAll(p -> p.minus(drawn));
    return sums;
  }

  private static Map<String, Point> bySize(List<String> sizes, List<Point> row) {
    Map<String, Point> bySize = new LinkedHashMap<>();
    for (int i = 0; i < sizes.size(); i++) {
      bySize.put(sizes.get(i), row.get(i));
    }
    return bySize;
  }

  /** The shifts of a rule, if there is one of that number. */
  Optional<Map<String, Point>> rule(int number) {
    return Optional.ofNullable(shiftsMm.get(number));
  }

  private static String shown(String text) {
    return text.length() > 40 ? text.substring(0, 40) + "..." : text;
  }

  private static InputException refused(String file, int line, String what) {
    return new InputException(
        Problem.of(what, "Write the grade rule table again where the pattern came from")
            .at(file, line));
  }
}
