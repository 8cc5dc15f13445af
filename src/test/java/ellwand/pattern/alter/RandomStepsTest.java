package ellwand.pattern.alter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.cutting.Cutter;
import ellwand.pattern.Alteration;
import ellwand.pattern.Draft;
import ellwand.pattern.Edge;
import ellwand.pattern.Piece;
import ellwand.problem.InputException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/**
 * Any steps that darts, pleats and slashes are made of, one after another: each leaves a legal
 * piece with the same edges and allowances, or is refused with the piece it is about and a remedy.
 */
class RandomStepsTest {

  private static final List<String> EDGES =
      List.of("neckline", "shoulder seam", "armhole", "side", "waist");
  private static final List<String> CORNERS =
      List.of("waist middle", "neck middle", "neck", "shoulder", "underarm", "waist side");

  @Property(tries = 120)
  void everyStepLeavesALegalPieceOrIsRefused(@ForAll long seed, @ForAll boolean onFold) {
    Random random = new Random(seed);
    Draft draft = onFold ? Altered.half() : Altered.front();
    List<Alteration> done = new ArrayList<>();
    Map<String, Double> sewn = sewn(Altered.piece(draft));
    for (int i = 0; i < 6; i++) {
      List<Alteration> tried = new ArrayList<>(done);
      tried.addAll(step(random, i, done));
      try {
        Piece piece = Altered.piece(draft, tried.toArray(new Alteration[0]));
        assertEquals(allowances(Altered.piece(draft)), allowances(piece), tried::toString);
        cut(piece, tried);
        assertSewn(sewn, sewn(piece), tried);
        sewn = sewn(piece);
        done = tried;
      } catch (InputException e) {
        e.problems()
            .forEach(
                p -> {
                  assertEquals(Optional.of("front"), p.piece(), tried::toString);
                  assertTrue(p.remedy().length() > 5, p::toString);
                });
      }
    }
  }

  /** Only a new dart and a spread change how long an edge is when it is sewn. */
  private static void assertSewn(
      Map<String, Double> before, Map<String, Double> after, List<Alteration> steps) {
    Alteration last = steps.get(steps.size() - 1);
    for (String edge : EDGES) {
      double more = after.get(edge) - before.get(edge);
      if (last instanceof DrawDart dart && dart.edge().equals(edge)) {
        // The leg that is drawn out may stretch the edge.
        assertTrue(more < dart.widthMm() && more > -2 * dart.widthMm(), steps::toString);
      } else if (last instanceof Spread spread) {
        assertTrue(more > -0.1 && more < spread.byMm() + spread.otherMm() + 0.1, steps::toString);
      } else if (last instanceof CloseDart close && close.into() == CloseDart.Into.FLARE) {
        assertTrue(more > -0.1, steps::toString);
      } else if (!(last instanceof Pleats)) {
        assertEquals(0, more, 0.1, () -> edge + " of " + steps);
      }
    }
  }

  private static Map<String, Double> sewn(Piece piece) {
    return piece.edges().stream().collect(Collectors.toMap(Edge::name, Edge::sewnMm));
  }

  private static Map<String, Double> allowances(Piece piece) {
    return piece.edges().stream().collect(Collectors.toMap(Edge::name, Edge::allowanceMm));
  }

  /** An allowance may be too wide for what is left, which is said with the edge. */
  private static void cut(Piece piece, List<Alteration> steps) {
    try {
      assertTrue(Cutter.cut(piece, 1, 1).cutting().area() > 0, steps::toString);
    } catch (InputException e) {
      e.problems().forEach(p -> assertTrue(p.edge().isPresent(), p::toString));
    }
  }

  private static List<Alteration> step(Random random, int i, List<Alteration> done) {
    String edge = any(random, EDGES);
    String mark = "mark " + i;
    MarkPoint marked =
        new MarkPoint(mark, new MarkPoint.OnEdge(edge, new Reach.Share(1 + random.nextInt(9), 10)));
    return switch (random.nextInt(8)) {
      case 0, 1 ->
          List.of(
              new DrawDart(
                  "dart " + i,
                  edge,
                  new Reach.Share(1 + random.nextInt(9), 10),
                  5 + random.nextInt(30),
                  Optional.of(20.0 + random.nextInt(140)),
                  Optional.empty(),
                  any(random, CORNERS)));
      case 2, 7 -> List.of(marked, new MoveDart(dart(random, done), mark, any(random, CORNERS)));
      case 3 -> {
        boolean flare = random.nextBoolean();
        yield List.of(
            marked,
            new CloseDart(
                dart(random, done),
                flare || random.nextBoolean() ? Optional.of(mark) : Optional.empty(),
                flare ? CloseDart.Into.FLARE : CloseDart.Into.GATHERS,
                flare ? Optional.empty() : Optional.of(60.0)));
      }
      case 4 -> {
        Pleats.Kind kind = any(random, List.of(Pleats.Kind.values()));
        boolean oneWay = kind == Pleats.Kind.KNIFE || kind == Pleats.Kind.TUCK;
        yield List.of(
            new Pleats(
                kind,
                edge,
                1 + random.nextInt(3),
                3 + random.nextInt(20),
                Optional.empty(),
                Optional.empty(),
                kind == Pleats.Kind.TUCK ? Optional.of(50.0) : Optional.empty(),
                oneWay ? Optional.of(any(random, CORNERS)) : Optional.empty()));
      }
      case 5 ->
          List.of(
              new Spread(
                  edge, any(random, EDGES), 10 + random.nextInt(80), 0, 1 + random.nextInt(5)));
      default ->
          List.of(
              marked,
              new Spread(
                  mark,
                  any(random, CORNERS),
                  5 + random.nextInt(40),
                  random.nextBoolean() ? 0 : random.nextInt(20),
                  0));
    };
  }

  private static String dart(Random random, List<Alteration> done) {
    List<String> darts =
        done.stream().filter(s -> s instanceof DrawDart).map(s -> ((DrawDart) s).name()).toList();
    return darts.isEmpty() ? "no dart" : any(random, darts);
  }

  private static <T> T any(Random random, List<T> of) {
    return of.get(random.nextInt(of.size()));
  }
}
