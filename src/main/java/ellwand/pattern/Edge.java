package ellwand.pattern;

import ellwand.geometry.Path;
import ellwand.geometry.Point;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * A named stretch of a piece's sewing line.
 *
 * @param line from the edge's start to its end, counter-clockwise round the piece
 * @param allowance outside the sewing line
 * @param turnedBack the allowance is folded back along this edge (a hem), so at both ends the
 *     cutting line is the neighbour's mirrored about this edge's sewing line
 * @param intakes what is folded away, in order; the line has a joint at each leg
 * @param gathers what is gathered of it
 */
public record Edge(
    String name,
    Path line,
    Allowance allowance,
    boolean turnedBack,
    List<Intake> intakes,
    List<Gathers> gathers) {

  /** One on which nothing is folded away or gathered. */
  public Edge(String name, Path line, Allowance allowance, boolean turnedBack) {
    this(name, line, allowance, turnedBack, List.of(), List.of());
  }

  /** The same with one allowance in every cloth, mm, 0 or more. */
  public Edge(String name, Path line, double allowanceMm, boolean turnedBack) {
    this(name, line, Allowance.of(allowanceMm), turnedBack);
  }

  public Edge {
    gathers = List.copyOf(gathers);
    intakes = intakes.stream().sorted(Comparator.comparing(i -> leg(line, i.first()))).toList();
    for (Intake intake : intakes) {
      if (leg(line, intake.second()).compareTo(leg(line, intake.first())) < 0) {
        throw new IllegalArgumentException("the legs of " + intake.name() + " are exchanged");
      }
    }
  }

  private static Path.Place leg(Path line, Intake.Leg leg) {
    return line.joint(leg.outer())
        .orElseThrow(() -> new IllegalArgumentException("a leg does not stand on the edge"));
  }

  /** Seam allowance, mm; the widest of any cloth until the edge is {@link #in} one. */
  public double allowanceMm() {
    return allowance.widestMm();
  }

  /** The same with another allowance. */
  Edge with(Allowance other) {
    return new Edge(name, line, other, turnedBack, intakes, gathers);
  }

  /**
   * The same with the allowance that it has in a cloth.
   *
   * @throws IllegalArgumentException if none is said
   */
  Edge in(String cloth) {
    return with(
        Allowance.of(
            allowance
                .in(cloth)
                .orElseThrow(
                    () ->
                        new IllegalArgumentException(
                            "edge " + name + " has no allowance in " + cloth))));
  }

  /** Length when sewn, mm: without what is folded away and what gathers take. */
  public double sewnMm() {
    return line.length()
        - intakes.stream().mapToDouble(i -> mouth(i).length()).sum()
        - gathers.stream().mapToDouble(Gathers::awayMm).sum();
  }

  /** The sewing line between the legs of something that is folded away. */
  Path mouth(Intake intake) {
    return new Path(line.between(leg(line, intake.first()), leg(line, intake.second())));
  }

  /** As it is when all is folded that is folded away. */
  public FoldedEdge folded() {
    return new FoldedEdge(line, intakes);
  }

  /**
   * The same with the sewing line in each mouth as it must run to meet its neighbours when folded.
   *
   * @throws ellwand.problem.InputException if what is folded away reaches past the edge's end
   */
  public Edge shaped() {
    return intakes.isEmpty() ? this : along(folded().flat());
  }

  /** The same on another line, which has a joint at each leg. */
  public Edge along(Path other) {
    return on(other, intakes, gathers);
  }

  /** The same on another line, with other things folded away and gathered. */
  Edge on(Path other, List<Intake> folded, List<Gathers> gathered) {
    return new Edge(name, other, allowance, turnedBack, folded, gathered);
  }

  /** The same under another name. */
  public Edge named(String other) {
    return new Edge(other, line, allowance, turnedBack, intakes, gathers);
  }

  /** Where a map takes it that keeps shapes and does not turn over. */
  public Edge moved(UnaryOperator<Point> map) {
    return on(
        line.mapped(map),
        intakes.stream().map(i -> i.moved(map)).toList(),
        gathers.stream().map(g -> g.moved(map)).toList());
  }

  /** The same, run through the other way. */
  public Edge reversed() {
    return on(
        line.reversed(),
        intakes.stream().map(Intake::reversed).toList(),
        gathers.stream().map(Gathers::reversed).toList());
  }

  /** The same, with something more folded away. */
  public Edge with(Intake intake) {
    List<Intake> more = new ArrayList<>(intakes);
    more.add(intake);
    return on(line, more, gathers);
  }

  /** The same, gathered also here. */
  public Edge with(Gathers stretch) {
    List<Gathers> more = new ArrayList<>(gathers);
    more.add(stretch);
    return on(line, intakes, more);
  }

  /** The same, drawn up, stretched or pleated evenly to so many mm when sewn. */
  Edge takenUpTo(double mm, Gathers.How how) {
    double away = line.length() - mm;
    return Math.abs(away) < 1e-9 ? this : with(new Gathers(line.start(), line.end(), away, how));
  }

  /** The same without something that was folded away. */
  public Edge without(Intake intake) {
    return on(line, intakes.stream().filter(i -> !i.equals(intake)).toList(), gathers);
  }

  /** The same with other names for what is folded away. */
  public Edge foldedAs(UnaryOperator<String> names) {
    return on(line, intakes.stream().map(i -> i.named(names.apply(i.name()))).toList(), gathers);
  }

  /** The lines that are drawn inside the piece for what is folded away. */
  public List<InnerLine> intakeLines() {
    List<InnerLine> lines = new ArrayList<>();
    for (Intake intake : intakes) {
      Path mouth = mouth(intake);
      lines.addAll(intake.lines(mouth.tangent(mouth.length() / 2).at()));
    }
    return lines;
  }
}
