package ellwand.nest.pose;

import ellwand.cloth.Band;
import ellwand.cloth.Cloth;
import ellwand.cloth.Fold;
import ellwand.cloth.LaidCloth;
import ellwand.geometry.Motion;
import ellwand.geometry.Outline;
import ellwand.lay.Lay;
import ellwand.lay.Wanted;
import java.util.List;

/** A piece fits into no zone of the cloth as it lies. */
public final class NoRoomException extends RuntimeException {

  private final String piece;
  private final String size;
  private final String cloth;
  private final double neededMm;
  private final double widestMm;
  private final boolean offRepeat;

  /** As it was told from elsewhere. */
  public NoRoomException(
      String piece,
      String size,
      String cloth,
      double neededMm,
      double widestMm,
      boolean offRepeat) {
    super("piece " + piece + " has no room on cloth " + cloth);
    this.size = size;
    this.offRepeat = offRepeat;
    this.piece = piece;
    this.cloth = cloth;
    this.neededMm = neededMm;
    this.widestMm = widestMm;
  }

  /** It is too wide. */
  public static NoRoomException of(Cloth cloth, LaidCloth laid, Wanted wanted) {
    return of(cloth, laid, wanted, false);
  }

  /** It is not too wide, but no zone has it where in the repeat it asks to be. */
  public static NoRoomException offRepeat(Cloth cloth, LaidCloth laid, Wanted wanted) {
    return of(cloth, laid, wanted, true);
  }

  /** The cloth cannot be folded so at all, so that no piece has any room. */
  public static NoRoomException ofFold(Lay lay, Fold fold) {
    return of(lay.cloth(), new LaidCloth(fold, List.of()), lay.wanted().get(0));
  }

  private static NoRoomException of(Cloth cloth, LaidCloth laid, Wanted wanted, boolean offRepeat) {
    // Where all of the cloth is folded a half piece needs no more room than it has itself.
    boolean half = laid.bands().stream().allMatch(b -> b.plies() == 2 && !b.foldEdges().isEmpty());
    Outline outline =
        wanted.cut().fold().isPresent() && !half
            ? wanted.cut().opened().cutting()
            : wanted.cut().cutting();
    double needed =
        wanted.cut().piece().grain().turns(false).stream()
            .mapToDouble(turn -> outline.moved(new Motion(false, turn, 0, 0)).box().width())
            .min()
            .orElseThrow();
    double widest = laid.bands().stream().mapToDouble(Band::widthMm).max().orElse(0);
    return new NoRoomException(
        wanted.cut().name(), wanted.size(), cloth.name(), needed, widest, offRepeat);
  }

  public String piece() {
    return piece;
  }

  public String size() {
    return size;
  }

  /** Whether it would fit if it did not ask for its place in the cloth's repeat. */
  public boolean offRepeat() {
    return offRepeat;
  }

  public String cloth() {
    return cloth;
  }

  /** How wide the piece lies across the cloth, mm. */
  public double neededMm() {
    return neededMm;
  }

  /** The widest zone there is, mm; 0 if the cloth cannot be folded so. */
  public double widestMm() {
    return widestMm;
  }
}
