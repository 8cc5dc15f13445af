package ellwand.nest.stretch;

import ellwand.geometry.Outline;
import ellwand.nest.kernel.Shape;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.DoubleStream;

/** Outlines as the kernel's shapes, which hold half the gap between copies; each made once. */
final class GrownShapes {

  private final double gapMm;
  private final Map<Outline, Shape> made = new HashMap<>();

  /**
   * @param gapMm least distance between two copies
   */
  GrownShapes(double gapMm) {
    this.gapMm = gapMm;
  }

  Shape of(Outline outline) {
    return made.computeIfAbsent(
        outline, o -> new Shape(flat(StretchTask.grown(o, gapMm))).bare(flat(o)));
  }

  /** As it is, without the gap. */
  static Shape bare(Outline outline) {
    return new Shape(flat(outline));
  }

  private static double[] flat(Outline outline) {
    return outline.points().stream().flatMapToDouble(p -> DoubleStream.of(p.x(), p.y())).toArray();
  }
}
