package ellwand.cloth;

import ellwand.geometry.Box;
import ellwand.geometry.Motion;
import ellwand.geometry.Outline;
import ellwand.geometry.Region;
import ellwand.problem.InputException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A piece of cloth on the shelf, measured as it comes to the table.
 *
 * @param name as in the job
 * @param cloth name of the cloth that it is a piece of
 * @param lengthMm along the warp
 * @param widthMm edge to edge
 * @param selvedgeMm what may not be used along its two long edges; if absent, as the cloth has it
 * @param missing what its length and width promise but is not there, and what cannot be used
 */
public record Remnant(
    String name,
    String cloth,
    double lengthMm,
    double widthMm,
    Optional<Double> selvedgeMm,
    List<Flaw> missing) {

  /** What is not there of a remnant that is no rectangle. */
  public static final String NO_CLOTH = "no cloth";

  public Remnant {
    missing = List.copyOf(missing);
    if (!(lengthMm > 0 && widthMm > 0)) {
      throw InputException.of(
          "remnant " + name + " has no length or no width", "Give both, more than 0");
    }
  }

  /**
   * A remnant of any shape, with no selvedge left.
   *
   * @param outline x along the warp, right side up; anywhere, it is moved to the corner
   * @param flaws in the same frame
   */
  public static Remnant of(String name, String cloth, Outline outline, List<Flaw> flaws) {
    Box box = outline.box();
    Motion toCorner = new Motion(false, 0, -box.minX(), -box.minY());
    List<Flaw> missing = new ArrayList<>();
    Region.of(box)
        .minus(Region.of(outline))
        .shells()
        .forEach(part -> missing.add(new Flaw(NO_CLOTH, part.moved(toCorner))));
    flaws.forEach(f -> missing.add(new Flaw(f.name(), f.outline().moved(toCorner))));
    return new Remnant(name, cloth, box.length(), box.width(), Optional.of(0.0), missing);
  }

  /** How much of it there is. */
  public double areaMm2() {
    return lengthMm * widthMm - missing.stream().mapToDouble(f -> f.outline().area()).sum();
  }

  /**
   * The remnant as a cloth to lay on, with all that holds for the cloth it is a piece of. It costs
   * nothing, is not washed any more, and may lie open as well.
   */
  public Cloth laidAs(Cloth of) {
    Set<Fold> folds = new LinkedHashSet<>(of.folds());
    folds.add(Fold.OPEN);
    return new Cloth(
        of.name(),
        of.goods()
            .inWidth(widthMm)
            .selvedge(selvedgeMm.orElse(of.selvedgeMm()))
            .shrinking(
                of.shrinkage().when() == Shrinkage.When.AFTER ? of.shrinkage() : Shrinkage.NONE)
            .flawed(missing)
            .from(Optional.of(new Stock(name, lengthMm))),
        of.laying().folded(List.copyOf(folds)).ends(0),
        of.selling().at(0, of.currency()),
        of.wishes());
  }
}
