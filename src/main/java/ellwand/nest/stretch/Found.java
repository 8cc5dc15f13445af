package ellwand.nest.stretch;

import ellwand.cloth.Band;
import ellwand.cloth.LaidCloth;
import ellwand.cloth.Stock;
import ellwand.cloth.Zone;
import ellwand.geometry.Motion;
import ellwand.lay.Copy;
import ellwand.lay.Lay;
import ellwand.lay.Marker;
import ellwand.nest.kernel.Layout;
import ellwand.nest.pose.Pose;
import ellwand.nest.stretch.StretchTask.Seat;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A legal answer to a decision: a layout for each stretch.
 *
 * @param stretches in the cloth's order; one on which nothing lies has no layout
 */
public record Found(Decision decision, List<LaidStretch> stretches) {

  /**
   * One stretch with its layout.
   *
   * @param lengths how many lengths of cloth it takes
   * @param reservedMm how much of the table it is given: on cloth with flaws maybe more than it
   *     takes, since what lies behind it lies where the flaws let it; on cloth with bars whole
   *     repeats, so that what lies behind it meets them as it was laid on them
   */
  public record LaidStretch(
      StretchTask task, int lengths, double reservedMm, Optional<Layout> layout) {

    public double lengthMm() {
      return layout.map(Layout::length).orElse(0.0);
    }

    private LaidStretch with(Layout better) {
      return with(task, better);
    }

    /** The same with a layout of a task whose copies may lie in other ways. */
    public LaidStretch with(StretchTask other, Layout better) {
      double reserved = task.cloth().wholeRepeatsMm(better.length());
      return new LaidStretch(
          other,
          lengths,
          task.measured() ? Math.max(reservedMm, reserved) : reserved,
          Optional.of(better));
    }

    private void addCopies(Layout layout, double fromX, List<Copy> copies) {
      for (int i = 0; i < task.seats().size(); i++) {
        Seat seat = task.seats().get(i);
        Layout.StripPose at = layout.poses().get(i);
        Pose pose = task.ways().get(i).get(at.form()).pose();
        Motion motion = pose.motion().shifted(fromX + at.x(), at.y());
        copies.add(
            new Copy(
                seat.placement().wanted().cut().name(),
                seat.placement().wanted().size(),
                seat.placement().wanted().garment(),
                seat.placement().secondGarment(),
                seat.placement().form(),
                pose.band().id(),
                pose.heading(),
                motion,
                seat.placement().drawn().cutting().moved(motion)));
      }
    }
  }

  public Found {
    stretches = List.copyOf(stretches);
  }

  /** In cloth, which is what counts. */
  public double clothMm() {
    return IntStream.range(0, stretches.size()).mapToDouble(this::clothMm).sum();
  }

  /** What a stretch adds to that: the last one only as far as it is taken, once. */
  public double clothMm(int stretch) {
    LaidStretch placed = stretches.get(stretch);
    double table = last(stretch) ? placed.lengthMm() : placed.reservedMm();
    return (placed.lengths() - 1) * placed.reservedMm() + table;
  }

  private boolean last(int stretch) {
    return stretches.stream().skip(stretch + 1L).allMatch(p -> p.layout().isEmpty());
  }

  public Found with(int stretch, Layout layout) {
    List<LaidStretch> changed = new ArrayList<>(stretches);
    changed.set(stretch, stretches.get(stretch).with(layout));
    return new Found(decision, changed);
  }

  public Found with(int stretch, LaidStretch better) {
    List<LaidStretch> changed = new ArrayList<>(stretches);
    changed.set(stretch, better);
    return new Found(decision, changed);
  }

  /** The marker it makes: stretches one after another, those that are empty left out. */
  public Marker marker(Lay lay, LaidCloth cloth, Marker.Search search) {
    List<Zone> zones = new ArrayList<>();
    List<Copy> copies = new ArrayList<>();
    double stock = lay.cloth().stock().map(Stock::lengthMm).orElse(0.0);
    double fromX = 0;
    for (int i = 0; i < stretches.size(); i++) {
      LaidStretch placed = stretches.get(i);
      if (placed.layout().isPresent()) {
        boolean doubled = placed.lengths() > 1;
        double toX = fromX + (last(i) && !doubled ? placed.lengthMm() : placed.reservedMm());
        if (last(i) && !doubled) {
          // All of a remnant is on the table, also what is left of it.
          toX = Math.max(toX, stock - LaidCloth.acrossMm(cloth.fold(), zones));
        }
        for (Band band : cloth.stretches().get(i)) {
          zones.add(band.zone(fromX, toX));
        }
        placed.addCopies(placed.layout().get(), fromX, copies);
        if (last(i) && doubled && stock > 2 * toX && i + 1 < stretches.size()) {
          for (Band band : cloth.stretches().get(i + 1)) {
            zones.add(band.zone(toX, stock - toX));
          }
        }
        fromX = toX;
      }
    }
    return new Marker(lay, cloth.fold(), zones, copies, Optional.of(search));
  }
}
