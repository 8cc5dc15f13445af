package ellwand.rule;

import ellwand.cloth.Band;
import ellwand.cloth.Cloth;
import ellwand.cloth.Fold;
import ellwand.cloth.LaidCloth;
import ellwand.cloth.Repeat;
import ellwand.cloth.Zone;
import ellwand.geometry.Box;
import ellwand.lay.Marker;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** The zones are what the cloth becomes when it is laid so. */
final class ZonesOfCloth {

  /** Amount: 1 for each fault. */
  static final Rule RULE =
      new Rule(
          "laid cloth",
          true,
          Rule.Counted.FAULTS,
          "The cloth lies as it can and as the job allows",
          ZonesOfCloth::findings);

  private ZonesOfCloth() {}

  private static List<Finding> findings(Rule rule, Inspection of) {
    Cloth cloth = of.marker().lay().cloth();
    List<Finding> findings = new ArrayList<>();
    if (!cloth.mayLie(of.marker().fold())) {
      findings.add(
          finding(
              rule,
              unit ->
                  "Cloth "
                      + cloth.name()
                      + " is not to be laid like this: "
                      + of.marker().fold().words()
                      + "."));
    }
    cloth
        .barred(of.marker().fold())
        .ifPresent(
            reason ->
                findings.add(
                    finding(
                        rule,
                        unit ->
                            "Cloth "
                                + cloth.name()
                                + " cannot lie like this: "
                                + reason.clause()
                                + ".")));
    List<Zone> zones = of.marker().zones();
    Optional<LaidCloth> like = LaidCloth.like(cloth, of.marker().fold(), zones);
    if (like.isEmpty()) {
      findings.add(finding(rule, unit -> unfoldable(of.marker(), unit)));
      return findings;
    }
    LaidCloth laid = like.get();
    Set<String> ids = new HashSet<>();
    for (Zone zone : zones) {
      if (!ids.add(zone.id())) {
        findings.add(finding(rule, unit -> "Two zones are called " + zone.id() + "."));
      }
      if (stretch(zone, laid).isEmpty()) {
        findings.add(
            finding(
                rule,
                unit ->
                    "Cloth "
                        + cloth.name()
                        + ", "
                        + of.marker().fold().words()
                        + ", has no zone like "
                        + zone.id()
                        + ": "
                        + Say.length(zone.box().width(), unit)
                        + " wide, "
                        + Say.number(zone.plies(), "ply", "plies")
                        + "."));
      }
      if (zone.box().minX() < -Rule.ROUNDING_MM) {
        findings.add(finding(rule, unit -> "Zone " + zone.id() + " begins before the cut end."));
      }
      double beyond = of.marker().acrossMm() + zone.box().maxX() - cloth.lengthMm();
      if (beyond > Rule.ROUNDING_MM) {
        findings.add(
            finding(
                rule,
                unit ->
                    "Zone "
                        + zone.id()
                        + " ends "
                        + Say.small(beyond, unit)
                        + " beyond the end of the cloth."));
      }
    }
    double off = offBars(of.marker());
    if (off > Rule.ROUNDING_MM) {
      findings.add(
          finding(
              rule,
              unit ->
                  "Cloth "
                      + cloth.name()
                      + " is folded or cut across "
                      + Say.small(off, unit)
                      + " off the place where its stripes would lie on stripes."));
    }
    for (int i = 0; i < zones.size(); i++) {
      for (int j = i + 1; j < zones.size(); j++) {
        meet(findings, rule, zones.get(i), zones.get(j), laid);
      }
    }
    return findings;
  }

  private static String unfoldable(Marker marker, Unit unit) {
    Cloth cloth = marker.lay().cloth();
    Fold fold = marker.fold();
    double most = LaidCloth.mostBorderMm(cloth, fold);
    OptionalDouble depth =
        marker.zones().stream()
            .filter(zone -> fold.hasBorder() && zone.foldEdges().equals(Set.of(Zone.Side.LOW_Y)))
            .mapToDouble(zone -> zone.box().maxY())
            .filter(deep -> deep >= most)
            .findFirst();
    if (depth.isPresent()) {
      return "Cloth %s, %s wide, can be folded over by less than %s, not by %s as this %s asks: make"
              .formatted(
                  cloth.name(),
                  Say.length(cloth.widthMm(), unit),
                  Say.length(most, unit),
                  Say.length(depth.getAsDouble(), unit),
                  fold.words())
          + " the marker anew for this width.";
    }
    return "Cloth %s cannot be folded over as far as the zones of this %s ask%s."
        .formatted(
            cloth.name(),
            fold.words(),
            cloth.repeat().isPresent() ? ", or not on a mirror line of its repeat" : "");
  }

  /**
   * How far the place at which the cloth is folded or cut across is off a bar, or off whole repeats
   * from the cut end, mm. Where it is folded only flaws tell at which bar the cloth begins.
   */
  private static double offBars(Marker marker) {
    Cloth cloth = marker.lay().cloth();
    double along = cloth.repeat().map(Repeat::alongMm).orElse(0.0);
    boolean folded = marker.fold() == Fold.CROSSWISE;
    if (along == 0 || marker.acrossMm() == 0 || (folded && cloth.flaws().isEmpty())) {
      return 0;
    }
    double bar = folded ? cloth.repeat().get().startAlongMm() : 0;
    return Math.abs(Math.IEEEremainder(marker.acrossMm() - bar, along));
  }

  private static void meet(List<Finding> findings, Rule rule, Zone a, Zone b, LaidCloth laid) {
    double common = Math.min(common(a.box(), b.box()), common(turned(a.box()), turned(b.box())));
    if (common > Rule.ROUNDING_MM) {
      findings.add(
          finding(
              rule,
              unit ->
                  "Zones "
                      + a.id()
                      + " and "
                      + b.id()
                      + " overlap by "
                      + Say.small(common, unit)
                      + "."));
      return;
    }
    Zone first = a.box().minX() <= b.box().minX() ? a : b;
    Zone second = first == a ? b : a;
    Optional<Integer> one = stretch(first, laid);
    Optional<Integer> other = stretch(second, laid);
    if (one.isPresent() && other.isPresent() && one.get() > other.get()) {
      findings.add(
          finding(
              rule, unit -> "Zone " + second.id() + " must come before zone " + first.id() + "."));
    }
  }

  /** Along x, how much the two have in common; below 0 how far they are apart. */
  private static double common(Box a, Box b) {
    return Math.min(a.maxX(), b.maxX()) - Math.max(a.minX(), b.minX());
  }

  private static Box turned(Box box) {
    return new Box(box.minY(), box.minX(), box.maxY(), box.maxX());
  }

  /** Which stretch of the laid cloth the zone can be part of. */
  private static Optional<Integer> stretch(Zone zone, LaidCloth laid) {
    for (int i = 0; i < laid.stretches().size(); i++) {
      if (laid.stretches().get(i).stream().anyMatch(band -> alike(zone, band))) {
        return Optional.of(i);
      }
    }
    return Optional.empty();
  }

  private static boolean alike(Zone zone, Band band) {
    return Math.abs(zone.box().minY() - band.lowY()) <= Rule.ROUNDING_MM
        && Math.abs(zone.box().maxY() - band.highY()) <= Rule.ROUNDING_MM
        && zone.plies() == band.plies()
        && zone.foldEdges().equals(band.foldEdges())
        && zone.sideUp() == band.sideUp();
  }

  private static Finding finding(Rule rule, Finding.Words words) {
    return new Finding(rule, List.of(), List.of(), Optional.empty(), 1, words);
  }
}
