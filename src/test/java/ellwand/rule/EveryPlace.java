package ellwand.rule;

import ellwand.cloth.Fold;
import ellwand.cloth.LaidCloth;
import ellwand.cloth.Repeat;
import ellwand.lay.Copy;
import ellwand.lay.Form;
import ellwand.lay.Lay;
import ellwand.lay.Marker;
import ellwand.lay.Wanted;
import ellwand.pattern.Cut.How;
import ellwand.pattern.Match;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Tries every copy of a lay on every place of the repeat, so many mm apart, on open cloth. */
public final class EveryPlace {

  private final Lay lay;
  private final Repeat repeat;
  private final double stepMm;
  private final MatchedMarks matched;
  private final List<List<Placed>> copies = new ArrayList<>();

  private EveryPlace(Lay lay, double stepMm) {
    this.lay = lay;
    this.stepMm = stepMm;
    repeat = lay.cloth().repeat().orElseThrow();
    matched = new MatchedMarks(lay, repeat, LaidCloth.of(lay.cloth(), Fold.OPEN));
    for (Wanted w : lay.wanted()) {
      Form form = w.how() == How.FOLD ? Form.OPENED : Form.WHOLE;
      copies.add(places(Trial.copy(w.cut(), form, "open", false, 0, 0, 0)));
      if (w.how() == How.PAIR) {
        copies.add(places(Trial.copy(w.cut(), form, "open", true, 0, 0, 0)));
      }
    }
  }

  /** Whether there is a place for every copy at which the repeat is kept; overlaps do not count. */
  public static boolean serves(Lay lay, double stepMm) {
    return new EveryPlace(lay, stepMm).serves(new ArrayList<>());
  }

  /** Where one copy may lie by itself. */
  private List<Placed> places(Copy copy) {
    Lay alone = new Lay(lay.style(), lay.cloth(), lay.wanted());
    double column = repeat.acrossMm() * (repeat.halfDrop() ? 2 : 1);
    List<Placed> places = new ArrayList<>();
    for (double x = 0; x < Math.max(stepMm, repeat.alongMm()); x += stepMm) {
      for (double y = 0; y < Math.max(stepMm, column); y += stepMm) {
        Marker marker = Trial.open(alone, 900, Trial.shifted(x, y).apply(copy));
        Inspection inspection = new Inspection(marker, Optional.empty());
        if (InRepeat.RULE.findings(inspection).isEmpty()) {
          places.add(inspection.placed().get(0));
        }
      }
    }
    return places;
  }

  private boolean serves(List<Placed> lying) {
    if (lying.size() == copies.size()) {
      return true;
    }
    for (Placed place : copies.get(lying.size())) {
      lying.add(place);
      if (lying.stream().allMatch(p -> match(p, place) && match(place, p)) && serves(lying)) {
        return true;
      }
      lying.remove(lying.size() - 1);
    }
    return false;
  }

  private boolean match(Placed one, Placed other) {
    for (Match m : lay.matches()) {
      if (m.piece().equals(one.copy().piece())
          && m.otherPiece().equals(other.copy().piece())
          && matched.offMm(m, one, other).orElse(0) > Rule.ROUNDING_MM) {
        return false;
      }
    }
    return true;
  }
}
