package ellwand.edit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * What of a drag is open, what is barred, and where that may change. Lengths from its start, mm.
 */
final class Passage {

  private final double lengthMm;
  private final List<Part> open = new ArrayList<>();
  private final List<Part> barred = new ArrayList<>();

  /** A part of the drag. */
  record Part(double fromMm, double toMm) {
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

  void open(Part part) {
    open.add(part);
  }

  /** Bars what of a part is on the drag; its ends are where things may change. */
  void bar(double fromMm, double toMm) {
    if (toMm > 0 && fromMm < lengthMm) {
      barred.add(new Part(fromMm, toMm));
    }
  }

  /** What is open and not barred, cut up wherever things may change. */
  List<Part> parts() {
    List<Part> bars = new ArrayList<>(barred);
    bars.sort(Comparator.comparingDouble(Part::fromMm));
    List<Part> parts = new ArrayList<>();
    for (Part room : open) {
      double from = room.fromMm;
      for (Part bar : bars) {
        if (bar.fromMm > from) {
          add(parts, from, Math.min(bar.fromMm, room.toMm));
        }
        from = Math.max(from, bar.toMm);
      }
      add(parts, from, room.toMm);
    }
    return parts;
  }

  private static void add(List<Part> parts, double from, double to) {
    if (from <= to) {
      parts.add(new Part(from, to));
    }
  }
}
