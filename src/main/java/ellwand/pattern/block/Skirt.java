package ellwand.pattern.block;

import ellwand.geometry.Point;
import ellwand.pattern.Extent;
import ellwand.pattern.Others;
import ellwand.pattern.PieceSet;
import ellwand.problem.InputException;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Half the front or back of a skirt, straight from the hip down or flared at the side; common
 * practice, see blocks.md.
 *
 * @param length from waist to hem
 * @param flare how far the hem reaches beyond the hip at the side; empty for a straight skirt
 */
public record Skirt(Side side, Extent length, Optional<Extent> flare) implements Block {

  /** How far the waist rises to the side. */
  private static final double SIDE_RISE_MM = 5;

  /** How much lower the waist lies at the centre back. */
  private static final double BACK_LOWER_MM = 5;

  @Override
  public String words() {
    return (flare.isPresent() ? "flared skirt " : "straight skirt ") + side.word();
  }

  @Override
  public List<String> measures() {
    return List.of("waist", "hip", "hip depth");
  }

  @Override
  public Map<String, Double> usualEaseMm() {
    return Map.of("waist", 20.0, "hip", 40.0);
  }

  @Override
  public BlockLines lines(Measured measured, Others others) {
    double lengthMm = length.mm(measured.size(), PieceSet.NONE);
    double flareMm = flare.map(f -> f.mm(measured.size(), PieceSet.NONE)).orElse(0.0);
    double hipDepth = measured.mm("hip depth");
    double below = lengthMm - hipDepth;
    InputException.unless(
        below > 0, "the skirt ends above the hip", "Make its length: more than the hip depth");
    InputException.unless(
        flareMm < below,
        "the flare is as long as the skirt below the hip, or longer",
        "Make flare: less, or draft a circle skirt");
    double hipWidth = measured.eased("hip") / 4;
    double waistWidth = measured.eased("waist") / 4;
    Point hip = new Point(below, hipWidth);
    // The side is as long as the centre, so that the hem hangs level.
    double rise = below - Math.sqrt(below * below - flareMm * flareMm);
    Point hem = new Point(rise, hipWidth + flareMm);
    Point up = hip.minus(hem).unit();
    Point waist = new Point(lengthMm + SIDE_RISE_MM, waistWidth);
    double waistCentre = lengthMm - side.pick(0.0, BACK_LOWER_MM);
    return new Pencil("hem centre", 0, 0)
        .edge("hem")
        .soft(Optional.of("hem side"), hem, Pencil.OUT, up.left())
        .edge("side seam")
        .line("hip side", hip.x(), hip.y())
        .notch(1, side.strokes())
        .soft(Optional.of("waist side"), waist, up, waist.minus(hip).unit())
        .edge("waist")
        .soft(
            Optional.of("waist centre"),
            new Point(waistCentre, 0),
            new Point(waistCentre, 0).minus(waist).unit(),
            Pencil.OUT.times(-1))
        .closedOnFold("centre " + side.word());
  }
}
