package ellwand.pattern.alter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import ellwand.geometry.Region;
import ellwand.pattern.Alteration;
import ellwand.pattern.Outlined;
import ellwand.pattern.Start;
import ellwand.pattern.WorkEdge;
import ellwand.pattern.Workpiece;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.lifecycle.AfterContainer;

/** Whatever is asked for: a legal outline comes of it, or a problem with its place. */
class RandomAlterationsTest {

  private static final List<String> EDGES =
      List.of(
          "centre front", "neckline", "shoulder", "armhole", "side seam", "waist", "inner edge");

  private static final List<String> POINTS =
      List.of(
          "waist centre", "neck centre", "neck shoulder", "shoulder tip", "underarm", "m0", "m1");

  private static int made;
  private static int refused;

  @Property(tries = 300)
  void anOutlineStaysLegalOrTheStepIsRefusedWhereItIsWritten(@ForAll long seed) {
    Random random = new Random(seed);
    Outlined back = Bodice.outlined("back", new Start.Drawn(Bodice.back(random.nextBoolean())));
    boolean clockwise = random.nextBoolean();
    List<Alteration> steps = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      steps.add(i < 2 ? mark(random, "m" + i) : step(random, i));
      Outlined front = Bodice.altered(Bodice.front(clockwise), steps.toArray(new Alteration[0]));
      try {
        Workpiece piece = Bodice.made("front", front, back);
        made++;
        check(piece, steps);
        piece.parts().values().forEach(part -> check(part, steps));
      } catch (InputException e) {
        refused++;
        assertFalse(e.problems().isEmpty());
        for (Problem problem : e.problems()) {
          assertEquals(Optional.of("front"), problem.piece(), problem::toString);
          assertEquals(Optional.of("job.yaml"), problem.file(), problem::toString);
          assertEquals(steps.size(), problem.line(), problem::toString);
          assertFalse(problem.remedy().isBlank());
        }
        steps.remove(steps.size() - 1);
      }
    }
  }

  @AfterContainer
  static void bothCameUp() {
    assertTrue(made > 100 && refused > 100, made + " made, " + refused + " refused");
  }

  private static void check(Workpiece piece, List<Alteration> steps) {
    String what = steps.toString();
    List<Point> ring = new ArrayList<>();
    Set<String> names = new HashSet<>();
    List<WorkEdge> edges = piece.edges();
    for (int i = 0; i < edges.size(); i++) {
      WorkEdge edge = edges.get(i);
      WorkEdge next = edges.get((i + 1) % edges.size());
      assertTrue(names.add(edge.name()), what);
      assertEquals(0, edge.line().end().distance(next.line().start()), 1e-6, what);
      List<Point> line = edge.line().flattened(0.05);
      ring.addAll(line.subList(0, line.size() - 1));
      edge.notches().forEach(n -> assertTrue(n.atMm() <= edge.line().length() + 1e-3, what));
      assertEquals(allowance(edge.name()), edge.edge().allowanceMm(), what + edge.name());
    }
    assertEquals(Optional.empty(), Region.crossing(ring), what);
    assertTrue(Outline.around(ring).isPresent(), what);
    piece.fold().ifPresent(f -> assertTrue(names.contains(f), what));
  }

  private static double allowance(String edge) {
    String plain = edge.replaceFirst("^(other |back )+", "");
    return switch (plain) {
      case "centre front", "centre back" -> 0;
      case "neckline" -> 6;
      case "shoulder" -> 15;
      case "armhole" -> 7;
      case "side seam" -> 20;
      case "waist" -> 30;
      default -> 10;
    };
  }

  private static String edge(Random random) {
    return EDGES.get(random.nextInt(EDGES.size()));
  }

  private static String point(Random random) {
    return POINTS.get(random.nextInt(POINTS.size()));
  }

  private static MarkPoint mark(Random random, String name) {
    Reach reach =
        random.nextBoolean()
            ? new Reach.Share(random.nextInt(5), 4)
            : new Reach.Mm(random.nextInt(150));
    MarkPoint.Where where =
        switch (random.nextInt(5)) {
          case 0 -> new MarkPoint.SquareTo("underarm", "armhole", random.nextInt(60) - 30);
          case 1 ->
              new MarkPoint.ByGrain("neck centre", random.nextInt(99) - 70, random.nextInt(50));
          default -> new MarkPoint.OnEdge(EDGES.get(random.nextInt(6)), reach);
        };
    return new MarkPoint(name, where);
  }

  private static Alteration step(Random random, int number) {
    double mm = 1 + random.nextInt(random.nextInt(6) == 0 ? 300 : 60);
    return switch (random.nextInt(15)) {
      case 0 ->
          new Lengthen(random.nextBoolean() ? mm : -mm, point(random), random.nextInt(4) == 0);
      case 1 ->
          new Extend(
              edge(random), mm, random.nextBoolean() ? Extend.Ends.SQUARE : Extend.Ends.MIRRORED);
      case 2 -> new Unfold(edge(random));
      case 3 -> new Facing(List.of(edge(random)), mm);
      case 4 ->
          new TapeTogether(
              edge(random), "back", Optional.empty(), "shoulder", random.nextBoolean());
      case 5 -> new TrueLength(edge(random), OtherEdge.of("back.side seam"), 0, Optional.empty());
      case 6 -> new TrueRun(edge(random), edge(random), OtherEdge.of("back.neckline"), "shoulder");
      case 7 ->
          new CutApart(
              "upper " + number,
              "lower " + number,
              "cut " + number,
              Bodice.lineFrom(
                  point(random), point(random), Redraw.Shape.values()[random.nextInt(2)]));
      case 8 -> new Spread(edge(random), edge(random), mm, 0, 1 + random.nextInt(4));
      case 9 -> new Spread(point(random), point(random), mm, random.nextInt(2) * mm / 2, 0);
      case 10 ->
          new DrawDart(
              "dart " + number,
              edge(random),
              new Reach.Share(1 + random.nextInt(4), 5),
              5 + mm / 4,
              Optional.of(2 * mm),
              Optional.empty(),
              point(random));
      case 11 -> new MoveDart("dart " + random.nextInt(5), point(random), point(random));
      case 12 ->
          new Pleats(
              Pleats.Kind.KNIFE,
              edge(random),
              1 + random.nextInt(2),
              1 + mm / 6,
              Optional.empty(),
              Optional.empty(),
              Optional.empty(),
              Optional.of(point(random)));
      default -> {
        boolean curve = random.nextBoolean();
        String from = random.nextBoolean() ? null : point(random);
        String to = random.nextBoolean() ? null : point(random);
        String[] through = random.nextInt(3) == 0 ? new String[] {point(random)} : new String[0];
        yield curve
            ? Bodice.curve(edge(random), from, to, through)
            : Bodice.line(edge(random), from, to, through);
      }
    };
  }
}
