package ellwand.nest.tidy;

import ellwand.cloth.Zone;
import ellwand.geometry.Box;
import ellwand.geometry.Motion;
import ellwand.geometry.Outline;
import ellwand.lay.Copy;
import ellwand.lay.Marker;
import ellwand.nest.kernel.Layout;
import ellwand.nest.kernel.NoFit;
import ellwand.nest.kernel.Obstacle;
import ellwand.nest.kernel.Shape;
import ellwand.nest.kernel.Strip;
import ellwand.nest.kernel.StripForm;
import ellwand.nest.kernel.StripSearch;
import ellwand.nest.stretch.StretchTask;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.DoubleStream;

/**
 * One stretch of a marker in the kernel's terms. What is pinned, or can lie nowhere as it is
 * turned, is an obstacle.
 *
 * @param copies those that may move, by their places in the marker
 * @param start as they lie, brought back to where they may
 * @param search on their strip
 */
record Stretch(double fromX, List<Integer> copies, Layout start, StripSearch search) {

  /** Empty if nothing may move there. */
  static Optional<Stretch> of(Stretches all, int number, Drawn drawn, NoFit noFit) {
    Marker marker = all.marker();
    List<Zone> zones = all.zones(number);
    Builder builder =
        new Builder(marker.lay().cloth().gapMm(), zones.get(0).box().minX(), all.beforeMm(number));
    all.copies(number)
        .forEach(
            i -> {
              Copy copy = marker.copies().get(i);
              Optional<Room> room =
                  all.pinned().contains(i)
                      ? Optional.empty()
                      : Room.of(marker, drawn, copy, marker.zone(copy.zone()));
              room.ifPresentOrElse(
                  r -> builder.add(i, copy, drawn.turned(copy).orElseThrow(), r),
                  () -> builder.bar(copy.outline(), 2 * builder.gapMm));
            });
    all.keepOuts(number).forEach(k -> builder.bar(k.outline(), 0));
    return builder.stretch(all.mostMm(number), noFit);
  }

  /** The marker with its copies as a layout has them. */
  Marker laid(Marker marker, Drawn drawn, Layout layout) {
    List<Copy> laid = new ArrayList<>(marker.copies());
    for (int i = 0; i < copies.size(); i++) {
      Layout.StripPose pose = layout.poses().get(i);
      Copy copy = laid.get(copies.get(i));
      laid.set(copies.get(i), drawn.at(copy, fromX + pose.x(), pose.y()));
    }
    return marker.with(laid);
  }

  /** Collects shapes and forms; copies that may be exchanged share their forms. */
  private static final class Builder {

    private final double gapMm;
    private final double fromX;
    private final double beforeMm;
    private final Map<Outline, Integer> indices = new HashMap<>();
    private final List<Shape> shapes = new ArrayList<>();
    private final Map<StripForm, List<StripForm>> forms = new HashMap<>();
    private final List<Integer> copies = new ArrayList<>();
    private final List<List<StripForm>> formsOf = new ArrayList<>();
    private final List<Layout.StripPose> poses = new ArrayList<>();
    private final List<Obstacle> obstacles = new ArrayList<>();
    private double end;

    Builder(double gapMm, double fromX, double beforeMm) {
      this.gapMm = gapMm;
      this.fromX = fromX;
      this.beforeMm = beforeMm;
    }

    void add(int index, Copy copy, Outline turned, Room room) {
      Box box = turned.box();
      StripForm form =
          new StripForm(
              indices.computeIfAbsent(turned, this::shape),
              room.lowY(),
              room.highY(),
              beforeMm - box.minX(),
              box.maxX(),
              room.alongX(),
              room.alongY());
      copies.add(index);
      formsOf.add(forms.computeIfAbsent(form, List::of));
      double x = Math.max(form.left(), copy.motion().x() - fromX);
      double y = Math.max(room.lowY(), Math.min(room.highY(), copy.motion().y()));
      poses.add(new Layout.StripPose(0, x, y));
      end = Math.max(end, x + form.right());
    }

    private int shape(Outline outline) {
      return add(new Shape(flat(StretchTask.grown(outline, gapMm))).bare(flat(outline)));
    }

    private int add(Shape shape) {
      shapes.add(shape);
      return shapes.size() - 1;
    }

    private static double[] flat(Outline outline) {
      return outline.points().stream()
          .flatMapToDouble(p -> DoubleStream.of(p.x(), p.y()))
          .toArray();
    }

    void bar(Outline outline, double twiceMm) {
      Outline at = outline.moved(new Motion(false, 0, -fromX, 0));
      int shape = add(new Shape(flat(StretchTask.grown(at, twiceMm))));
      obstacles.add(new Obstacle(shape, 0, 0));
    }

    Optional<Stretch> stretch(double mostMm, NoFit noFit) {
      if (copies.isEmpty()) {
        return Optional.empty();
      }
      Strip strip = new Strip(shapes, formsOf, obstacles, mostMm);
      return Optional.of(
          new Stretch(fromX, copies, new Layout(poses, end), new StripSearch(strip, noFit)));
    }
  }
}
