package ellwand.pattern.block;

import ellwand.geometry.Point;
import ellwand.pattern.Others;
import ellwand.problem.InputException;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Half a child's bodice for woven cloth, 1 to 10 years, after moonlightpatterns.com, 'Drafting
 * children's bodice block'; what it leaves open after two others, see blocks.md.
 */
public record Bodice(Side side) implements Block {

  /** How far the back neck rises above the nape, in every size. */
  private static final double NECK_RISE_MM = 15;

  /** What is added to a sixth of the neck for its width, and for its depth in front. */
  private static final double NECK_WIDER_MM = 5;

  /** How much longer the front is than the back. */
  private static final double FRONT_LONGER_MM = 10;

  /** 9sewing.blogspot.com: 2 to 2.5 cm; artvani-vani.blogspot.com: 1 in. */
  private static final double SHOULDER_DROP_MM = 25;

  /** Our own: how far the shoulder reaches beyond the line of the back width. */
  private static final double SHOULDER_BEYOND_MM = 8;

  /** frillsandflares.blogspot.com, 1/2 in: the front armhole half way down. */
  private static final double FRONT_FURTHER_IN_MM = 12.7;

  /** Where the armhole notches stand, as a share of it from the underarm; common practice. */
  private static final double NOTCH = 1.0 / 3;

  private static final double LEAST_ARMHOLE_MM = 20;

  /** Of the back neck's width, what its tangent at the shoulder may take up; our own. */
  private static final double FLAT_NECK = 0.6;

  @Override
  public String words() {
    return "bodice " + side.word();
  }

  @Override
  public List<String> measures() {
    return List.of("chest", "back width", "neck", "armhole depth", "back waist");
  }

  @Override
  public Map<String, Double> usualEaseMm() {
    return Map.of("chest", 60.0);
  }

  /**
   * How the neckline leaves the shoulder: in front straight down, at the back nearer to the centre
   * by as much as makes it run on, so that it comes to about the neck all round.
   *
   * @param shoulder direction of the seam, from its tip to the neck
   */
  private Point leavingNeck(Point shoulder, double neckWidth) {
    double slope = Math.asin(shoulder.dot(Pencil.UP));
    // Where shoulders are so steep that the back's would cross the centre, less.
    double flattest = Math.atan(FLAT_NECK * neckWidth / NECK_RISE_MM);
    double turn = Math.max(0, Math.min(slope, flattest - slope));
    Point square = shoulder.left().times(-1);
    return square
        .times(Math.cos(turn))
        .plus(square.left().times(side.pick(-1.0, 1.0) * Math.sin(turn)));
  }

  @Override
  public BlockLines lines(Measured measured, Others others) {
    // A sixth of the ease lies in half the back, a sixth in half the front, a sixth in the armhole.
    double easeMm = measured.ease("chest") / 6;
    double halfWidth = measured.mm("back width") / 2 + easeMm;
    double armholeWidth = measured.mm("chest") / 2 - measured.mm("back width") + easeMm;
    InputException.unless(
        armholeWidth >= LEAST_ARMHOLE_MM,
        "the back width leaves less than 2 cm of half the chest for the arm",
        "See that the back width is measured from arm to arm, and the chest all round");
    double sideAt = halfWidth + armholeWidth / 2;
    double nape = measured.mm("back waist");
    double underarm = nape - measured.mm("armhole depth");
    double neckWidth = measured.mm("neck") / 6 + NECK_WIDER_MM;
    double neck = nape + NECK_RISE_MM;
    double neckCentre = side.pick(neck - neckWidth, nape);
    double waistCentre = side.pick(-FRONT_LONGER_MM, 0.0);
    Point tip = new Point(neck - SHOULDER_DROP_MM, halfWidth + SHOULDER_BEYOND_MM);
    Point shoulder = new Point(neck, neckWidth).minus(tip).unit();
    Point halfWayDown =
        new Point((tip.x() + underarm) / 2, side.pick(halfWidth - FRONT_FURTHER_IN_MM, halfWidth));
    return new Pencil("waist centre", waistCentre, 0)
        .edge("waist")
        .soft(Optional.of("waist side"), new Point(0, sideAt), Pencil.OUT, Pencil.OUT)
        .edge("side seam")
        .line("underarm", underarm, sideAt)
        .edge("armhole")
        .round(Optional.empty(), halfWayDown, Pencil.OUT.times(-1), Pencil.UP)
        .soft(Optional.of("shoulder tip"), tip, Pencil.UP, shoulder.left())
        .notch(NOTCH, side.strokes())
        .edge("shoulder")
        .line("neck", neck, neckWidth)
        .edge("neckline")
        .round(
            Optional.of("neck centre"),
            new Point(neckCentre, 0),
            leavingNeck(shoulder, neckWidth),
            Pencil.OUT.times(-1))
        .closedOnFold("centre " + side.word());
  }
}
