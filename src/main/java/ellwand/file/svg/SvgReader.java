package ellwand.file.svg;

import ellwand.file.drawn.Affine;
import ellwand.file.drawn.Drawing;
import ellwand.file.drawn.DrawnLine;
import ellwand.file.drawn.DrawnText;
import ellwand.file.drawn.Label;
import ellwand.file.drawn.LineBuilder;
import ellwand.geometry.Point;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import ellwand.units.Unit;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Supplier;

/** Reads what an SVG file draws: its lines at true scale, and what they are called. */
public final class SvgReader {

  /** What CSS counts as an inch of px. */
  private static final double CSS_DOTS = 96;

  private static final Scale CSS = new Scale(CSS_DOTS);

  /** What draws nothing by itself. */
  private static final Set<String> NOT_DRAWN =
      Set.of(
          "defs",
          "symbol",
          "clipPath",
          "mask",
          "pattern",
          "marker",
          "linearGradient",
          "radialGradient",
          "filter",
          "metadata",
          "title",
          "desc",
          "style",
          "script",
          "namedview");

  private static final List<String> SIZED =
      List.of("x", "y", "width", "height", "cx", "cy", "r", "rx", "ry", "x1", "y1", "x2", "y2");

  /** Groups and shapes drawn in all, each time they are used. */
  private static final int MOST_DRAWN = 100_000;

  private static final int DEEPEST_USE = 100;
  private static final String HIDDEN = "hidden layer(s) or line(s)";

  private final String file;
  private final SvgElement root;
  private final StyleSheet sheet;
  private final Map<String, SvgElement> byId = new HashMap<>();
  private final Set<SvgElement> using = new HashSet<>();
  private final List<DrawnLine> lines = new ArrayList<>();
  private final List<DrawnText> texts = new ArrayList<>();
  private final Map<String, Integer> leftOut = new LinkedHashMap<>();
  private int drawn;
  private int points;

  private SvgReader(String file, SvgElement root) {
    this.file = file;
    this.root = root;
    this.sheet = StyleSheet.applied(root);
  }

  /** Whether a file looks like XML with an svg element, or a part of one. */
  public static boolean looksLike(byte[] bytes) {
    String head = new String(bytes, 0, Math.min(bytes.length, 4000), StandardCharsets.ISO_8859_1);
    // In UTF-16 every other byte is 0.
    String plain = head.replace("\0", "");
    return plain.contains("<svg") || plain.contains(":svg") || plain.contains("<?xml");
  }

  /**
   * Reads a drawing.
   *
   * @param dotsPerInch of a drawing that does not say how large it is on paper
   * @throws InputException if it cannot be read safely and wholly
   */
  public static Drawing read(String file, byte[] bytes, OptionalDouble dotsPerInch) {
    SvgElement root = SvgXml.read(file, bytes);
    if (!root.name.equals("svg")) {
      throw SvgXml.refused(
          file, root.line, "this is XML, but no SVG drawing", "Name an SVG, DXF or PDF file");
    }
    return new SvgReader(file, root).drawing(dotsPerInch);
  }

  private Drawing drawing(OptionalDouble dotsPerInch) {
    index(root);
    Scale scale = new Scale(dotsPerInch.orElse(CSS_DOTS));
    Affine toPage = at(root, () -> Affine.scaled(1, -1).after(scale.toMm(root)));
    Label whole = new Label(Optional.empty(), List.of(), Optional.empty(), Optional.empty(), 0);
    root.children.forEach(child -> draw(child, toPage, whole, Paint.INITIAL.of(root)));
    return new Drawing(
        file,
        root.child("title").map(SvgElement::words).filter(t -> !t.isEmpty()),
        root.get("width").filter(w -> w.endsWith("in")).isPresent() ? Unit.INCH : Unit.CM,
        90,
        lines,
        texts,
        root.child("desc").map(SvgElement::words).filter(w -> w.startsWith("ellwand:")),
        said(scale, dotsPerInch));
  }

  private List<String> said(Scale scale, OptionalDouble dotsPerInch) {
    List<String> said = new ArrayList<>();
    boolean physical =
        root.get("viewBox").isPresent()
            && (Scale.isPhysical(root.get("width")) || Scale.isPhysical(root.get("height")));
    if (!physical && dotsPerInch.isEmpty()) {
      said.add(
          "The drawing does not say how large it is on paper: 96 dots are taken for an inch, as CSS"
              + " has it. Measure a piece, and say how many there are (--dpi) if it came out too"
              + " small or too large.");
    }
    if (physical && dotsPerInch.isPresent()) {
      said.add(
          "The drawing says itself how large it is on paper, so that dots to an inch (--dpi) do not"
              + " count.");
    }
    if (sheet.notRead() > 0) {
      said.add(
          sheet.notRead()
              + " rule(s) of its style sheets are of a kind that is not read; what they hide is"
              + " drawn.");
    }
    leftOut.forEach((what, count) -> said.add(count + " " + what + " left out."));
    return said;
  }

  private void index(SvgElement element) {
    element.get("id").ifPresent(id -> byId.putIfAbsent(id, element));
    element.children.forEach(this::index);
  }

  private <T> T at(SvgElement element, Supplier<T> maker) {
    try {
      return maker.get();
    } catch (InputException e) {
      String id = element.get("id").map(i -> " " + i).orElse("");
      throw new InputException(
          e.problems().stream()
              .map(
                  p ->
                      p.file().isPresent()
                          ? p
                          : Problem.of(element.name + id + ": " + p.what(), p.remedy())
                              .at(file, element.line))
              .toList());
    }
  }

  private void draw(SvgElement element, Affine frame, Label inside, Paint around) {
    draw(element, Labels.of(element, inside), frame, around);
  }

  private void draw(SvgElement element, Label label, Affine frame, Paint around) {
    if (NOT_DRAWN.contains(element.name)) {
      return;
    }
    if (Paint.leavesOut(element)) {
      leftOut.merge(HIDDEN, 1, Integer::sum);
      return;
    }
    if (++drawn > MOST_DRAWN) {
      throw SvgXml.refused(
          file,
          element.line,
          "it draws more than 100,000 things, counting what is used several times",
          "Leave out of the drawing what is no pattern");
    }
    Affine own = at(element, () -> frame.after(Transforms.of(element)));
    Paint paint = around.of(element);
    switch (element.name) {
      case "g", "a", "switch" -> element.children.forEach(c -> draw(c, own, label, paint));
      case "svg" -> nested(element, element, own, label, paint);
      case "use" -> use(element, own, label, paint);
      case "text" -> text(element, own, label);
      case "image" -> leftOut.merge("picture(s), which hold no lines,", 1, Integer::sum);
      default -> {
        if (seen(label, paint)) {
          shape(element, own, label);
        } else {
          leftOut.merge(HIDDEN, 1, Integer::sum);
        }
      }
    }
  }

  /** What is neither filled nor stroked is drawn only if it says what it is. */
  private boolean seen(Label label, Paint paint) {
    return paint.visible()
        && (paint.filled() || paint.stroked() || label.saysWhat() || sheet.notRead() > 0);
  }

  /**
   * A drawing in the drawing, or what a symbol draws.
   *
   * @param sized what says its width and height: the drawing itself, or the use of the symbol
   */
  private void nested(
      SvgElement element, SvgElement sized, Affine frame, Label label, Paint paint) {
    Affine placed =
        at(
            element,
            () -> {
              Affine shifted =
                  frame.after(Affine.shifted(number(element, "x"), number(element, "y")));
              List<Double> box = Numbers.list(element.get("viewBox", ""));
              if (box.size() != 4 || sized.get("width").isEmpty()) {
                return shifted;
              }
              double factor = number(sized, "width") / box.get(2);
              double other =
                  sized.get("height").isEmpty() ? factor : number(sized, "height") / box.get(3);
              double least = Math.min(factor, other);
              return shifted
                  .after(Affine.scaled(least, least))
                  .after(Affine.shifted(-box.get(0), -box.get(1)));
            });
    element.children.forEach(c -> draw(c, placed, label, paint));
  }

  private void use(SvgElement element, Affine frame, Label label, Paint paint) {
    String href = element.get("href", "");
    SvgElement target = href.startsWith("#") ? byId.get(href.substring(1)) : null;
    if (target == null) {
      leftOut.merge(
          href.startsWith("#") ? "use(s) of what is not there" : "use(s) of another file,",
          1,
          Integer::sum);
      return;
    }
    if (!using.add(target)) {
      throw SvgXml.refused(
          file,
          element.line,
          "what it uses ends up using itself (" + href + ")",
          "Take the use element out of what it uses");
    }
    if (using.size() > DEEPEST_USE) {
      throw SvgXml.refused(
          file,
          element.line,
          "more than 100 uses lie in one another",
          "Put copies of the lines in their place");
    }
    Affine shifted =
        at(element, () -> frame.after(Affine.shifted(number(element, "x"), number(element, "y"))));
    Label called = Labels.used(target, label);
    if (target.name.equals("symbol")) {
      nested(target, element, shifted, called, paint.of(target));
    } else {
      draw(target, called, shifted, paint);
    }
    using.remove(target);
  }

  private void text(SvgElement element, Affine frame, Label label) {
    String words = element.words().replaceAll("\\s+", " ").strip();
    if (words.isEmpty()) {
      return;
    }
    SvgElement first =
        element.get("x").isPresent() ? element : element.child("tspan").orElse(element);
    Point at = at(element, () -> frame.apply(new Point(firstOf(first, "x"), firstOf(first, "y"))));
    texts.add(new DrawnText(words, at, label));
  }

  /** Words may give a place for each of their letters. */
  private static double firstOf(SvgElement text, String attribute) {
    return text.get(attribute)
        .filter(t -> !t.endsWith("%"))
        .map(t -> new Numbers(t).number())
        .orElse(0.0);
  }

  private void shape(SvgElement element, Affine frame, Label label) {
    if (SIZED.stream().anyMatch(a -> element.get(a).filter(v -> v.endsWith("%")).isPresent())) {
      leftOut.merge("shape(s) sized in % of the page, such as backgrounds,", 1, Integer::sum);
      return;
    }
    int before = lines.size();
    LineBuilder pen = new LineBuilder(lines, frame, label);
    at(
        element,
        () -> {
          Shapes.draw(element, pen);
          return null;
        });
    for (DrawnLine line : lines.subList(before, lines.size())) {
      points += line.path().segments().size();
    }
    if (points > Drawing.MOST_POINTS) {
      throw SvgXml.refused(
          file,
          element.line,
          "it has more than 200,000 points",
          "Simplify the drawing, or leave out what is no pattern");
    }
  }

  /** A length in user units: of these an inch has 96, whatever their size on paper (CSS). */
  static double number(SvgElement element, String attribute) {
    return element
        .get(attribute)
        .map(
            text ->
                text.matches(".*[a-zA-Z]$")
                    ? CSS.mm(Optional.of(text)).orElseThrow(() -> noLength(attribute, text))
                        / CSS.mm(Optional.of("1")).orElseThrow()
                    : new Numbers(text).only())
        .orElse(0.0);
  }

  private static InputException noLength(String attribute, String text) {
    return InputException.of(
        attribute + " '" + text + "' is no length that is read", "Write it as a number or in mm");
  }
}
