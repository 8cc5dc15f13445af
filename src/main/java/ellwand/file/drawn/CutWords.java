package ellwand.file.drawn;

import ellwand.pattern.Cut;
import ellwand.problem.InputException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Finds in what is written on a piece how often it is cut, and what it is called. */
final class CutWords {

  /** Cloth that pieces are cut from where nothing is said. */
  static final String CLOTH = "main";

  private static final String NUMBER = "(\\d{1,3}|one|two|three|four|six|eight)";

  private static final String CLOTHS =
      "(main|self|fabric|cloth|lining|interlining|interfacing|contrast|wadding)";

  private static final Pattern CUT =
      Pattern.compile(
          "(?:\\b"
              + CLOTHS
              + "\\s*:\\s*)?\\bcut\\s*:?\\s*"
              + NUMBER
              + "?\\s*x?\\s*(pairs?|(?:once )?on\\s+(?:the\\s+)?fold)?"
              + "(?:\\s*(?:x\\s*)?(?:from|of|in|out of)?\\s*(?:the\\s+)?"
              + CLOTHS
              + ")?");

  /** What people call the cloth that a garment is chiefly made of. */
  private static final Set<String> MAIN = Set.of("main", "self", "fabric", "cloth");

  private static final Pattern SPOKEN =
      Pattern.compile(
          "(?i).*\\b(cut|grain|fold|allowance|size|cm|mm|inch|inches|print|page|scale|test)\\b.*");

  private static final Pattern NAME = Pattern.compile("\\p{L}[\\p{L}\\p{M}\\p{N} '-]{1,39}");

  private CutWords() {}

  /** Every cut that the words ask for; the first for each cloth. */
  static List<Cut> cuts(List<String> words) {
    List<Cut> cuts = new ArrayList<>();
    for (String text : words) {
      Matcher matcher = CUT.matcher(text.toLowerCase(Locale.ROOT).replaceAll("[\\s_]+", " "));
      while (matcher.find()) {
        cut(matcher)
            .filter(cut -> cuts.stream().noneMatch(c -> c.cloth().equals(cut.cloth())))
            .ifPresent(cuts::add);
      }
    }
    return cuts;
  }

  private static Optional<Cut> cut(Matcher matcher) {
    String number = matcher.group(2);
    String how = matcher.group(3) == null ? "" : matcher.group(3);
    if (number == null && how.isEmpty()) {
      return Optional.empty();
    }
    String cloth =
        Stream.of(matcher.group(4), matcher.group(1))
            .filter(Objects::nonNull)
            .findFirst()
            .orElse(CLOTH);
    int count = number == null ? 1 : number(number);
    try {
      return Optional.of(
          new Cut(
              MAIN.contains(cloth) ? CLOTH : cloth,
              count,
              how.isEmpty()
                  ? Cut.How.WHOLE
                  : how.startsWith("pair") ? Cut.How.PAIR : Cut.How.FOLD));
    } catch (InputException e) {
      return Optional.empty();
    }
  }

  private static int number(String word) {
    return switch (word) {
      case "one" -> 1;
      case "two" -> 2;
      case "three" -> 3;
      case "four" -> 4;
      case "six" -> 6;
      case "eight" -> 8;
      default -> Integer.parseInt(word);
    };
  }

  /** A name without the instruction that stands in it, unless it is nothing else. */
  static String withoutCut(String name) {
    String plain =
        Pattern.compile(CUT.pattern(), Pattern.CASE_INSENSITIVE)
            .matcher(name)
            .replaceAll(" ")
            .replaceAll("^[\\s,;:/-]+|[\\s,;:/-]+$", "");
    return plain.isEmpty() ? name : plain;
  }

  /** A text that is a name and no instruction. */
  static Optional<String> name(String text) {
    String plain = text.strip().replaceAll("\\s+", " ");
    return NAME.matcher(plain).matches() && !SPOKEN.matcher(plain).matches()
        ? Optional.of(plain)
        : Optional.empty();
  }
}
