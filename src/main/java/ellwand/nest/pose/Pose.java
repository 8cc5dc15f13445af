package ellwand.nest.pose;

import ellwand.cloth.Band;
import ellwand.cloth.Zone.Side;
import ellwand.cutting.CutPiece.Stroke;
import ellwand.geometry.Box;
import ellwand.geometry.Motion;
import ellwand.geometry.Outline;
import ellwand.lay.Form;
import ellwand.lay.Heading;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * One way a placement may lie in a band.
 *
 * @param band where
 * @param motion how the drawn piece is turned and turned over, without shift
 * @param outline its cutting line so turned
 * @param lowY least shift across, mm
 * @param highY greatest shift across, mm; equal to the least where the piece lies on a fold edge
 * @param fixedX the only shift along the stretch, mm, where the fold edge lies across
 */
public record Pose(
    Band band,
    Motion motion,
    Heading heading,
    Outline outline,
    double lowY,
    double highY,
    OptionalDouble fixedX) {

  /** Room that rounding may take from an exact fit, mm; far inside the check's tolerance. */
  private static final double EXACT_MM = 1e-6;

  /** How far a fold edge may lean and still lie along or across, mm; the check allows as much. */
  public static final double LEVEL_MM = 0.005;

  /**
   * Every way the placement may lie in the band on its grain or, if it is too wide for that
   * everywhere, turned off it as little as will do; empty if it does not fit.
   */
  public static List<Pose> of(Placement placement, Band band, Set<Heading> headings) {
    return of(placement, band, headings, headings);
  }

  /**
   * The same with headings of its own for a twin that is to be as drawn, too.
   *
   * @param twins how it may head
   */
  public static List<Pose> of(
      Placement placement, Band band, Set<Heading> headings, Set<Heading> twins) {
    List<Pose> poses = new ArrayList<>();
    for (boolean flipped : flips(placement)) {
      for (double turn : placement.wanted().cut().piece().grain().turns(flipped)) {
        Heading heading = Heading.ofTurn(turn, flipped);
        if (headings.contains(heading) && placement.twinLies(turn, flipped, twins)) {
          Motion motion = new Motion(flipped, turn, 0, 0);
          Outline outline = placement.drawn().cutting().moved(motion);
          if (placement.form() == Form.HALF) {
            Stroke fold = placement.drawn().fold().orElseThrow().moved(motion);
            addOnFold(poses, band, motion, heading, outline, fold);
          } else if (outline.box().width() <= band.widthMm() + EXACT_MM) {
            addFree(poses, band, motion, heading, outline);
          } else if (placement.tooWide()) {
            addNarrowed(poses, placement, band, motion, heading, outline);
          }
        }
      }
    }
    return poses;
  }

  private static void addFree(
      List<Pose> poses, Band band, Motion motion, Heading heading, Outline outline) {
    double low = band.lowY() - outline.box().minY();
    double high = band.highY() - outline.box().maxY();
    addDistinct(poses, band, motion, heading, outline, low, high, OptionalDouble.empty());
  }

  private static void addNarrowed(
      List<Pose> poses,
      Placement placement,
      Band band,
      Motion motion,
      Heading heading,
      Outline outline) {
    double most = placement.mostDegrees();
    Turns.narrowed(outline, -most, most, band.widthMm())
        .ifPresent(
            off -> {
              Motion turned = new Motion(motion.flipped(), motion.turnDegrees() + off, 0, 0);
              if (Heading.ofTurn(turned.turnDegrees(), turned.flipped()) == heading) {
                Outline at = placement.drawn().cutting().moved(turned);
                addFree(poses, band, turned, heading, at);
              }
            });
  }

  /** The same placement at another turn, wherever it fits in the band; empty if it does not. */
  public Optional<Pose> at(Placement placement, double turnDegrees) {
    Motion turned = new Motion(motion.flipped(), turnDegrees, 0, 0);
    Outline at = placement.drawn().cutting().moved(turned);
    return at.box().width() > band.widthMm() + EXACT_MM
        ? Optional.empty()
        : Optional.of(turned(turned, at));
  }

  /** The same at another turn, at which it is known to fit. */
  public Pose turned(Motion turned, Outline at) {
    double low = band.lowY() - at.box().minY();
    double high = band.highY() - at.box().maxY();
    return new Pose(band, turned, heading, at, low, Math.max(low, high), fixedX);
  }

  private static List<Boolean> flips(Placement placement) {
    if (placement.form() == Form.HALF) {
      return List.of(false, true);
    }
    return switch (placement.hand()) {
      case AS_DRAWN -> List.of(false);
      case MIRRORED -> List.of(true);
      case FREE -> List.of(false, true);
    };
  }

  private static void addOnFold(
      List<Pose> poses, Band band, Motion motion, Heading heading, Outline outline, Stroke fold) {
    Box box = outline.box();
    if (Math.abs(fold.from().x() - fold.to().x()) <= LEVEL_MM) {
      double foldX = fold.from().x();
      if (band.foldEdges().contains(Side.LOW_X) && box.minX() >= foldX - EXACT_MM) {
        double low = band.lowY() - box.minY();
        double high = band.highY() - box.maxY();
        addDistinct(poses, band, motion, heading, outline, low, high, OptionalDouble.of(-foldX));
      }
    }
    if (Math.abs(fold.from().y() - fold.to().y()) > LEVEL_MM) {
      return;
    }
    double fits = band.widthMm() + EXACT_MM;
    double foldY = fold.from().y();
    if (box.minY() >= foldY - EXACT_MM
        && box.maxY() - foldY <= fits
        && band.foldEdges().contains(Side.LOW_Y)) {
      double shift = band.lowY() - foldY;
      addDistinct(poses, band, motion, heading, outline, shift, shift, OptionalDouble.empty());
    }
    if (box.maxY() <= foldY + EXACT_MM
        && foldY - box.minY() <= fits
        && band.foldEdges().contains(Side.HIGH_Y)) {
      double shift = band.highY() - foldY;
      addDistinct(poses, band, motion, heading, outline, shift, shift, OptionalDouble.empty());
    }
  }

  /** Adds a pose that fits and that no earlier one repeats. */
  private static void addDistinct(
      List<Pose> poses,
      Band band,
      Motion motion,
      Heading heading,
      Outline outline,
      double low,
      double high,
      OptionalDouble fixedX) {
    if (low > high + EXACT_MM) {
      return;
    }
    Pose pose = new Pose(band, motion, heading, outline, low, Math.max(low, high), fixedX);
    if (poses.stream().noneMatch(pose::repeats)) {
      poses.add(pose);
    }
  }

  /** Whether both are the same shape but for a shift that the search makes anyway. */
  private boolean repeats(Pose other) {
    if (fixedX.isPresent() != other.fixedX.isPresent()
        || Math.abs(lowestMm() - other.lowestMm()) > EXACT_MM
        || Math.abs(highestMm() - other.highestMm()) > EXACT_MM
        || outline.points().size() != other.outline.points().size()) {
      return false;
    }
    Box mine = outline.box();
    Box theirs = other.outline.box();
    double dx = theirs.minX() - mine.minX();
    double dy = theirs.minY() - mine.minY();
    return outline.points().stream()
        .allMatch(
            p ->
                other.outline.points().stream()
                    .anyMatch(
                        q ->
                            Math.abs(p.x() + dx - q.x()) < EXACT_MM
                                && Math.abs(p.y() + dy - q.y()) < EXACT_MM));
  }

  /** The lowest place that the piece's near side may have across, mm. */
  private double lowestMm() {
    return outline.box().minY() + lowY;
  }

  private double highestMm() {
    return outline.box().minY() + highY;
  }
}
