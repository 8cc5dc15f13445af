package ellwand.edit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * What of a drag is open, what is barred, and where that may change. Lengths from its start, mm.
 */
final class Passage {

  private static final Comparator<Reach> BY_BEGINNING = Comparator.comparingDouble(Reach::fromMm);

  private final double lengthMm;
  private final List<Reach> barred = new ArrayList<>();

  /** A part of the drag. */
  record Reach(double fromMm, double toMm) {
    double playMm() {
      return toMm - fromMm;
    }
  }

  Passage(double lengthMm) {
    this.lengthMm = lengthMm;
  }

  double lengthMm() {
    return lengthMm;
  }

  /** Bars all that is in none of some parts. */
  void within(List<Reach> parts) {
    double open = -1;
    for (Reach part : parts.stream().sorted(BY_BEGINNING).toList()) {
      if (part.fromMm > open) {
        bar(open, part.fromMm);
      }
      open = Math.max(open, part.toMm);
    }
    bar(open, lengthMm + 1);
  }

  /** Bars what of a part is on the drag; its ends are where things may change. */
  void bar(double fromMm, double toMm) {
    if (toMm > 0 && fromMm < lengthMm) {
      barred.add(new Reach(fromMm, toMm));
    }
  }

  /** What is not barred, cut up wherever things may change. */
  List<Reach> parts() {
    barred.sort(BY_BEGINNING);
    List<Reach> parts = new ArrayList<>();
    double from = 0;
    for (Reach bar : barred) {
      if (bar.fromMm > from) {
        add(parts, from, Math.min(bar.fromMm, lengthMm));
      }
      from = Math.max(from, bar.toMm);
    }
    add(parts, from, lengthMm);
    return parts;
  }

  private static void add(List<Reach> parts, double from, double to) {
    if (from <= to) {
      parts.add(new Reach(from, to));
    }
  }
}
