package ellwand.nest.stretch;

import ellwand.cloth.KeepOut;
import ellwand.geometry.Box;
import ellwand.geometry.Motion;
import ellwand.geometry.Outline;
import ellwand.geometry.Region;
import ellwand.nest.kernel.Layout;
import ellwand.nest.pose.Way;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What anyone can do: one copy behind the other, each at a side of its band, and behind every flaw
 * that is in the way. Exact where the kernel counts in no-fit polygons of thinned outlines, so that
 * no marker is ever longer than this.
 */
final class SingleFile {

  /** Less of a flaw than this share of it is none; the check allows ten times as much. */
  private static final double HAIR = 1e-7;

  private final StretchTask task;

  private SingleFile(StretchTask task) {
    this.task = task;
  }

  /** Empty where there is nothing to lay. */
  static Optional<Layout> of(StretchTask task) {
    return task.ways().isEmpty() ? Optional.empty() : Optional.of(new SingleFile(task).layout());
  }

  /** A way at a place, and where the copy ends. */
  private record InFile(Layout.StripPose pose, double end) {}

  private Layout layout() {
    List<Layout.StripPose> poses = new ArrayList<>();
    double from = task.beforeMm();
    double end = 0;
    for (List<Way> ways : task.ways()) {
      InFile place = null;
      for (int form = 0; form < ways.size(); form++) {
        Way way = ways.get(form);
        for (double y : List.of(way.lowY(), way.highY())) {
          InFile other = behind(from, form, way, way.y().atOrBelow(y));
          place = place == null || other.end < place.end ? other : place;
        }
      }
      poses.add(place.pose);
      end = place.end;
      from = end + task.gapMm();
    }
    return new Layout(poses, end);
  }

  private InFile behind(double from, int form, Way way, double y) {
    Outline outline = way.pose().outline();
    Box box = outline.box();
    double x = way.x().atOrAbove(from - box.minX());
    for (Optional<KeepOut> met = met(way, outline, x, y);
        met.isPresent();
        met = met(way, outline, x, y)) {
      x = way.x().atOrAbove(met.get().outline().box().maxX() - box.minX());
    }
    return new InFile(new Layout.StripPose(form, x, y), x + box.maxX());
  }

  private Optional<KeepOut> met(Way way, Outline outline, double x, double y) {
    Outline at = outline.moved(new Motion(false, 0, x, y));
    return task.keepOuts().stream()
        .filter(k -> k.zone().equals(way.pose().band().id()))
        .filter(k -> k.outline().box().touches(at.box()))
        .filter(
            k ->
                Region.of(k.outline()).intersect(Region.of(at)).area()
                    > HAIR * Math.min(at.area(), k.outline().area()))
        .findFirst();
  }
}
