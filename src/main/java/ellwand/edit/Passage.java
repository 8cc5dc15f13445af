package ellwand.edit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * What of a drag is open, what is barred, and where that may change. Lengths from its start, mm.
 */
final class Passage {

  private final double lengthMm;
  private final List<Reach> open = new ArrayList<>();
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

  void open(Reach part) {
    open.add(part);
  }

  /** Bars what of a part is on the drag; its ends are where things may change. */
  void bar(double fromMm, double toMm) {
    if (toMm > 0 && fromMm < lengthMm) {
      barred.add(new Reach(fromMm, toMm));
    }
  }

  /** What is open and not barred, cut up wherever things may change. */
  List<Reach> parts() {
    List<Reach> bars = new ArrayList<>(barred);
    bars.sort(Comparator.comparingDouble(Reach::fromMm));
    List<Reach> parts = new ArrayList<>();
    for (Reach room : open) {
      double from = room.fromMm;
      for (Reach bar : bars) {
        if (bar.fromMm > from) {
          add(parts, from, Math.min(bar.fromMm, room.toMm));
        }
        from = Math.max(from, bar.toMm);
      }
      add(parts, from, room.toMm);
    }
    return parts;
  }

  private static void add(List<Reach> parts, double from, double to) {
    if (from <= to) {
      parts.add(new Reach(from, to));
    }
  }
}
