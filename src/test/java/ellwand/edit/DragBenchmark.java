package ellwand.edit;

import ellwand.cloth.Direction;
import ellwand.cloth.Fold;
import ellwand.cutting.CutPiece;
import ellwand.geometry.Box;
import ellwand.geometry.RandomOutlines;
import ellwand.lay.Copy;
import ellwand.lay.Form;
import ellwand.lay.Lay;
import ellwand.lay.Wanted;
import ellwand.pattern.Grain;
import ellwand.rule.Trial;
import java.util.ArrayList;
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

/** Times the answer to a drag, findings and all; started by {@code benchmarks/jmh}. */
@State(Scope.Thread)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2, time = 3)
@Measurement(iterations = 3, time = 4)
@Fork(1)
public class DragBenchmark {

  private static final double WIDTH_MM = 1500;
  private static final int KINDS = 10;

  /** Copies on the cloth. */
  @Param({"100", "1000"})
  public int copies;

  /** Between pieces, mm. */
  @Param({"0", "2"})
  public double gap;

  private final SplittableRandom random = new SplittableRandom(1);
  private HandLaid laid;

  /** Pieces of 150 corners, in rows across the cloth. */
  @Setup
  public void lay() {
    List<CutPiece> pieces = new ArrayList<>();
    for (int i = 0; i < KINDS; i++) {
      double[] ring = RandomOutlines.smooth(random, 150, 80 + random.nextInt(150));
      pieces.add(Trial.piece("piece " + i, Grain.ALONG, "1", Trial.points(ring)));
    }
    List<Wanted> wanted = new ArrayList<>();
    List<Copy> all = new ArrayList<>();
    double x = 0;
    double y = 0;
    double end = 0;
    for (int i = 0; i < copies; i++) {
      CutPiece piece = pieces.get(i % KINDS);
      int garment = 1 + i / KINDS;
      wanted.addAll(Trial.wanted(piece, "110", garment));
      Box box = piece.cutting().box();
      if (y + box.width() > WIDTH_MM) {
        x = end + gap;
        y = 0;
      }
      all.add(Trial.copy(piece, "110", garment, Form.WHOLE, "open", false, 0, x, y));
      y += box.width() + gap;
      end = Math.max(end, x + box.length());
    }
    Lay lay = new Lay("bench", Trial.cloth(WIDTH_MM, gap, Direction.ANY_WAY, Fold.OPEN), wanted);
    laid = HandLaid.of(Trial.open(lay, end, all.toArray(Copy[]::new)));
  }

  @Benchmark
  public HandLaid drag() {
    return laid.slide(
        Set.of(random.nextInt(copies)),
        800 * (random.nextDouble() - 0.5),
        800 * (random.nextDouble() - 0.5));
  }
}
