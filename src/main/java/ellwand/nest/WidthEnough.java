package ellwand.nest;

import ellwand.cloth.Cloth;
import ellwand.cloth.Fold;
import ellwand.cloth.LaidCloth;
import ellwand.lay.Lay;
import ellwand.nest.choice.FirstPlan;
import ellwand.nest.pose.NoRoomException;
import ellwand.nest.repeat.Phases;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** How wide a cloth has to be so that everything of a lay has room on it. */
public final class WidthEnough {

  /** Cloth is hardly woven wider; our own choice, mm. */
  private static final double WIDEST_MM = 4000;

  private WidthEnough() {}

  /**
   * The least width, as bought, that is enough; empty if no cloth is so wide.
   *
   * @param lay for which its cloth is too narrow
   * @param folds one of which will do
   * @param stepMm of which the width is to be a multiple
   */
  public static OptionalDouble mm(Lay lay, List<Fold> folds, double stepMm) {
    Lay few = oneGarmentOfEachSize(lay);
    double step = Math.floor(lay.cloth().widthMm() / stepMm) + 1;
    for (double width = step * stepMm; width <= WIDEST_MM; width = ++step * stepMm) {
      Cloth wide = lay.cloth().wide(width);
      Lay there = few.on(wide);
      if (folds.stream().anyMatch(fold -> hasRoom(there, fold))) {
        return OptionalDouble.of(width);
      }
    }
    return OptionalDouble.empty();
  }

  /** Whether everything has room on the lay's cloth when that is folded so. */
  public static boolean hasRoom(Lay lay, Fold fold) {
    return lay.cloth().barred(fold).isEmpty() && noRoom(lay, fold).isEmpty();
  }

  /**
   * What has no room on the lay's cloth when that is folded so, where it is widest; empty if
   * everything has.
   */
  public static Optional<NoRoomException> noRoom(Lay lay, Fold fold) {
    NoRoomException least = NoRoomException.ofFold(lay, fold);
    for (LaidCloth way : Borders.of(lay, fold)) {
      try {
        FirstPlan.of(lay, way, new Phases(lay, way));
        return Optional.empty();
      } catch (NoRoomException e) {
        least = e.widestMm() >= least.widestMm() ? e : least;
      }
    }
    return Optional.of(least);
  }

  /** Others of the size need no more room. */
  private static Lay oneGarmentOfEachSize(Lay lay) {
    Map<String, Integer> first = new HashMap<>();
    lay.wanted().forEach(w -> first.putIfAbsent(w.size(), w.garment()));
    return lay.part(lay.wanted().stream().filter(w -> first.get(w.size()) == w.garment()).toList());
  }
}
