package ellwand.rule;

import ellwand.cloth.Cloth;
import ellwand.cloth.Direction;
import ellwand.lay.Heading;
import ellwand.lay.Lay;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Pieces head the way the cloth's direction asks. */
final class Headings {

  /** Amount: pieces that head the other way than the rest, or than they claim. */
  static final Rule RULE =
      new Rule(
          "heading",
          true,
          Rule.Counted.PIECES,
          "Pieces head one way where the cloth asks it",
          Headings::findings);

  private Headings() {}

  private static List<Finding> findings(Rule rule, Inspection of) {
    List<Finding> findings = new ArrayList<>();
    for (Placed p : of.placed()) {
      if (p.copy().heading() != real(p)) {
        findings.add(
            p.finding(
                rule,
                1,
                unit ->
                    Say.capital(p.name())
                        + " is said to head "
                        + word(p.copy().heading())
                        + " but heads "
                        + word(real(p))
                        + " "
                        + Say.near(p.box().centre(), unit)
                        + "."));
      }
    }
    of.placed().stream()
        .filter(p -> p.twinTurn(of.marker().lay()).isPresent())
        .forEach(p -> twin(findings, rule, p, of.marker().lay()));
    Cloth cloth = of.marker().lay().cloth();
    String reason =
        cloth.direction() == Direction.ONE_WAY
            ? "this cloth is cut one way"
            : "this piece is cut one way";
    mixed(findings, rule, asking(Direction.ONE_WAY, of), reason);
    Map<String, List<Placed>> garments = new LinkedHashMap<>();
    for (Placed p : asking(Direction.ONE_WAY_PER_GARMENT, of)) {
      for (int garment : p.copy().garments()) {
        garments.computeIfAbsent(garment + " " + p.copy().size(), g -> new ArrayList<>()).add(p);
      }
    }
    garments
        .values()
        .forEach(g -> mixed(findings, rule, g, "this cloth is cut one way within each garment"));
    return findings;
  }

  /** Where a heading counts, what one placement cuts from two plies has the same on both. */
  private static void twin(List<Finding> findings, Rule rule, Placed p, Lay lay) {
    Heading twin = Heading.ofTurn(p.twinTurn(lay).orElseThrow(), false);
    Direction direction = p.cut().map(c -> Lay.direction(lay.cloth(), c)).orElse(Direction.ANY_WAY);
    if (twin != real(p) && direction != Direction.ANY_WAY) {
      findings.add(
          p.finding(
              rule,
              1,
              unit ->
                  "Of the two of "
                      + p.name()
                      + " "
                      + Say.near(p.box().centre(), unit)
                      + " one heads up and one down, since the plies mirror each other."));
    }
  }

  private static List<Placed> asking(Direction direction, Inspection of) {
    Cloth cloth = of.marker().lay().cloth();
    return of.placed().stream()
        .filter(
            p -> direction == p.cut().map(c -> Lay.direction(cloth, c)).orElse(cloth.direction()))
        .toList();
  }

  /** Those that head the other way than most: up if there are as many of each. */
  private static void mixed(
      List<Finding> findings, Rule rule, List<Placed> together, String reason) {
    long down = together.stream().filter(p -> real(p) == Heading.DOWN).count();
    Heading most = 2 * down > together.size() ? Heading.DOWN : Heading.UP;
    for (Placed p : together) {
      if (real(p) != most) {
        findings.add(
            p.finding(
                rule,
                1,
                unit ->
                    Say.capital(p.name())
                        + " heads "
                        + word(real(p))
                        + " "
                        + Say.near(p.box().centre(), unit)
                        + ", the others "
                        + word(most)
                        + "; "
                        + reason
                        + "."));
      }
    }
  }

  private static Heading real(Placed p) {
    return Heading.ofTurn(p.copy().motion().turnDegrees(), p.copy().motion().flipped());
  }

  private static String word(Heading heading) {
    return heading.name().toLowerCase(Locale.ROOT);
  }
}
