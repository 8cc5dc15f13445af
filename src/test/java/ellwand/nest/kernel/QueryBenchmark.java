package ellwand.nest.kernel;

import ellwand.geometry.NoFitUnion;
import ellwand.geometry.RandomOutlines;
import ellwand.work.Effort;
import ellwand.work.Seed;
import ellwand.work.Stop;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Times the kernel's hot queries; started by {@code benchmarks/jmh}. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class QueryBenchmark {

  private static final double WIDTH = 1500;

  /** Copies on the strip. */
  @Param({"50", "200"})
  public int copies;

  private PairTable table;
  private Arrangement arrangement;
  private Mover mover;
  private double[] bodies;
  private double[] stars;
  private final SplittableRandom random = new SplittableRandom(1);

  @Setup
  public void prepare() {
    bodies = Outward.thinned(RandomOutlines.smooth(random, 150, 150), 0.5, 16);
    stars = RandomOutlines.star(random, 12, 200, 0.4);
    table = PairTableBuilder.build(NoFitUnion.rings(bodies, stars), 5);
    List<Shape> shapes = new ArrayList<>();
    List<List<StripForm>> forms = new ArrayList<>();
    for (double[] ring : List.of(bodies, stars)) {
      Shape shape = new Shape(ring);
      forms.add(
          List.of(
              StripForm.within(WIDTH, shapes.size(), shape),
              StripForm.within(WIDTH, shapes.size() + 1, Shapes.turned(shape))));
      shapes.add(shape);
      shapes.add(Shapes.turned(shape));
    }
    List<List<StripForm>> all = new ArrayList<>(Collections.nCopies(copies / 2, forms.get(0)));
    all.addAll(Collections.nCopies(copies / 2, forms.get(1)));
    Plan plan =
        new Plan(
            Strip.open(shapes, all),
            new Outlines(Strip.open(shapes, all).shapes(), Set.of(), NoFitUnion::rings, 0));
    ThreadMeeting alone = new ThreadMeeting(plan, Listener.NONE, 1);
    ThreadBudget budget =
        new ThreadBudget(Effort.ofSteps(Long.MAX_VALUE - 1), new Stop(), alone, 0);
    arrangement = new Arrangement(plan, budget);
    Snapshot first = new OpeningLayout(arrangement).lay(budget);
    arrangement.resize(first.length * 0.9, first.length / 2);
    mover = new Mover(arrangement, new Dice(new Seed(1)), true);
  }

  /** The depth of one pair. */
  @Benchmark
  public double depth() {
    return table.depth(random.nextDouble(-400, 400), random.nextDouble(-300, 300));
  }

  /** One pose against all others. */
  @Benchmark
  public double pose() {
    double x = random.nextDouble(200, arrangement.length() - 200);
    return arrangement.cost(0, 0, x, random.nextDouble(200, WIDTH - 200), Double.MAX_VALUE);
  }

  /** One copy's move: samples and descents. */
  @Benchmark
  public void move() {
    mover.improve(random.nextInt(copies));
  }

  /** A no-fit polygon and its table. */
  @Benchmark
  public PairTable table() {
    return PairTableBuilder.build(NoFitUnion.rings(bodies, stars), 5);
  }
}
