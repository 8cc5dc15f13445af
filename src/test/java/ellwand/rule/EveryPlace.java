package ellwand.rule;

import ellwand.cloth.Fold;
import ellwand.cloth.LaidCloth;
import ellwand.cloth.Repeat;
import ellwand.geometry.Motion;
import ellwand.lay.Copy;
import ellwand.lay.Form;
import ellwand.lay.Lay;
import ellwand.lay.Marker;
import ellwand.lay.Wanted;
import ellwand.pattern.Cut.How;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Tries every copy of a lay on every place of the repeat, so many mm apart, on open cloth. Where
 * the repeat mirrors, both of a pair lie alike in it, as they do on a fold.
 */
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
    EveryPlace every = new EveryPlace(lay, stepMm);
    if (every.copies.stream().anyMatch(List::isEmpty)) {
      return false;
    }
    List<List<Placed>> left = new ArrayList<>(every.copies);
    while (!left.isEmpty()) {
      if (!every.serves(every.together(left))) {
        return false;
      }
    }
    return true;
  }

  /** Takes out copies that are sewn together, each with one before it. */
  private List<List<Placed>> together(List<List<Placed>> left) {
    List<List<Placed>> together = new ArrayList<>(List.of(left.remove(0)));
    for (int i = 0; i < together.size(); i++) {
      Placed one = together.get(i).get(0);
      for (List<Placed> other : List.copyOf(left)) {
        if (sewn(one, other.get(0)) || sewn(other.get(0), one)) {
          together.add(other);
          left.remove(other);
        }
      }
    }
    return together;
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

  /**
   * Takes out places that go with none of another copy first, or trying all would take for ever.
   */
  private boolean serves(List<List<Placed>> together) {
    int n = together.size();
    boolean[][][][] fits = new boolean[n][n][][];
    List<List<Integer>> possible = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        fits[i][j] = fits(together.get(i), together.get(j));
      }
      boolean[][] itself = fits[i][i];
      possible.add(
          IntStream.range(0, itself.length)
              .filter(a -> itself[a][a])
              .boxed()
              .collect(Collectors.toCollection(ArrayList::new)));
    }
    boolean fewer = true;
    while (fewer) {
      fewer = false;
      for (int i = 0; i < n; i++) {
        for (int j = 0; j < n; j++) {
          boolean[][] both = fits[i][j];
          List<Integer> others = possible.get(j);
          if (i != j) {
            fewer |= possible.get(i).removeIf(a -> others.stream().noneMatch(b -> both[a][b]));
          }
        }
      }
    }
    return serves(fits, possible, new int[n], 0);
  }

  private static boolean serves(
      boolean[][][][] fits, List<List<Integer>> possible, int[] lying, int count) {
    if (count == lying.length) {
      return true;
    }
    for (int place : possible.get(count)) {
      lying[count] = place;
      if (IntStream.range(0, count).allMatch(i -> fits[i][count][lying[i]][place])
          && serves(fits, possible, lying, count + 1)) {
        return true;
      }
    }
    return false;
  }

  /** Which places of a copy go with which of another, or with themselves. */
  private boolean[][] fits(List<Placed> ones, List<Placed> others) {
    boolean[][] fits = new boolean[ones.size()][others.size()];
    Placed one = ones.get(0);
    Placed other = others.get(0);
    boolean sewn = sewn(one, other) || sewn(other, one);
    for (int a = 0; a < fits.length; a++) {
      for (int b = 0; b < fits[a].length; b++) {
        fits[a][b] =
            !sewn || match(ones.get(a), others.get(b)) && match(others.get(b), ones.get(a));
      }
    }
    return fits;
  }

  private boolean match(Placed one, Placed other) {
    return off(one, other).allMatch(mm -> mm.orElse(0) <= Rule.ROUNDING_MM);
  }

  private boolean sewn(Placed one, Placed other) {
    return off(one, other).anyMatch(OptionalDouble::isPresent);
  }

  private Stream<OptionalDouble> off(Placed one, Placed other) {
    return Stream.concat(
        lay.matches().stream()
            .filter(m -> m.piece().equals(one.copy().piece()))
            .filter(m -> m.otherPiece().equals(other.copy().piece()))
            .map(m -> matched.offMm(m, one, other)),
        Stream.of(pair(one.copy().motion(), other.copy().motion()))
            .filter(p -> one.copy().piece().equals(other.copy().piece())));
  }

  /** How far both of a pair are from lying alike. */
  private OptionalDouble pair(Motion one, Motion other) {
    double middle = repeat.startAcrossMm() - lay.cloth().selvedgeMm();
    return one.flipped() == other.flipped() || !repeat.evenAcross()
        ? OptionalDouble.empty()
        : OptionalDouble.of(
            repeat.offMm(
                repeat.halfDrop() ? one.x() - other.x() : 0,
                one.y() - middle + other.y() - middle));
  }
}
