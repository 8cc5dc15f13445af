package ellwand.file.job;

import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.pattern.Allowance;
import ellwand.pattern.Asks;
import ellwand.pattern.Band;
import ellwand.pattern.BandPlan;
import ellwand.pattern.Bars;
import ellwand.pattern.Binding;
import ellwand.pattern.BindingPlan;
import ellwand.pattern.Body;
import ellwand.pattern.Computed;
import ellwand.pattern.Cut;
import ellwand.pattern.Design;
import ellwand.pattern.Draft;
import ellwand.pattern.Extent;
import ellwand.pattern.Finish;
import ellwand.pattern.Fullness;
import ellwand.pattern.Gathered;
import ellwand.pattern.GatheredPlan;
import ellwand.pattern.GradeRule;
import ellwand.pattern.Grain;
import ellwand.pattern.InnerLine;
import ellwand.pattern.Match;
import ellwand.pattern.Notch;
import ellwand.pattern.Outlined;
import ellwand.pattern.PleatedPlan;
import ellwand.pattern.Pleating;
import ellwand.pattern.Seam;
import ellwand.pattern.Sizes;
import ellwand.pattern.Trim;
import ellwand.pattern.block.Block;
import ellwand.pattern.block.Bodice;
import ellwand.pattern.block.CircleSkirt;
import ellwand.pattern.block.FromBody;
import ellwand.pattern.block.PieceEdge;
import ellwand.pattern.block.Side;
import ellwand.pattern.block.Skirt;
import ellwand.pattern.block.Sleeve;
import ellwand.pattern.block.Trousers;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.Stream;

/** Designs made at random, for tests of what writes them. */
public final class AnyDesign {

  private AnyDesign() {}

  public static Design of(Random random) {
    Unit unit = Unit.values()[random.nextInt(Unit.values().length)];
    List<String> sizes = List.of("8", "on", "one size", "14-16").subList(0, 1 + random.nextInt(4));
    String base = sizes.get(random.nextInt(sizes.size()));
    List<Outlined> outlined = new ArrayList<>();
    Map<String, Map<String, GradeRule>> rules = new LinkedHashMap<>();
    for (String name : List.of("panel", "yes", "40")) {
      outlined.add(outlined(random, name));
      if (sizes.size() > 1 && random.nextBoolean()) {
        rules.put(name, Map.of("p1", rule(random, sizes, base)));
      }
    }
    Body body = body(random, sizes);
    if (body.mmBySize().size() == sizes.size()) {
      outlined.addAll(blocks(random, sizes));
    }
    List<Computed> computed = new ArrayList<>();
    computed.add(binding(random, unit));
    computed.add(gathered(random, sizes));
    computed.add(band(random));
    computed.add(pleated(random));
    return new Design(
        "any: design, " + random.nextInt(9),
        unit,
        new Sizes(sizes, base, rules, body),
        outlined,
        computed,
        List.of(
            new Seam(List.of("panel.first"), List.of("yes.first", "40.first"), random.nextInt(2)),
            new Seam(List.of("frill.top"), List.of("40.first"), -random.nextInt(2))),
        List.of(
            new Match("panel", "first @ 1 mm", "yes", "first", Bars.values()[random.nextInt(3)])),
        List.of(length(random), pieces(random, sizes)));
  }

  private static Body body(Random random, List<String> sizes) {
    Map<String, Map<String, Double>> mm = new LinkedHashMap<>();
    sizes.stream()
        .limit(random.nextInt(6))
        .forEach(
            s -> {
              Map<String, Double> row = new LinkedHashMap<>();
              row.put("chest", 600 + random.nextInt(9) / 3.0);
              row.put("on", 20.0);
              row.put("back width", 225.0);
              row.put("neck", 270.0);
              row.put("armhole depth", 140.0);
              row.put("back waist", 260.0);
              row.put("arm", 420.0);
              row.put("inner arm", 320.0);
              row.put("wrist", 138.0);
              row.put("waist", 565.0);
              row.put("hip", 640.0);
              row.put("hip depth", 135.0);
              row.put("rise", 195.0);
              row.put("inside leg", 450.0);
              mm.put(s, row);
            });
    return new Body(mm);
  }

  private static Trim length(Random random) {
    return new Trim(
        "soft elastic",
        new Trim.Lengths(
            random.nextBoolean()
                ? new Extent.OfEdges(List.of("panel.first", "2 x yes.first"))
                : new Extent.Given(12.5),
            1 - random.nextInt(3) / 8.0,
            random.nextInt(3),
            1 + random.nextInt(100)),
        List.of(),
        random.nextBoolean() ? Optional.of(7.0) : Optional.empty(),
        random.nextBoolean() ? Trim.Price.UNKNOWN : new Trim.Price(1.25, 1000, "GBP"));
  }

  private static Trim pieces(Random random, List<String> sizes) {
    boolean several = random.nextBoolean();
    Map<String, Integer> bySize = new LinkedHashMap<>();
    sizes.forEach(size -> bySize.put(size, several ? 2 : random.nextInt(5)));
    return new Trim(
        "no",
        new Trim.Pieces(
            bySize,
            several ? 5 : 1,
            random.nextBoolean() ? Optional.of(new Extent.Given(200)) : Optional.empty()),
        random.nextBoolean() ? sizes : List.of(),
        Optional.empty(),
        new Trim.Price(0.35 + random.nextInt(3), 1 + 5 * random.nextInt(2), ""));
  }

  private static List<Outlined> blocks(Random random, List<String> sizes) {
    Map<String, Double> bySize = new LinkedHashMap<>();
    sizes.forEach(size -> bySize.put(size, 300 + 50 * random.nextDouble()));
    Side side = Side.values()[random.nextInt(2)];
    CircleSkirt.Ring ring = CircleSkirt.Ring.values()[random.nextInt(3)];
    Map<String, Double> ease =
        random.nextBoolean() ? Map.of() : Map.of("chest", 70.0 + random.nextInt(9) / 3.0);
    Map<String, Block> blocks = new LinkedHashMap<>();
    blocks.put("bust", new Bodice(side));
    List<PieceEdge> armhole = List.of(new PieceEdge("bust", "armhole"));
    blocks.put("arm", new Sleeve(armhole, armhole));
    blocks.put("a", new Skirt(side, new Extent.BySize(bySize), Optional.empty()));
    blocks.put("b", new Skirt(side, new Extent.Given(300), Optional.of(new Extent.Given(40.5))));
    blocks.put("c", new CircleSkirt(side, ring, new Extent.Given(300)));
    blocks.put("leg", new Trousers(side, new Extent.BySize(bySize)));
    List<Outlined> pieces = new ArrayList<>();
    blocks.forEach(
        (name, block) ->
            pieces.add(
                new Outlined(
                    name,
                    new FromBody(block, ease),
                    List.of(),
                    new Finish(
                        Optional.of(Allowance.of(random.nextInt(12) + 0.5)),
                        Map.of(),
                        Optional.empty(),
                        Optional.empty(),
                        List.of(),
                        List.of(),
                        List.of(new Cut("main", 1, Cut.How.PAIR))),
                    Optional.empty(),
                    Optional.empty())));
    return pieces;
  }

  private static GradeRule rule(Random random, List<String> sizes, String base) {
    if (random.nextBoolean()) {
      return new GradeRule.Step(shift(random));
    }
    Map<String, Point> bySize = new LinkedHashMap<>();
    sizes.stream().filter(s -> !s.equals(base)).forEach(s -> bySize.put(s, shift(random)));
    return new GradeRule.EachSize(bySize);
  }

  private static Point shift(Random random) {
    return new Point(random.nextDouble() * 4 - 2, random.nextDouble() * 4 - 2);
  }

  /** A star-shaped outline, drawn either way, with a curve and a piece of each kind of detail. */
  private static Outlined outlined(Random random, String name) {
    int corners = 5 + random.nextInt(4);
    int way = random.nextBoolean() ? 1 : -1;
    List<Draft.Node> nodes = new ArrayList<>();
    for (int i = 0; i < corners; i++) {
      double turn = way * 2 * Math.PI * i / corners;
      double radius = 200 + 60 * random.nextDouble();
      Point at = new Point(radius * Math.cos(turn), radius * Math.sin(turn));
      Optional<Draft.Curve> curve = Optional.empty();
      if (i == 2) {
        Point from = nodes.get(1).at();
        curve =
            Optional.of(
                new Draft.Curve(
                    from.towards(at, 0.3).times(1.02), from.towards(at, 0.7).times(1.02)));
      }
      nodes.add(new Draft.Node(i < 4 ? Optional.of("p" + i) : Optional.empty(), at, curve));
    }
    Grain grain =
        Stream.concat(Grain.NAMED.stream(), Stream.of(Grain.at(30)))
            .toList()
            .get(random.nextInt(6))
            .with(
                random.nextBoolean() ? OptionalDouble.of(2.5) : OptionalDouble.empty(),
                random.nextBoolean() ? Optional.of(Grain.Heads.ONE_WAY) : Optional.empty());
    List<Cut> cuts =
        List.of(
            new Cut("main", 1 + random.nextInt(3), Cut.How.PAIR),
            new Cut("lining", 1, Cut.How.WHOLE));
    Draft draft =
        new Draft(
            name,
            nodes,
            List.of(
                new Draft.NamedEdge("first", "p0", "p1", OptionalDouble.empty(), false),
                new Draft.NamedEdge("null", "p2", "p3", Optional.of(allowance(random)), true)),
            allowance(random),
            Optional.empty(),
            grain,
            random.nextBoolean()
                ? List.of(new Notch("null", 20 * random.nextDouble(), 2, 2.5))
                : List.of(),
            List.of(
                new InnerLine(
                    "dart", Path.line(new Point(0, 0), new Point(10 * random.nextDouble(), 30)))),
            cuts);
    return new Outlined(
        draft,
        random.nextBoolean() ? Optional.of(3.5) : Optional.empty(),
        random.nextBoolean()
            ? Optional.of(
                new Asks.Place("first @ 2 mm", Optional.of(-3.0), Optional.empty(), false))
            : Optional.empty());
  }

  private static Allowance allowance(Random random) {
    double mm = 4 + random.nextInt(4);
    return random.nextBoolean()
        ? Allowance.of(mm)
        : Allowance.byCloth(Map.of("main", mm, "lining", 3 + random.nextDouble()));
  }

  private static Computed binding(Random random, Unit unit) {
    return new BindingPlan(
        "tape",
        random.nextBoolean()
            ? new Extent.OfEdges(List.of("panel.first", "yes.first"))
            : new Extent.Given(1000 * random.nextDouble() + 100),
        20 + random.nextInt(30),
        Binding.CutAs.values()[random.nextInt(2)],
        500,
        6.35,
        Binding.wholeMm(unit),
        List.of(new Cut("main", 1, Cut.How.WHOLE)));
  }

  private static Computed band(Random random) {
    return new BandPlan(
        "cuff",
        new Extent.OfEdges(List.of("panel.first")),
        random.nextBoolean() ? 1 : 0.875,
        random.nextInt(2) * 12.5,
        new Extent.Given(40 + random.nextInt(20)),
        random.nextBoolean(),
        new Band.Seams(allowance(random), Allowance.of(5), Allowance.of(7)),
        Grain.ACROSS,
        List.of(new Cut("main", 2, Cut.How.WHOLE), new Cut("lining", 1, Cut.How.PAIR)),
        own(random, Band.JOINED, Band.FAR, Band.END));
  }

  private static Computed pleated(Random random) {
    int two = random.nextInt(3);
    return new PleatedPlan(
        "pleats",
        new Extent.OfEdges(List.of("panel.first", "yes.first")),
        Pleating.Kind.values()[random.nextInt(3)],
        two == 0 ? Optional.empty() : Optional.of(6),
        two == 1 ? Optional.empty() : Optional.of(12.5),
        two == 2 ? Optional.empty() : Optional.of(2.25),
        new Extent.Given(300),
        new Gathered.Seams(10, 20, 8, random.nextBoolean()),
        two == 0 ? 0 : random.nextInt(4),
        Grain.ALONG,
        List.of(new Cut("main", 1, Cut.How.WHOLE)),
        own(random, Gathered.HEM, Gathered.SIDE));
  }

  /** Away from corners and from notches that the piece has already. */
  private static List<Notch> own(Random random, String... edges) {
    return Stream.of(edges)
        .filter(e -> random.nextBoolean())
        .map(e -> new Notch(e, 5 + 10 * random.nextDouble(), 1 + random.nextInt(2), 2.5))
        .toList();
  }

  private static Computed gathered(Random random, List<String> sizes) {
    Map<String, Double> bySize = new LinkedHashMap<>();
    sizes.forEach(size -> bySize.put(size, 100 + 50 * random.nextDouble()));
    return new GatheredPlan(
        "frill",
        new Extent.OfEdges(List.of("panel.first")),
        random.nextBoolean()
            ? Fullness.of(0.75 + random.nextInt(8) / 4.0)
            : new Fullness(1.5, 1.75 + random.nextInt(3)),
        random.nextBoolean() ? new Extent.BySize(bySize) : new Extent.Given(75.5),
        new Gathered.Seams(10, 20, random.nextInt(15), random.nextBoolean()),
        random.nextInt(3),
        Grain.EITHER,
        List.of(new Cut("lining", 2, Cut.How.WHOLE)),
        own(random, Gathered.TOP, Gathered.HEM));
  }
}
