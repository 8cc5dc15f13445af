package ellwand.nest;

import ellwand.cloth.Cloth;
import ellwand.cloth.Fold;
import ellwand.cloth.LaidCloth;
import ellwand.cloth.Repeat;
import ellwand.cutting.CutPiece.Stroke;
import ellwand.geometry.Box;
import ellwand.geometry.Motion;
import ellwand.lay.Lay;
import ellwand.lay.Wanted;
import ellwand.nest.pose.Pose;
import ellwand.pattern.Cut;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.DoubleStream;

/** How far a cloth may be worth folding over: as far as a piece in the double zone reaches. */
final class Borders {

  /** Ways to lie that are worth a trial for one kind of fold. */
  private static final int MOST = 4;

  /** Beyond a line by more than rounding. */
  private static final double NEXT_MM = 0.1;

  private Borders() {}

  /**
   * The ways to lie the cloth of a lay in one kind of fold, no wider than it may lie; none where
   * nothing asks for it.
   */
  static List<LaidCloth> of(Lay lay, Fold fold) {
    return all(lay, fold).stream().flatMap(way -> way.within(lay.cloth()).stream()).toList();
  }

  private static List<LaidCloth> all(Lay lay, Fold fold) {
    Cloth cloth = lay.cloth();
    if (fold.alongMiddle()) {
      return lengthwise(cloth, fold);
    }
    if (!fold.hasBorder()) {
      return List.of(LaidCloth.of(cloth, fold));
    }
    double most = LaidCloth.mostBorderMm(cloth, fold);
    Set<Double> borders = new LinkedHashSet<>();
    for (double width : reaches(lay)) {
      // A double fold and its mirror image are the same, so the wider side comes first.
      double border =
          cloth.mirrorFromMm(fold == Fold.DOUBLE ? Math.max(width, most - width) : width);
      // Half pieces may ask for the middle of a bar or for half way between two.
      for (double line : List.of(border, cloth.mirrorFromMm(border + NEXT_MM))) {
        if (LaidCloth.canFold(cloth, fold, line)
            && (line == border || cloth.repeat().isPresent())
            && borders.size() < MOST - 1) {
          borders.add(line);
        }
      }
    }
    double middle = cloth.nearestMirrorMm(most / 2);
    if ((borders.isEmpty() || fold == Fold.DOUBLE) && LaidCloth.canFold(cloth, fold, middle)) {
      borders.add(middle);
    }
    return borders.stream().map(border -> LaidCloth.of(cloth, fold, border)).toList();
  }

  /**
   * On the middle of a bar, and half way between two, each as near the cloth's middle as may be.
   */
  private static List<LaidCloth> lengthwise(Cloth cloth, Fold fold) {
    double middle = cloth.nearestMirrorMm(cloth.usableWidthMm() / 2);
    double step = cloth.repeat().map(Repeat::mirrorStepAcrossMm).orElse(0.0);
    if (step == 0) {
      return List.of(LaidCloth.of(cloth, fold));
    }
    boolean one = cloth.repeat().get().halfDrop();
    double beside = middle < cloth.usableWidthMm() / 2 ? middle + step : middle - step;
    return DoubleStream.of(middle, one ? middle : beside)
        .map(line -> Math.min(line, cloth.usableWidthMm() - line))
        .distinct()
        .mapToObj(width -> LaidCloth.lengthwise(cloth, fold, width))
        .flatMap(Optional::stream)
        .toList();
  }

  /**
   * How far pieces reach from a fold: half pieces first, widest first, then pairs beside them;
   * where there are none, whole pieces, two of which may be cut at once.
   */
  private static List<Double> reaches(Lay lay) {
    TreeSet<Double> halves = new TreeSet<>();
    TreeSet<Double> pairs = new TreeSet<>();
    TreeSet<Double> wholes = new TreeSet<>();
    for (Wanted wanted : lay.wanted()) {
      for (double turn : wanted.cut().piece().grain().turns(false)) {
        Motion motion = new Motion(false, turn, 0, 0);
        Box box = wanted.cut().cutting().moved(motion).box();
        if (wanted.how() == Cut.How.PAIR) {
          pairs.add(rounded(box.width()));
        } else if (wanted.how() == Cut.How.WHOLE) {
          wholes.add(rounded(box.width()));
        } else if (wanted.how() == Cut.How.FOLD) {
          Stroke stroke = wanted.cut().fold().orElseThrow().moved(motion);
          if (Math.abs(stroke.from().y() - stroke.to().y()) <= Pose.LEVEL_MM) {
            halves.add(rounded(box.width()));
          }
        }
      }
    }
    List<Double> reaches = new ArrayList<>(halves.descendingSet());
    if (!halves.isEmpty() && !pairs.isEmpty()) {
      reaches.add(halves.last() + lay.cloth().gapMm() + pairs.last());
    }
    reaches.addAll(pairs.descendingSet());
    if (reaches.isEmpty()) {
      reaches.addAll(wholes.descendingSet());
    }
    return reaches;
  }

  /** Up to a hundredth of a mm, so that nothing is too wide by rounding. */
  private static double rounded(double mm) {
    return Math.ceil(mm * 100) / 100;
  }
}
