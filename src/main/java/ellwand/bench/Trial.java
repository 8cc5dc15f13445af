package ellwand.bench;

import ellwand.geometry.Motion;
import ellwand.geometry.NoFitUnion;
import ellwand.geometry.Outline;
import ellwand.nest.kernel.Layout;
import ellwand.nest.kernel.Outcome;
import ellwand.nest.kernel.Shape;
import ellwand.nest.kernel.Strip;
import ellwand.nest.kernel.StripForm;
import ellwand.nest.kernel.StripSearch;
import ellwand.work.Request;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** One run of the search on one instance. */
final class Trial {

  private final Instance instance;
  private final List<Shape> shapes = new ArrayList<>();
  private final List<List<StripForm>> copies = new ArrayList<>();

  /** Item of each copy, and the outline of each shape. */
  private final List<Integer> items = new ArrayList<>();

  private final List<Outline> outlines = new ArrayList<>();

  Trial(Instance instance) {
    this.instance = instance;
    for (int i = 0; i < instance.items().size(); i++) {
      Instance.Item item = instance.items().get(i);
      List<StripForm> forms = new ArrayList<>();
      for (double rotation : item.rotations()) {
        Outline outline = item.outline().moved(new Motion(false, rotation, 0, 0));
        Shape shape = shape(outline);
        if (outline.box().width() <= instance.width() * (1 + 1e-9)) {
          forms.add(form(shapes.size(), shape));
        }
        shapes.add(shape);
        outlines.add(outline);
      }
      if (forms.isEmpty()) {
        throw new IllegalArgumentException(
            instance.name() + ": item " + i + " is wider than the strip");
      }
      List<StripForm> shared = List.copyOf(forms);
      for (int k = 0; k < item.demand(); k++) {
        copies.add(shared);
        items.add(i);
      }
    }
  }

  static Result run(Instance instance, Request request) {
    Trial trial = new Trial(instance);
    double area = instance.area();
    List<double[]> trace = new ArrayList<>();
    long began = System.nanoTime();
    StripSearch search = new StripSearch(Strip.open(trial.shapes, trial.copies), NoFitUnion::rings);
    Outcome outcome =
        search.run(
            Optional.empty(),
            request,
            (layout, evaluations) ->
                trace.add(
                    new double[] {
                      (System.nanoTime() - began) / 1e9, area / (instance.width() * layout.length())
                    }));
    double seconds = (System.nanoTime() - began) / 1e9;
    List<PlacedItem> placed = trial.placed(outcome.layout().orElseThrow());
    return new Result(
        instance,
        request.seed(),
        request.threads(),
        seconds,
        outcome.evaluations(),
        List.copyOf(trace),
        placed);
  }

  private StripForm form(int index, Shape shape) {
    double lo = -shape.minY();
    double hi = Math.max(lo, instance.width() - shape.maxY());
    return StripForm.free(index, lo, hi, -shape.minX(), shape.maxX());
  }

  private static Shape shape(Outline outline) {
    double[] flat = new double[2 * outline.points().size()];
    for (int i = 0; i < outline.points().size(); i++) {
      flat[2 * i] = outline.points().get(i).x();
      flat[2 * i + 1] = outline.points().get(i).y();
    }
    return new Shape(flat);
  }

  /**
   * The best layout of one search, which may go on from another.
   *
   * @param start one of this instance, to begin with
   */
  Layout layout(Optional<Layout> start, Request request) {
    StripSearch search = new StripSearch(Strip.open(shapes, copies), NoFitUnion::rings);
    return search.run(start, request, (layout, evaluations) -> {}).layout().orElseThrow();
  }

  List<PlacedItem> placed(Layout layout) {
    List<PlacedItem> placed = new ArrayList<>();
    for (int i = 0; i < layout.poses().size(); i++) {
      Layout.StripPose pose = layout.poses().get(i);
      int shape = copies.get(i).get(pose.form()).shape();
      int item = items.get(i);
      int turn = shape - firstShape(item);
      placed.add(
          new PlacedItem(
              item,
              instance.items().get(item).rotations().get(turn),
              outlines.get(shape).moved(new Motion(false, 0, pose.x(), pose.y()))));
    }
    return placed;
  }

  private int firstShape(int item) {
    int first = 0;
    for (int i = 0; i < item; i++) {
      first += instance.items().get(i).rotations().size();
    }
    return first;
  }
}
