package ellwand.order;

import ellwand.cloth.Cloth;
import ellwand.cloth.Direction;
import ellwand.cloth.Fold;
import ellwand.cutting.Cutter;
import ellwand.pattern.Cut;
import ellwand.pattern.Style;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import java.util.ArrayList;
import java.util.List;

/**
 * How the plies of a lay lie upon each other, and what that asks of their number.
 *
 * @param direction which headings the cloth allows
 * @param halfSets whether the marker holds one of each pair only, so that two plies face to face
 *     make its garments once
 * @param oneHanded whether the style has pieces cut once that are not symmetrical: every second ply
 *     face to face cuts them mirrored, so they are right only in couples of plies
 */
public record Spreading(
    Faces faces, PlyHeadings headings, Direction direction, boolean halfSets, boolean oneHanded) {

  /** Which side of the cloth looks up. */
  public enum Faces {
    ALL_UP,
    /** Every second ply turned over. */
    FACE_TO_FACE,
    /** Each ply folded lengthwise, right sides together: two layers at a time. */
    FOLDED;

    /** Unless said: all up, or folded where the cloth may not lie open. */
    public static Faces usual(Cloth cloth) {
      return cloth.folds().contains(Fold.OPEN) ? ALL_UP : FOLDED;
    }

    /** How each ply lies. */
    public Fold fold() {
      return this == FOLDED ? Fold.LENGTHWISE : Fold.OPEN;
    }
  }

  /** Which way along the warp the plies run. */
  public enum PlyHeadings {
    ONE_WAY,
    /** Every second ply runs the other way. */
    ALTERNATING
  }

  /** Every ply right side up and the same way. */
  public static final Spreading PLAIN =
      new Spreading(Faces.ALL_UP, PlyHeadings.ONE_WAY, Direction.ANY_WAY, false, false);

  public Spreading {
    List<Problem> problems = new ArrayList<>();
    if (halfSets && faces != Faces.FACE_TO_FACE) {
      problems.add(
          Problem.of(
              "half sets come out whole only where plies lie face to face",
              "Spread face to face, or put whole garments into the marker"));
    }
    if (headings == PlyHeadings.ALTERNATING && direction == Direction.ONE_WAY) {
      problems.add(
          Problem.of(
              "plies of alternating headings can't be cut from one-way cloth",
              "Spread with all headings one way"));
    }
    if (headings == PlyHeadings.ALTERNATING
        && halfSets
        && direction == Direction.ONE_WAY_PER_GARMENT) {
      problems.add(
          Problem.of(
              "half sets in plies of alternating headings turn the nap within a garment",
              "Spread with all headings one way, or put whole garments into the marker"));
    }
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
  }

  /** Whether a drawn piece of the style is cut in one hand only from a cloth. */
  public static boolean oneHanded(Style style, String cloth) {
    return style.bySize().get(style.sizes().get(0)).drawn().stream()
        .filter(p -> p.cutFrom(cloth).filter(c -> c.how() == Cut.How.WHOLE).isPresent())
        .anyMatch(p -> !Cutter.cut(p, 1, 1).symmetric());
  }

  /** Plies of one colour that must be spread together; a lay has whole multiples of it. */
  public int pliesTogether() {
    return faces == Faces.FOLDED || halfSets || (faces == Faces.FACE_TO_FACE && oneHanded) ? 2 : 1;
  }

  /** How often those plies make each garment of the marker. */
  public int garmentsTogether() {
    return faces == Faces.FOLDED || halfSets ? 1 : pliesTogether();
  }

  /** How many marker lengths of cloth those plies take. */
  public int lengthsTogether() {
    return faces == Faces.FOLDED ? 1 : pliesTogether();
  }
}
