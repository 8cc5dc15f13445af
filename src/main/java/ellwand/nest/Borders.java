package ellwand.nest;

import ellwand.cloth.Cloth;
import ellwand.cloth.Fold;
import ellwand.cloth.LaidCloth;
import ellwand.cutting.CutPiece.Stroke;
import ellwand.geometry.Box;
import ellwand.geometry.Motion;
import ellwand.lay.Lay;
import ellwand.lay.Wanted;
import ellwand.pattern.Cut;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** How far a cloth may be worth folding over: as far as a piece in the double zone reaches. */
final class Borders {

  /** Ways to lie that are worth a trial for one kind of fold. */
  private static final int MOST = 4;

  private static final double LEVEL_MM = 0.005;

  private Borders() {}

  /** The ways to lie the cloth of a lay in one kind of fold; none where nothing asks for it. */
  static List<LaidCloth> of(Lay lay, Fold fold) {
    Cloth cloth = lay.cloth();
    if (!fold.hasBorder()) {
      return List.of(LaidCloth.of(cloth, fold));
    }
    double most = LaidCloth.mostBorderMm(cloth, fold);
    Set<Double> borders = new LinkedHashSet<>();
    for (double width : reaches(lay)) {
      // A double fold and its mirror image are the same, so the wider side comes first.
      double border = fold == Fold.DOUBLE ? Math.max(width, most - width) : width;
      if (border > 0 && border < most && borders.size() < MOST - 1) {
        borders.add(border);
      }
    }
    if ((borders.isEmpty() || fold == Fold.DOUBLE) && most > 0) {
      borders.add(most / 2);
    }
    return borders.stream().map(border -> LaidCloth.of(cloth, fold, border)).toList();
  }

  /** How far pieces reach from a fold: half pieces first, widest first, then pairs beside them. */
  private static List<Double> reaches(Lay lay) {
    TreeSet<Double> halves = new TreeSet<>();
    TreeSet<Double> pairs = new TreeSet<>();
    for (Wanted wanted : lay.wanted()) {
      for (double turn : wanted.cut().piece().grain().turns(false)) {
        Motion motion = new Motion(false, turn, 0, 0);
        Box box = wanted.cut().cutting().moved(motion).box();
        if (wanted.how() == Cut.How.PAIR) {
          pairs.add(rounded(box.width()));
        } else if (wanted.how() == Cut.How.FOLD) {
          Stroke stroke = wanted.cut().fold().orElseThrow().moved(motion);
          if (Math.abs(stroke.from().y() - stroke.to().y()) <= LEVEL_MM) {
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
    return reaches;
  }

  /** Up to a hundredth of a mm, so that nothing is too wide by rounding. */
  private static double rounded(double mm) {
    return Math.ceil(mm * 100) / 100;
  }
}
