package ellwand.file.alter;

import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.file.source.Spot;
import ellwand.pattern.alter.DrawnLine;
import ellwand.pattern.alter.Manner;
import ellwand.pattern.alter.Redraw;
import java.util.List;
import java.util.Optional;

/** How a new line is described: where it runs, straight or curved, how it leaves and arrives. */
final class LineDetails {

  static final List<String> KEYS = List.of("from", "to", "through", "as", "leaves", "arrives");

  private LineDetails() {}

  /** A curve unless said otherwise where it is said how it leaves or arrives. */
  static Redraw.Shape shape(Spot step) {
    boolean bent = step.get("leaves").present() || step.get("arrives").present();
    return step.get("as")
        .text()
        .map(w -> w.equals("curve") ? Redraw.Shape.CURVE : Redraw.Shape.LINE)
        .orElse(bent ? Redraw.Shape.CURVE : Redraw.Shape.LINE);
  }

  /** A line from one mark to another, both of which must be said. */
  static Optional<DrawnLine> line(Spot step) {
    int before = step.problems().size();
    Optional<String> from = Details.text(step, "from", "from: yoke centre");
    Optional<String> to = Details.text(step, "to", "to: yoke side");
    Optional<Manner> leaves = Details.manner(step.get("leaves"));
    Optional<Manner> arrives = Details.manner(step.get("arrives"));
    return step.problems().size() > before
        ? Optional.empty()
        : Optional.of(
            new DrawnLine(
                from.orElseThrow(),
                to.orElseThrow(),
                Details.texts(step.get("through")),
                shape(step),
                leaves,
                arrives));
  }

  static void write(DrawnLine line, ObjectNode into) {
    into.put("from", line.from()).put("to", line.to());
    write(line.through(), line.shape(), line.leaves(), line.arrives(), into);
  }

  static void write(
      List<String> through,
      Redraw.Shape shape,
      Optional<Manner> leaves,
      Optional<Manner> arrives,
      ObjectNode into) {
    if (!through.isEmpty()) {
      Details.put(into, "through", through);
    }
    into.put("as", shape == Redraw.Shape.CURVE ? "curve" : "line");
    leaves.ifPresent(m -> into.put("leaves", m.words()));
    arrives.ifPresent(m -> into.put("arrives", m.words()));
  }
}
