package ellwand.nest;

import ellwand.cloth.Cloth;
import ellwand.cloth.Direction;
import ellwand.cloth.Flaw;
import ellwand.cloth.Fold;
import ellwand.cloth.LaidCloth;
import ellwand.cutting.CutPiece;
import ellwand.geometry.Box;
import ellwand.geometry.Motion;
import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import ellwand.geometry.Region;
import ellwand.lay.Lay;
import ellwand.lay.Wanted;
import ellwand.nest.pose.Stations;
import ellwand.pattern.Cut.How;
import java.util.ArrayList;
import java.util.List;

/**
 * Lays the copies as anyone would who has no program: one after another along the cloth, each at
 * one of its sides, and behind any flaw that is in the way. Knows nothing of zones and plies: it
 * looks at where each copy comes to lie on the open cloth.
 */
final class OneAfterAnother {

  private final Lay lay;
  private final Cloth cloth;
  private final double width;

  private OneAfterAnother(Lay lay) {
    this.lay = lay;
    cloth = lay.cloth();
    width = cloth.usableWidthMm();
  }

  /**
   * How much cloth it takes, mm. Open cloth takes all. Of cloth folded lengthwise, the best of: all
   * folded that goes there and the rest opened, or one so and all others opened. Otherwise, with
   * one folded and all others opened behind the last flaw.
   */
  static double clothMm(Lay lay, Fold fold) {
    OneAfterAnother row = new OneAfterAnother(lay);
    List<List<Wanted>> servings = row.servings(fold);
    double opened = row.opened(servings, 0);
    if (fold == Fold.OPEN) {
      return opened;
    }
    if (fold != Fold.LENGTHWISE) {
      // What is cut from both plies at once takes no more of whole cloth than its two one by one.
      return lay.cloth().flaws().isEmpty()
          ? opened
          : row.behindFlaws(fold) + new OneAfterAnother(whole(lay)).opened(servings, 0);
    }
    double least =
        servings.stream()
            .filter(serving -> row.both(serving))
            .mapToDouble(serving -> row.folded(List.of(serving)))
            .min()
            .orElse(opened);
    return Math.min(least, row.folded(servings));
  }

  /** Only folded lengthwise it matters what is cut at once. */
  private List<List<Wanted>> servings(Fold fold) {
    return Stations.servings(lay, LaidCloth.of(cloth, fold == Fold.LENGTHWISE ? fold : Fold.OPEN));
  }

  private static Lay whole(Lay lay) {
    return new Lay(lay.style(), lay.cloth().whole(), lay.wanted());
  }

  /** Folded or cut across so far on that no flaw lies where one piece lies double. */
  private double behindFlaws(Fold fold) {
    double last =
        cloth.flaws().stream().mapToDouble(f -> f.outline().box().maxX()).max().orElseThrow();
    double longest =
        lay.wanted().stream()
            .mapToDouble(w -> w.cut().cutting().box().length())
            .max()
            .orElseThrow();
    return (fold.doublesLength() ? 2 * (last + longest) : last) + cloth.gapMm();
  }

  /** Whether it is cut from both plies at once. */
  private boolean both(List<Wanted> serving) {
    return serving.get(0).cut().cutting().box().width() <= width / 2
        && (serving.size() == 2 || serving.get(0).how() != How.WHOLE);
  }

  private double opened(List<List<Wanted>> servings, double from) {
    double end = from;
    for (List<Wanted> serving : servings) {
      for (Wanted wanted : serving) {
        end = behind(end, poses(drawn(wanted), false), false);
        if (wanted.how() == How.PAIR) {
          end = behind(end, poses(drawn(wanted), true), false);
        }
      }
    }
    return end;
  }

  /** Those that have room there, and the rest opened. */
  private double folded(List<List<Wanted>> there) {
    double end = 0;
    List<List<Wanted>> rest = new ArrayList<>();
    for (List<Wanted> serving : servings(Fold.LENGTHWISE)) {
      CutPiece cut = serving.get(0).cut();
      if (!there.contains(serving) || cut.cutting().box().width() > width / 2) {
        rest.add(serving);
      } else if (serving.get(0).how() == How.FOLD) {
        boolean pair = serving.size() == 2 && cut.opened().cutting().box().width() <= width / 2;
        for (Wanted ignored : pair ? serving.subList(0, 1) : serving) {
          end = behind(end, pair ? poses(cut.opened().cutting(), false) : halves(cut), true);
        }
      } else {
        List<Outline> poses = new ArrayList<>(poses(cut.cutting(), false));
        poses.addAll(poses(cut.cutting(), true));
        end = behind(end, poses, true);
      }
    }
    return opened(rest, end);
  }

  private static Outline drawn(Wanted wanted) {
    return wanted.how() == How.FOLD ? wanted.cut().opened().cutting() : wanted.cut().cutting();
  }

  /** Drawn on the cloth's low side, the fold edge on y = 0. */
  private List<Outline> halves(CutPiece cut) {
    List<Outline> halves = new ArrayList<>(List.of(cut.cutting()));
    if (cloth.direction() == Direction.ANY_WAY) {
      halves.add(cut.cutting().moved(new Motion(true, 180, 0, 0)));
    }
    return halves;
  }

  private List<Outline> poses(Outline drawn, boolean flipped) {
    List<Outline> poses = new ArrayList<>(List.of(drawn.moved(new Motion(flipped, 0, 0, 0))));
    if (cloth.direction() == Direction.ANY_WAY) {
      poses.add(drawn.moved(new Motion(flipped, 180, 0, 0)));
    }
    return poses;
  }

  /** Where a copy ends that lies as soon behind a place as it may. */
  private double behind(double end, List<Outline> poses, boolean folded) {
    double from = end == 0 ? 0 : end + cloth.gapMm();
    double least = Double.POSITIVE_INFINITY;
    for (Outline pose : poses) {
      Box box = pose.box();
      boolean half = folded && box.minY() == 0 && poses.size() <= 2 && isHalf(pose);
      double room = folded ? width / 2 : width;
      for (double low : half ? List.of(0.0) : List.of(0.0, room - box.width())) {
        double x = from;
        double next = x;
        do {
          x = next;
          next = clear(pose.moved(new Motion(false, 0, x - box.minX(), low - box.minY())), folded);
          next = next < 0 ? x : next;
        } while (next > x);
        least = Math.min(least, x + box.length());
      }
    }
    return least;
  }

  private boolean isHalf(Outline pose) {
    return lay.wanted().stream()
        .filter(w -> w.how() == How.FOLD)
        .anyMatch(w -> Math.abs(w.cut().cutting().area() - pose.area()) < 1e-6);
  }

  /** Where the first flaw that it lies on ends; below 0 if it lies on none. */
  private double clear(Outline at, boolean folded) {
    List<Outline> onOpen = new ArrayList<>();
    double middle = width / 2 + cloth.selvedgeMm();
    if (folded) {
      onOpen.add(moved(at, 1, middle));
      onOpen.add(moved(at, -1, middle));
    } else {
      onOpen.add(moved(at, 1, cloth.selvedgeMm()));
    }
    double behind = -1;
    for (Flaw flaw : cloth.flaws()) {
      for (Outline open : onOpen) {
        Region shared = Region.of(open).intersect(Region.of(flaw.outline()));
        if (shared.area() > 1e-9 * open.area()) {
          // As far as the flaw lies on this part of the cloth at all.
          behind = Math.max(behind, reach(flaw, folded ? side(open, middle) : whole()));
        }
      }
    }
    return behind;
  }

  private Box whole() {
    return new Box(0, cloth.selvedgeMm(), 1e5, cloth.selvedgeMm() + width);
  }

  private Box side(Outline open, double middle) {
    return open.box().centre().y() > middle
        ? new Box(0, middle, 1e5, middle + width / 2)
        : new Box(0, middle - width / 2, 1e5, middle);
  }

  private static double reach(Flaw flaw, Box part) {
    return Region.of(flaw.outline()).intersect(Region.of(part)).box().maxX();
  }

  private static Outline moved(Outline laid, int sign, double from) {
    List<Point> points = new ArrayList<>();
    laid.points().forEach(p -> points.add(new Point(p.x(), from + sign * p.y())));
    return Outline.of(points);
  }
}
