package ellwand.nest.pose;

import ellwand.cloth.Cloth;
import ellwand.cutting.CutPiece;
import ellwand.lay.Copy;
import ellwand.lay.Form;
import ellwand.lay.Heading;
import ellwand.lay.Wanted;
import ellwand.pattern.Cut.How;
import ellwand.pattern.Grain;
import java.util.OptionalInt;
import java.util.Set;

/**
 * One placement to be made.
 *
 * @param wanted what it serves (the first of two, where a pair serves two of the same)
 * @param secondGarment whose the second is, if it is another garment's
 * @param drawn the piece as it lies in its form
 * @param hand which hands may be seen from above
 * @param mostDegrees how far it may turn off its grain, either way
 * @param tooWide whether it fits nowhere on its grain, so that it has to turn
 */
public record Placement(
    Wanted wanted,
    OptionalInt secondGarment,
    Form form,
    CutPiece drawn,
    Hand hand,
    double mostDegrees,
    boolean tooWide) {

  /** How far a fold edge may lean and still lie along or across, degrees. */
  private static final double LEVEL_DEGREES = 0.1;

  /** Which hands of a piece may be seen from above. */
  enum Hand {
    AS_DRAWN,
    MIRRORED,
    FREE
  }

  /** Of its outline and form: the whole piece would take long. */
  @Override
  public int hashCode() {
    return 31 * drawn.cutting().hashCode() + form.hashCode();
  }

  static Placement of(Cloth cloth, Wanted wanted, Form form, Hand hand) {
    return new Placement(
        wanted,
        OptionalInt.empty(),
        form,
        form.drawn(wanted.cut()),
        hand,
        mostDegrees(cloth, wanted, form),
        false);
  }

  /** One that yields two of the same, maybe for two garments. */
  static Placement ofTwo(Cloth cloth, Wanted first, Wanted second, Hand hand) {
    Placement pair = of(cloth, first, Form.PAIR, hand);
    return first.garment() == second.garment()
        ? pair
        : new Placement(
            first,
            OptionalInt.of(second.garment()),
            pair.form,
            pair.drawn,
            hand,
            pair.mostDegrees,
            false);
  }

  /** Whether a copy of a marker is what it makes. */
  public boolean isMadeBy(Copy copy) {
    return copy.piece().equals(wanted.cut().name())
        && copy.size().equals(wanted.size())
        && copy.garment() == wanted.garment()
        && copy.form() == form;
  }

  /** Whether it is to yield the same on both plies, each as drawn. */
  public boolean twice() {
    return form == Form.PAIR && wanted.how() != How.PAIR;
  }

  /** Whether a twin that is to be as drawn lies on its grain and heads as it may. */
  boolean twinLies(double turn, boolean flipped, Set<Heading> headings) {
    return !twice() || twinLies(wanted.cut(), turn, flipped, headings);
  }

  /** Whether two without a hand can be cut at once: their twins are turned end for end at times. */
  static boolean cutsTwo(CutPiece cut, Set<Heading> headings) {
    return cut.piece().grain().turns(false).stream()
        .filter(turn -> headings.contains(Heading.ofTurn(turn, false)))
        .anyMatch(turn -> twinLies(cut, turn, false, headings));
  }

  private static boolean twinLies(
      CutPiece cut, double turn, boolean flipped, Set<Heading> headings) {
    double twin = cut.twinTurn(turn, flipped);
    return cut.piece().grain().offDegrees(twin, false) <= LEVEL_DEGREES
        && headings.contains(Heading.ofTurn(twin, false));
  }

  /** The same of a piece that fits nowhere on its grain. */
  Placement turnedToFit() {
    return new Placement(wanted, secondGarment, form, drawn, hand, mostDegrees, true);
  }

  /** What stands on a fold stays on grain, and so does what must meet the bars of a repeat. */
  private static double mostDegrees(Cloth cloth, Wanted wanted, Form form) {
    Grain grain = wanted.cut().piece().grain();
    return form == Form.HALF || grain.anywhere() || cloth.repeat().isPresent()
        ? 0
        : grain.toleranceDegrees().orElse(cloth.grainToleranceDegrees());
  }
}
