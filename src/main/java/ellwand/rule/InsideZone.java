package ellwand.rule;

import ellwand.cloth.Zone;
import ellwand.geometry.Box;
import ellwand.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/** Copies lie on their own part of the cloth. */
final class InsideZone {

  /** Amount: how far the copy juts out of its zone, mm. */
  static final Rule RULE =
      new Rule(
          "zone",
          true,
          Rule.Counted.MM,
          "Every piece lies inside its zone of the cloth",
          InsideZone::findings);

  private InsideZone() {}

  private static List<Finding> findings(Rule rule, Inspection of) {
    List<Finding> findings = new ArrayList<>();
    for (Placed p : of.placed()) {
      if (p.zone().isPresent() && p.region().isPresent()) {
        add(findings, rule, p, p.zone().get());
      }
    }
    return findings;
  }

  private static void add(List<Finding> findings, Rule rule, Placed p, Zone zone) {
    Box in = zone.box();
    Box is = p.box();
    Over over =
        new Over(
                in.minX() - is.minX(),
                zone.foldEdges().contains(Zone.Side.LOW_X) ? "the fold edge of" : "the start of",
                new Point(is.minX(), is.centre().y()))
            .or(is.maxX() - in.maxX(), "the end of", new Point(is.maxX(), is.centre().y()))
            .or(in.minY() - is.minY(), near(zone, Zone.Side.LOW_Y), at(is, is.minY()))
            .or(is.maxY() - in.maxY(), near(zone, Zone.Side.HIGH_Y), at(is, is.maxY()));
    if (over.mm > Rule.ROUNDING_MM) {
      findings.add(
          p.finding(
              rule,
              over.place,
              over.mm,
              unit ->
                  Say.capital(p.name())
                      + " juts out over "
                      + over.border
                      + " zone "
                      + zone.id()
                      + " by "
                      + Say.small(over.mm, unit)
                      + " "
                      + Say.near(over.place, unit)
                      + "."));
    }
  }

  private static String near(Zone zone, Zone.Side side) {
    return zone.foldEdges().contains(side) ? "the fold edge of" : "the edge of";
  }

  private static Point at(Box box, double y) {
    return new Point(box.centre().x(), y);
  }

  private record Over(double mm, String border, Point place) {

    Over or(double otherMm, String otherBorder, Point otherPlace) {
      return otherMm > mm ? new Over(otherMm, otherBorder, otherPlace) : this;
    }
  }
}
