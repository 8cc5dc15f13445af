package ellwand.nest.stretch;

import ellwand.geometry.Box;
import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import ellwand.lay.Copy;
import ellwand.nest.kernel.Layout;
import ellwand.nest.pose.Placement;
import ellwand.nest.pose.Way;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** A layout of a stretch that lies as near as it can to where the copies of a marker lie. */
final class Traced {

  private Traced() {}

  /** Empty if a seat has no copy. */
  static Optional<Layout> of(StretchTask task, List<Copy> copies) {
    List<Copy> left = new ArrayList<>(copies);
    List<Layout.StripPose> poses = new ArrayList<>();
    double end = 0;
    for (int i = 0; i < task.seats().size(); i++) {
      Placement placement = task.seats().get(i).placement();
      List<Way> ways = task.ways().get(i);
      Optional<Copy> copy =
          left.stream()
              .filter(placement::isMadeBy)
              .min(Comparator.comparingDouble(c -> nearest(ways, c).off));
      if (copy.isEmpty()) {
        return Optional.empty();
      }
      Near near = nearest(ways, copy.get());
      left.remove(copy.get());
      poses.add(near.pose);
      end = Math.max(end, copy.get().outline().box().maxX());
    }
    return poses.isEmpty() ? Optional.empty() : Optional.of(new Layout(poses, end));
  }

  /**
   * A way laid where a copy lies.
   *
   * @param off how far its outline is from the copy's, mm
   */
  private record Near(Layout.StripPose pose, double off) {}

  private static Near nearest(List<Way> ways, Copy copy) {
    return IntStream.range(0, ways.size())
        .mapToObj(form -> near(form, ways.get(form), copy.outline()))
        .min(Comparator.comparingDouble(Near::off))
        .orElseThrow();
  }

  private static Near near(int form, Way way, Outline at) {
    Box box = way.pose().outline().box();
    double x = at.box().minX() - box.minX();
    double y = Math.max(way.lowY(), Math.min(way.highY(), at.box().minY() - box.minY()));
    Point shift = new Point(x, y);
    double off =
        way.pose().outline().points().stream()
            .map(shift::plus)
            .mapToDouble(
                p -> at.points().stream().mapToDouble(p::distance).min().orElse(Double.MAX_VALUE))
            .max()
            .orElse(0);
    return new Near(new Layout.StripPose(form, x, y), off);
  }
}
