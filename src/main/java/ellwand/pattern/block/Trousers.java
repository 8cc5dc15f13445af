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
 * A leg's front or back of trousers that are pulled on and held by elastic; common practice, see
 * blocks.md. Front and back have the same outside leg; the back's fork lies lower by what makes the
 * inside legs alike.
 *
 * @param hem width of one leg's hem all round
 */
public record Trousers(Side side, Extent hem) implements Block {

  /** How much less than half the hem the front has, and the back more. */
  private static final double HEM_SHARED_MM = 10;

  /** How far the back rises above the front at the centre. */
  private static final double BACK_RISE_MM = 25;

  /** How far the centre back leans to the side. */
  private static final double BACK_LEAN_MM = 20;

  /** Far less than anybody sees, mm. */
  private static final double LENGTHS_ALIKE_MM = 1e-4;

  @Override
  public String words() {
    return "trousers " + side.word();
  }

  @Override
  public List<String> measures() {
    return List.of("hip", "rise", "inside leg");
  }

  @Override
  public Map<String, Double> usualEaseMm() {
    return Map.of("hip", 100.0, "rise", 15.0);
  }

  @Override
  public BlockLines lines(Measured measured, Others others) {
    Leg leg = new Leg(measured, hem.mm(measured.size(), PieceSet.NONE));
    return side == Side.FRONT ? leg.front() : leg.back();
  }

  /** The leg's level lines, from its hem up, and its widths, from the outside leg inwards. */
  private static final class Leg {

    private final double crotch;
    private final double waist;
    private final double quarterHip;
    private final double frontFork;
    private final double backFork;
    private final double hemMm;
    private final double outside;

    Leg(Measured measured, double hemMm) {
      this.hemMm = hemMm;
      double hip = measured.eased("hip");
      crotch = measured.mm("inside leg");
      waist = crotch + measured.eased("rise");
      quarterHip = hip / 4;
      frontFork = hip / 16;
      backFork = hip / 8;
      InputException.unless(
          hemMm > 4 * HEM_SHARED_MM,
          "nobody's foot goes through so narrow a leg",
          "Make hem: wider");
      // The front's middle is its crease: hem and crotch level are halved by it.
      outside = (quarterHip + frontFork) / 2;
    }

    private double hemOutside() {
      return hemMm / 4 - HEM_SHARED_MM / 2;
    }

    BlockLines front() {
      return lines(Side.FRONT, crotch, new Point(waist, outside - quarterHip));
    }

    BlockLines back() {
      double wanted = insideLegMm(Side.FRONT, crotch);
      double low = crotch / 2;
      InputException.unless(
          insideLegMm(Side.BACK, low) < wanted,
          "the legs are so short that front and back cannot be sewn together inside",
          "Make hem: wider or the inside leg longer");
      // Higher than the front's only where legs are very wide at the hem.
      double high = 2 * crotch;
      while (high - low > LENGTHS_ALIKE_MM) {
        double fork = (low + high) / 2;
        if (insideLegMm(Side.BACK, fork) < wanted) {
          low = fork;
        } else {
          high = fork;
        }
      }
      return lines(
          Side.BACK, high, new Point(waist + BACK_RISE_MM, outside - quarterHip + BACK_LEAN_MM));
    }

    private Point fork(Side side, double level) {
      return new Point(level, outside - quarterHip - side.pick(frontFork, backFork));
    }

    private double hemInside(Side side) {
      return hemOutside() - hemMm / 2 + side.pick(HEM_SHARED_MM, -HEM_SHARED_MM);
    }

    private Pencil insideLeg(Side side, double forkLevel) {
      Point fork = fork(side, forkLevel);
      Point hem = new Point(0, hemInside(side));
      return new Pencil("hem inside", hem.x(), hem.y())
          .edge("inside leg")
          .soft(Optional.of("crotch"), fork, Pencil.UP, fork.minus(hem).unit());
    }

    private double insideLegMm(Side side, double forkLevel) {
      return insideLeg(side, forkLevel).drawn().length();
    }

    private BlockLines lines(Side side, double forkLevel, Point waistCentre) {
      // The crotch curve runs straight from a third of the way up.
      Point level = new Point(crotch, outside - quarterHip);
      Point straight = level.towards(waistCentre, 1.0 / 3);
      Point hip = new Point(crotch + (waist - crotch) / 3, outside);
      return insideLeg(side, forkLevel)
          .notch(0.5, side.strokes())
          .edge("crotch seam")
          .round(
              Optional.of("rise"),
              straight,
              leavingFork(side, forkLevel),
              waistCentre.minus(level).unit())
          .line("waist centre", waistCentre.x(), waistCentre.y())
          .edge("waist")
          .line("waist side", waist, outside)
          .edge("outside leg")
          .line("hip side", hip.x(), hip.y())
          .soft(
              Optional.of("hem side"),
              new Point(0, hemOutside()),
              Pencil.UP.times(-1),
              Pencil.UP.times(-1))
          .notch(0.5, side.strokes())
          .closed("hem");
    }

    /** Square to the inside leg, so that front and back run on into one another. */
    private Point leavingFork(Side side, double forkLevel) {
      return insideLeg(side, forkLevel).drawn().endDirection().left();
    }
  }
}
