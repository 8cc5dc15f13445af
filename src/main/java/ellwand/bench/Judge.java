package ellwand.bench;

import ellwand.geometry.Box;
import ellwand.geometry.Motion;
import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import ellwand.geometry.Region;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Judges a layout by its placed polygons alone; knows nothing of how they were placed. */
final class Judge {

  /** Overlap allowed, as a share of the smaller copy's area. */
  private static final double OVERLAP = 1e-6;

  /** Width to which strips are brought for the overlay, whose grid is fixed in mm. */
  private static final double SCALE = 100_000;

  /** How far a copy may stick out, as a share of the strip's width. */
  private static final double OUTSIDE = 1e-7;

  private Judge() {}

  /** Everything wrong with the layout; empty when it is legal. */
  static List<String> faults(Instance instance, List<PlacedItem> placed) {
    List<String> faults = new ArrayList<>();
    int[] counts = new int[instance.items().size()];
    for (PlacedItem p : placed) {
      counts[p.item()]++;
      Instance.Item item = instance.items().get(p.item());
      if (!item.rotations().contains(p.rotation())) {
        faults.add("item " + p.item() + " is turned by " + p.rotation());
      }
      if (!same(item.outline(), p, instance.width())) {
        faults.add("item " + p.item() + " has changed its shape");
      }
      Box box = p.polygon().box();
      double slack = OUTSIDE * instance.width();
      if (box.minY() < -slack || box.maxY() > instance.width() + slack || box.minX() < -slack) {
        faults.add("item " + p.item() + " sticks out of the strip: " + box);
      }
    }
    for (int i = 0; i < counts.length; i++) {
      if (counts[i] != instance.items().get(i).demand()) {
        faults.add("item " + i + " is laid " + counts[i] + " times");
      }
    }
    faults.addAll(overlaps(placed, SCALE / instance.width()));
    return faults;
  }

  private static boolean same(Outline outline, PlacedItem placed, double width) {
    List<Point> wanted = outline.moved(new Motion(false, placed.rotation(), 0, 0)).points();
    List<Point> got = placed.polygon().points();
    if (wanted.size() != got.size()) {
      return false;
    }
    Point shift = got.get(0).minus(wanted.get(0));
    for (int i = 0; i < got.size(); i++) {
      if (got.get(i).minus(wanted.get(i)).minus(shift).norm() > 1e-9 * width) {
        return false;
      }
    }
    return true;
  }

  private static List<String> overlaps(List<PlacedItem> placed, double scale) {
    PlacedItem[] byStart = placed.toArray(PlacedItem[]::new);
    Box[] boxes = new Box[byStart.length];
    Arrays.sort(
        byStart, (p, q) -> Double.compare(p.polygon().box().minX(), q.polygon().box().minX()));
    Arrays.setAll(boxes, i -> byStart[i].polygon().box());
    List<String> faults = new ArrayList<>();
    for (int i = 0; i < boxes.length; i++) {
      for (int k = i + 1; k < boxes.length && boxes[k].minX() < boxes[i].maxX(); k++) {
        if (boxes[i].touches(boxes[k])) {
          Outline a = byStart[i].polygon().scaled(scale, scale);
          Outline b = byStart[k].polygon().scaled(scale, scale);
          double share = Region.of(a).intersect(Region.of(b)).area() / Math.min(a.area(), b.area());
          if (share > OVERLAP) {
            faults.add(
                "items %d and %d overlap by %.2e of the smaller"
                    .formatted(byStart[i].item(), byStart[k].item(), share));
          }
        }
      }
    }
    return faults;
  }

  /** The strip's length that the polygons themselves take. */
  static double usedLength(List<PlacedItem> placed) {
    return placed.stream().mapToDouble(p -> p.polygon().box().maxX()).max().orElseThrow();
  }
}
