package ellwand.pattern;

import ellwand.geometry.Motion;
import ellwand.geometry.Path;
import ellwand.geometry.Segment;
import ellwand.problem.InputException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * An edge with its darts, pleats and tucks folded as they are sewn, so that its parts follow one
 * another without a gap. It lies in the frame of the part before the first of them.
 *
 * <p>What is folded away must end where the cloth on which it lies ends: laid out again, the line
 * in the mouth of a dart is the image of its neighbour's in the leg, up to the middle of the dart,
 * and the image of that in the middle.
 */
public final class FoldedEdge {

  private final List<Intake> intakes;

  /** What brings the part before each intake, and that after the last, to the folded edge. */
  private final List<Motion> folding = new ArrayList<>();

  /** Where on the folded edge each intake's legs meet. */
  private final List<Path.Place> seams = new ArrayList<>();

  private final Path line;

  /**
   * Folds an edge.
   *
   * @param drawn flat, with a joint at each leg; how it runs between the two legs of an intake is
   *     of no account
   * @param intakes in the order in which they follow one another on it
   */
  FoldedEdge(Path drawn, List<Intake> intakes) {
    this.intakes = List.copyOf(intakes);
    List<Segment> folded = new ArrayList<>();
    Motion motion = Motion.NONE;
    Path.Place from = drawn.first();
    for (Intake intake : intakes) {
      folding.add(motion);
      addMoved(folded, drawn.between(from, leg(drawn, intake.first())), motion);
      seams.add(new Path.Place(folded.size(), 0));
      motion = motion.after(intake.closing());
      from = leg(drawn, intake.second());
    }
    folding.add(motion);
    addMoved(folded, drawn.between(from, drawn.last()), motion);
    line = new Path(folded);
  }

  private static Path.Place leg(Path drawn, Intake.Leg leg) {
    return drawn
        .joint(leg.outer())
        .orElseThrow(() -> new IllegalArgumentException("a leg does not stand on the edge"));
  }

  /** The sewing line as it is when all is folded. */
  public Path line() {
    return line;
  }

  /** The sewing line of the edge laid out flat, the mouths of its intakes shaped. */
  Path flat() {
    return unfolded(line, seams);
  }

  /**
   * Lays a line out flat that runs beside the folded edge.
   *
   * @param beside long enough to cross every leg
   * @throws InputException if it does not
   */
  public Path unfolded(Path beside) {
    List<Path.Place> crossings = new ArrayList<>();
    for (int i = 0; i < intakes.size(); i++) {
      Intake intake = intakes.get(i);
      Intake.Leg leg = intake.first().moved(folding.get(i)::apply);
      crossings.add(
          beside.crossings(leg.inner(), leg.outer()).stream()
              .min(Comparator.comparing(c -> beside.at(c).distance(leg.outer())))
              .orElseThrow(() -> tooNear(intake)));
    }
    return unfolded(beside, crossings);
  }

  private Path unfolded(Path beside, List<Path.Place> legs) {
    List<Segment> flat = new ArrayList<>();
    Path.Place from = beside.first();
    for (int i = 0; i < intakes.size(); i++) {
      Path.Place leg = legs.get(i);
      if (leg.compareTo(from) < 0) {
        throw tooNear(intakes.get(i));
      }
      addMoved(flat, beside.between(from, leg), folding.get(i).inverse());
      addMouth(flat, beside, i, leg);
      from = leg;
    }
    addMoved(flat, beside.between(from, beside.last()), folding.get(intakes.size()).inverse());
    return new Path(flat);
  }

  /** Two layers: one continues the cloth on the far side of the leg, the other lies turned over. */
  private void addMouth(List<Segment> flat, Path beside, int i, Path.Place leg) {
    Intake intake = intakes.get(i);
    boolean back = intake.towardsFirst();
    Motion near = folding.get(back ? i : i + 1);
    Intake.Leg seam = intake.first().moved(folding.get(i)::apply);
    Motion over = Motion.mirror(seam.inner(), seam.outer());
    Intake.Leg middle = intake.middle().moved(over.after(near)::apply);
    List<Path.Place> ends = beside.crossings(middle.inner(), middle.outer());
    Path.Place end =
        (back
                ? ends.stream().filter(e -> e.compareTo(leg) < 0).max(Comparator.naturalOrder())
                : ends.stream().filter(e -> e.compareTo(leg) > 0).min(Comparator.naturalOrder()))
            .orElseThrow(() -> tooNear(intake));
    Motion first = folding.get(i).inverse();
    Motion second = folding.get(i + 1).inverse();
    if (back) {
      List<Segment> layer = beside.between(end, leg);
      addMoved(flat, reversed(layer), first.after(over));
      addMoved(flat, layer, second);
    } else {
      List<Segment> layer = beside.between(leg, end);
      addMoved(flat, layer, first);
      addMoved(flat, reversed(layer), second.after(over));
    }
  }

  private static List<Segment> reversed(List<Segment> line) {
    return line.isEmpty() ? line : new Path(line).reversed().segments();
  }

  private static void addMoved(List<Segment> to, List<Segment> line, Motion motion) {
    line.forEach(segment -> to.add(segment.moved(motion)));
  }

  private static InputException tooNear(Intake intake) {
    return InputException.of(
        "what " + intake.name() + " folds away reaches past the end of the edge",
        "Fold it the other way, make it narrower, or move it farther from the corner");
  }
}
