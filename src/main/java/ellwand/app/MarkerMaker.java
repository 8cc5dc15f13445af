package ellwand.app;

import ellwand.cloth.Cloth;
import ellwand.cloth.Fold;
import ellwand.cloth.Wishes;
import ellwand.file.Job;
import ellwand.file.OrderJob;
import ellwand.lay.Lay;
import ellwand.lay.Marker;
import ellwand.nest.Nester;
import ellwand.nest.NoRoomException;
import ellwand.order.AreaLengths;
import ellwand.order.SizeMix;
import ellwand.order.Spreading;
import ellwand.pattern.InputException;
import ellwand.pattern.Problem;
import ellwand.units.Unit;
import ellwand.work.Effort;
import ellwand.work.Progress;
import ellwand.work.Stop;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Makes the markers of an order, each size mix once. */
final class MarkerMaker {

  private final Job job;
  private final Cloth cloth;
  private final Fold fold;
  private final Unit unit;
  private final SearchOptions options;
  private final Stop stop;
  private final Progress progress;
  private final Map<SizeMix, Marker> made = new LinkedHashMap<>();

  MarkerMaker(OrderJob order, Unit unit, SearchOptions options, Stop stop, Progress progress) {
    OrderJob.Garments garments = order.style().orElseThrow();
    this.job = garments.job();
    // A plan wants the shortest markers.
    this.cloth = garments.cloth().wishing(Wishes.NONE);
    this.fold =
        order.order().spreading().faces() == Spreading.Faces.FOLDED ? Fold.LENGTHWISE : Fold.OPEN;
    this.unit = unit;
    this.options = options;
    this.stop = stop;
    this.progress = progress;
  }

  /** What the order's markers may come to, before any is made. */
  AreaLengths estimate(List<String> sizes) {
    Map<String, AreaLengths.Garment> bySize = new LinkedHashMap<>();
    for (String size : sizes) {
      Lay one = lay(SizeMix.one(size));
      double longest =
          one.wanted().stream()
              .mapToDouble(w -> w.cut().cutting().box().length())
              .max()
              .orElseThrow(() -> nothingToCut(size));
      bySize.put(size, new AreaLengths.Garment(one.wantedAreaMm2(), longest));
    }
    return new AreaLengths(bySize, cloth.usableWidthMm());
  }

  private InputException nothingToCut(String size) {
    return new InputException(
        Problem.of(
                "no piece of size " + size + " is cut from cloth " + cloth.name(),
                "Name another cloth with cloth: in the order")
            .at(job.path().toString(), 0));
  }

  Lay lay(SizeMix mix) {
    return Lays.of(job.withGarments(mix.garments()), cloth);
  }

  /** Those made so far. */
  Map<SizeMix, Marker> made() {
    return made;
  }

  boolean has(SizeMix mix) {
    return made.containsKey(mix);
  }

  /**
   * Makes markers, sharing the effort by how many garments they hold.
   *
   * @param share of the whole effort, for all of them
   */
  void make(List<SizeMix> mixes, double share) {
    int garments = mixes.stream().mapToInt(SizeMix::count).sum();
    for (SizeMix mix : mixes) {
      Effort effort = options.effort().part(share * mix.count() / garments);
      made.put(mix, marker(mix, effort));
    }
  }

  private Marker marker(SizeMix mix, Effort effort) {
    Progress named =
        news ->
            progress.hear(
                new Progress.News("marker of " + mix, news.seconds(), news.share(), news.bestMm()));
    try {
      Marker marker =
          Nester.nest(lay(mix), fold, effort, options.seed(), options.threads(), stop, named);
      checkStacks(marker);
      return LayRun.checked(marker);
    } catch (NoRoomException e) {
      throw new InputException(NoRoom.problem(lay(mix), e, unit).at(job.path().toString(), 0));
    }
  }

  /** Folded plies are spread on one another whole: no part of them can be opened. */
  private void checkStacks(Marker marker) {
    if (fold == Fold.LENGTHWISE) {
      marker.copies().stream()
          .filter(c -> marker.zone(c.zone()).plies() == 1)
          .findFirst()
          .ifPresent(
              c -> {
                throw new InputException(
                    Problem.inPiece(
                            c.piece(),
                            "it does not fit on the folded cloth in size " + c.size(),
                            "Spread the cloth open: faces: all up, or face to face")
                        .at(job.path().toString(), 0));
              });
    }
  }
}
