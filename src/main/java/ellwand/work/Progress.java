package ellwand.work;

import java.util.Optional;

/** Hears how a search gets on. Called from the searching threads; must return quickly. */
@FunctionalInterface
public interface Progress {

  /** Hears nothing, and lets no mistake of ours pass: a mishap is thrown on. */
  Progress NONE =
      news -> {
        if (news instanceof Mishap mishap) {
          throw mishap.why();
        }
      };

  void hear(News news);

  /** The same without being told when each of several searches ended. */
  default Progress ofSeveral() {
    return news -> {
      if (!(news instanceof Ended)) {
        hear(news);
      }
    };
  }

  /** One event: something better than all before in the same search, or a part of it failed. */
  sealed interface News {

    /** The cloth that is worked on, by name; empty where an order names none. */
    String cloth();

    /** Wall-clock seconds since the search began. */
    double seconds();

    /** Part of the effort used up, 0 to 1. */
    double share();
  }

  /**
   * A legal marker that takes less cloth.
   *
   * @param fold how the cloth lies, as {@code Fold} names it
   * @param mix in an order the garments that the marker holds, such as {@code 2 x 38, 1 x 40}
   * @param clothMm length of cloth it takes, mm
   * @param cost of what has to be bought for it, with its currency; empty where nobody said
   */
  record Shorter(
      String cloth,
      String fold,
      Optional<String> mix,
      double seconds,
      double share,
      double clothMm,
      Optional<String> cost)
      implements News {

    public Shorter(String cloth, String fold, double seconds, double share, double clothMm) {
      this(cloth, fold, Optional.empty(), seconds, share, clothMm, Optional.empty());
    }

    /** The same as a marker of an order. */
    public Shorter of(String garments) {
      return new Shorter(cloth, fold, Optional.of(garments), seconds, share, clothMm, cost);
    }

    /** The same with its price. */
    public Shorter costing(String money) {
      return new Shorter(cloth, fold, mix, seconds, share, clothMm, Optional.of(money));
    }

    /** The same as a part of a longer search. */
    public Shorter after(double secondsInAll, double shareOfAll) {
      return new Shorter(cloth, fold, mix, secondsInAll, shareOfAll, clothMm, cost);
    }
  }

  /**
   * The search for a marker has ended since it no longer paid.
   *
   * @param gainSeconds when the last gain was made, s since the search began
   */
  record Ended(String cloth, double seconds, double share, double gainSeconds) implements News {}

  /**
   * A cut-order plan that costs less, or how far planning has come with the best so far.
   *
   * @param lays how many it has
   * @param cost of lays and cloth as bought, in the order's currency
   * @param clothMm length of cloth that all plies take, mm
   */
  record Cheaper(String cloth, double seconds, double share, int lays, double cost, double clothMm)
      implements News {

    /** The same of a cloth with a name. */
    public Cheaper on(String named) {
      return new Cheaper(named, seconds, share, lays, cost, clothMm);
    }
  }

  /**
   * A part of a search failed by a mistake of ours; what was found besides is kept.
   *
   * @param part what was tried: a way to lie the cloth, turning, the cutter's wishes
   */
  record Mishap(String cloth, double seconds, double share, String part, RuntimeException why)
      implements News {}
}
