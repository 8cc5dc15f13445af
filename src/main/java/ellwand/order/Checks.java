package ellwand.order;

import ellwand.problem.InputException;
import ellwand.problem.Problem;
import java.util.ArrayList;
import java.util.List;

/** What must hold between an order and the marker lengths it is planned with. */
final class Checks {

  private Checks() {}

  /** Every size has a length, and the table holds one garment of it. */
  static void lengths(Order order, MarkerLengths lengths) {
    List<Problem> problems = new ArrayList<>();
    for (String size : order.sizes()) {
      if (!lengths.sizes().contains(size)) {
        problems.add(
            Problem.of(
                "size " + size + " is ordered but has no marker length",
                "Give its length, or correct the size: lengths are known for "
                    + String.join(", ", lengths.sizes().stream().sorted().toList())));
        continue;
      }
      double markerMm = lengths.lengthMm(SizeMix.one(size));
      if (!order.limits().hold(markerMm)) {
        problems.add(
            Problem.of(
                "one garment of size %s needs %.0f mm with end loss, but the table is %.0f mm long"
                    .formatted(
                        size, markerMm + order.limits().endLossMm(), order.limits().tableMm()),
                "Use a longer table, or leave out size " + size));
      }
    }
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
  }

  /** Costs can be reckoned in whole units; a lay for each set costs more than any plan. */
  static void costs(long sets, double dearestSet) {
    if (sets * dearestSet > Long.MAX_VALUE / 4.0) {
      throw new InputException(
          Problem.of("the order costs more than can be reckoned", "Give costs in larger units"));
    }
  }
}
