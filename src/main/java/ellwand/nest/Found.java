package ellwand.nest;

import ellwand.cloth.Band;
import ellwand.cloth.LaidCloth;
import ellwand.cloth.Zone;
import ellwand.geometry.Motion;
import ellwand.lay.Copy;
import ellwand.lay.Lay;
import ellwand.lay.Marker;
import ellwand.nest.StretchTask.Seat;
import ellwand.nest.kernel.Layout;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A legal answer to a decision: a layout for each stretch.
 *
 * @param stretches in the cloth's order; one on which nothing lies has no layout
 */
record Found(Decision decision, List<Placed> stretches) {

  /**
   * One stretch with its layout.
   *
   * @param lengths how many lengths of cloth it takes
   */
  record Placed(StretchTask task, int lengths, Optional<Layout> layout) {

    double clothMm() {
      return lengths * lengthMm();
    }

    double lengthMm() {
      return layout.map(Layout::length).orElse(0.0);
    }

    private Placed with(Layout better) {
      return new Placed(task, lengths, Optional.of(better));
    }

    private void addCopies(Layout layout, double fromX, List<Copy> copies) {
      for (int i = 0; i < task.seats().size(); i++) {
        Seat seat = task.seats().get(i);
        Layout.Pose at = layout.poses().get(i);
        Pose pose = task.poses().get(i).get(at.form());
        Motion motion = pose.motion().shifted(fromX + at.x(), at.y());
        copies.add(
            new Copy(
                seat.request().wanted().cut().name(),
                seat.request().wanted().size(),
                seat.request().wanted().garment(),
                seat.request().form(),
                seat.band().id(),
                pose.heading(),
                motion,
                seat.request().drawn().cutting().moved(motion)));
      }
    }
  }

  Found {
    stretches = List.copyOf(stretches);
  }

  /** In cloth, which is what counts. */
  double clothMm() {
    return stretches.stream().mapToDouble(Placed::clothMm).sum();
  }

  Found with(int stretch, Layout layout) {
    List<Placed> changed = new ArrayList<>(stretches);
    changed.set(stretch, stretches.get(stretch).with(layout));
    return new Found(decision, changed);
  }

  /** The marker it makes: stretches one after another, those that are empty left out. */
  Marker marker(Lay lay, LaidCloth cloth, Marker.Search search) {
    List<Zone> zones = new ArrayList<>();
    List<Copy> copies = new ArrayList<>();
    double fromX = 0;
    for (int i = 0; i < stretches.size(); i++) {
      Placed placed = stretches.get(i);
      if (placed.layout().isPresent()) {
        double toX = fromX + placed.lengthMm();
        if (lay.cloth().stock().isPresent() && fromX + placed.lengthMm() == clothMm()) {
          // All of a remnant is on the table, also what is left of it.
          toX = Math.max(toX, lay.cloth().lengthMm());
        }
        for (Band band : cloth.stretches().get(i)) {
          zones.add(band.zone(fromX, toX));
        }
        placed.addCopies(placed.layout().get(), fromX, copies);
        fromX = toX;
      }
    }
    return new Marker(lay, cloth.fold(), zones, copies, search);
  }
}
