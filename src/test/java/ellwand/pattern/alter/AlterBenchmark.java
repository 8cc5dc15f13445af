package ellwand.pattern.alter;

import ellwand.geometry.Point;
import ellwand.pattern.Design;
import ellwand.pattern.GradeRule;
import ellwand.pattern.Outlined;
import ellwand.pattern.Sizes;
import ellwand.pattern.Style;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Times all steps of twenty pieces in nine sizes; started by {@code benchmarks/jmh}. */
@State(Scope.Thread)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3)
@Measurement(iterations = 15)
@Fork(1)
public class AlterBenchmark {

  private Design design;

  /** Five bodices of two blocks that are altered and two pieces that are made of them. */
  @Setup
  public void draw() {
    design = design();
  }

  static Design design() {
    List<Outlined> pieces = new ArrayList<>();
    Map<String, Map<String, GradeRule>> rules = new LinkedHashMap<>();
    for (int i = 0; i < 5; i++) {
      String front = "front " + i;
      String back = "back " + i;
      pieces.add(
          Bodice.altered(
              Bodice.named(Bodice.front(i % 2 == 0), front),
              new MarkPoint("hip", new MarkPoint.Towards("waist centre", "neck centre", 80)),
              new Lengthen(30, "hip", false),
              new MarkPoint("v", new MarkPoint.Towards("waist centre", "neck centre", 170)),
              i % 2 == 0
                  ? Bodice.line("neckline", "neck shoulder", "v")
                  : Bodice.line("neckline", "v", "neck shoulder"),
              Bodice.curve("armhole", null, null),
              new Extend("centre front", 15, Extend.Ends.SQUARE)));
      pieces.add(
          Bodice.altered(
              Bodice.named(Bodice.back(false), back),
              new MarkPoint("hip", new MarkPoint.Towards("waist centre", "neck centre", 80)),
              new Lengthen(30, "hip", false),
              new TrueLength(
                  "side seam", OtherEdge.of(front + ".side seam"), 0, Optional.of("waist side")),
              Bodice.mark("in", "centre back", 260),
              new MarkPoint("low", new MarkPoint.OnEdge("armhole", new Reach.Share(1, 3))),
              new CutApart(
                  "yoke", "body", "seam", Bodice.lineFrom("in", "low", Redraw.Shape.CURVE))));
      pieces.add(
          Bodice.copy(
              "facing " + i,
              front,
              Optional.empty(),
              new Facing(List.of("waist", "centre front", "neckline"), 40)));
      pieces.add(Bodice.copy("yoke " + i, back, Optional.of("yoke"), new Unfold("centre back")));
      for (String piece : List.of(front, back)) {
        rules.put(
            piece,
            Map.of(
                "neck centre", new GradeRule.Step(new Point(10, 0)),
                "neck shoulder", new GradeRule.Step(new Point(12, 2)),
                "shoulder tip", new GradeRule.Step(new Point(12, 4)),
                "underarm", new GradeRule.Step(new Point(7, 5)),
                "waist side", new GradeRule.Step(new Point(0, 5))));
      }
    }
    List<String> sizes = List.of("92", "98", "104", "110", "116", "122", "128", "134", "140");
    return Bodice.design(new Sizes(sizes, "104", rules), pieces.toArray(new Outlined[0]));
  }

  /** Every size of the style. */
  @Benchmark
  public Style alter() {
    return Style.of(design);
  }
}
