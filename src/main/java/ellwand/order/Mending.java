package ellwand.order;

import java.util.ArrayList;
import java.util.List;

/** Makes any plan keep the tolerance: takes off plies that cut too much, adds lays for the rest. */
final class Mending {

  private final Numbers numbers;
  private final Filling filling;

  Mending(Numbers numbers, Filling filling) {
    this.numbers = numbers;
    this.filling = filling;
  }

  /** A plan whose lays all cut something, within tolerance. */
  List<Spread> mend(List<Spread> plan) {
    List<Spread> mended = new ArrayList<>();
    plan.forEach(spread -> mended.add(new Spread(spread.mix(), spread.turns().clone())));
    takeOffTooMany(mended);
    mended.removeIf(Spread::empty);
    filling.complete(mended);
    return joinEqualMixes(mended);
  }

  private void takeOffTooMany(List<Spread> plan) {
    int[][] sets = numbers.sets(plan);
    for (Spread spread : plan) {
      for (int c = 0; c < sets.length; c++) {
        int off = 0;
        for (int s = 0; s < numbers.sizes.size(); s++) {
          int tooMany = sets[c][s] - numbers.most[c][s];
          if (spread.mix()[s] > 0 && tooMany > 0) {
            off = Math.max(off, Numbers.ceilDiv(tooMany, spread.mix()[s]));
          }
        }
        off = Math.min(off, spread.turns()[c]);
        spread.turns()[c] -= off;
        for (int s = 0; s < numbers.sizes.size(); s++) {
          sets[c][s] -= off * spread.mix()[s];
        }
      }
    }
  }

  private List<Spread> joinEqualMixes(List<Spread> plan) {
    List<Spread> joined = new ArrayList<>();
    for (Spread spread : plan) {
      Spread partner =
          joined.stream()
              .filter(other -> java.util.Arrays.equals(other.mix(), spread.mix()))
              .filter(other -> other.totalTurns() + spread.totalTurns() <= numbers.maxTurns)
              .findFirst()
              .orElse(null);
      if (partner == null) {
        joined.add(spread);
      } else {
        for (int c = 0; c < spread.turns().length; c++) {
          partner.turns()[c] += spread.turns()[c];
        }
      }
    }
    return joined;
  }
}
