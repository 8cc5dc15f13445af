package ellwand.file.svg;

import ellwand.file.drawn.Label;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Finds what an element is called: by its title, its label, or an id that a person gave it. */
final class Labels {

  /** Ids that programs give. */
  private static final Pattern GIVEN_BY_PROGRAM =
      Pattern.compile(
          "(?i)_*(svg|g|group|layer|path|rect|rectangle|circle|ellipse|polygon|polyline|line|shape"
              + "|text|tspan|textpath|use|image|object|compound path|clip|curve|svgid|xmlid)?"
              + "[-_ ]*(\\d[-_ \\d]*)?(copy)?[-_ \\d]*");

  /** How some programs write signs that an id may not have. */
  private static final Pattern ESCAPED = Pattern.compile("_x([0-9A-Fa-f]{2,4})_");

  private Labels() {}

  static Label of(SvgElement element, Label inside) {
    Optional<String> title = element.child("title").map(SvgElement::words);
    Optional<String> given =
        Stream.of(
                element.get("label"),
                element.get("aria-label"),
                element.get("data-name"),
                element.get("id").map(Labels::plain))
            .flatMap(Optional::stream)
            .map(String::strip)
            .filter(n -> !GIVEN_BY_PROGRAM.matcher(n).matches())
            .findFirst();
    List<String> kinds =
        Arrays.stream(element.get("class", "").split("\\s+"))
            .filter(k -> !k.isEmpty())
            .map(k -> k.toLowerCase(Locale.ROOT))
            .toList();
    return new Label(
        title.filter(t -> !t.isEmpty()).or(() -> given),
        kinds,
        element.child("desc").map(SvgElement::words).filter(w -> !w.isEmpty()),
        Optional.of(inside),
        element.line);
  }

  /** Of what a use shows: the name of the use goes before that of the model it was copied from. */
  static Label used(SvgElement model, Label use) {
    Label own = of(model, use);
    return own.saysWhat() ? own : use.name().map(own::named).orElse(own);
  }

  private static String plain(String id) {
    String signs =
        ESCAPED
            .matcher(id)
            .replaceAll(
                m ->
                    Matcher.quoteReplacement(
                        String.valueOf((char) Integer.parseInt(m.group(1), 16))));
    return signs.replaceAll("[_]+", " ").strip();
  }
}
