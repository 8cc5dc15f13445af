package ellwand.app;

import ellwand.cloth.Cloth;
import ellwand.cloth.Fold;
import ellwand.figures.Buying;
import ellwand.figures.Figures;
import ellwand.figures.FoldTried;
import ellwand.job.Job;
import ellwand.lay.Lay;
import ellwand.lay.Marker;
import ellwand.nest.Carried;
import ellwand.nest.MarkerListener;
import ellwand.nest.Nester;
import ellwand.nest.Tried;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import ellwand.rule.Check;
import ellwand.units.Unit;
import ellwand.work.Request;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One cloth's lay tried in every way in which the cloth may lie.
 *
 * @param marker the one that takes least cloth, or what serves the cutter's wishes in its place;
 *     empty if a piece fits in no way
 * @param shortest the one that takes least cloth
 * @param tried what each way takes
 * @param all the same with their markers
 */
record Folded(
    Lay lay,
    Optional<Marker> marker,
    Optional<Marker> shortest,
    List<FoldTried> tried,
    List<Tried> all) {

  /**
   * Tries every fold of the cloth.
   *
   * @param unit that lengths are told in
   * @throws IllegalStateException if the marker breaks a hard rule, which is a bug of ours
   */
  static Folded make(Lay lay, Unit unit, Request request, Hands hands) {
    return of(lay, hands.nest(lay, lay.cloth().possibleFolds(), request), unit);
  }

  /**
   * Tries some folds only, by this process, with somebody who hears the markers on the way.
   *
   * @param folds in which the cloth can be laid
   */
  static Folded make(
      Lay lay, List<Fold> folds, Unit unit, Request request, MarkerListener listener) {
    return of(lay, Nester.nest(lay, folds, request, listener), unit);
  }

  /** The same, but nothing longer than what another found for the lay on other cloth. */
  Folded noLongerThan(Folded other, Unit unit) {
    return of(lay, Carried.onto(lay, all, other.all), unit);
  }

  /** The same with what is found from the best marker on, where that was carried over. */
  Folded goneOn(Unit unit, Request request, Hands hands) {
    Optional<Tried> best =
        all.stream()
            .filter(t -> t.carried() && t.marker().isPresent() && t.marker().equals(shortest))
            .findFirst();
    return best.flatMap(t -> hands.goOn(t.marker().get(), request))
        .map(
            shorter ->
                of(
                    lay,
                    all.stream().map(t -> t == best.get() ? t.with(shorter) : t).toList(),
                    unit))
        .orElse(this);
  }

  private static Folded of(Lay lay, List<Tried> tried, Unit unit) {
    Cloth cloth = lay.cloth();
    Optional<Marker> best = Tried.shortest(tried);
    List<FoldTried> figures = new ArrayList<>();
    for (Fold fold : cloth.folds()) {
      Optional<Tried> one = tried.stream().filter(t -> t.fold() == fold).findFirst();
      figures.add(foldTried(cloth, fold, one, best, unit));
    }
    Optional<Marker> pleasing = tried.stream().flatMap(t -> t.pleasing().stream()).findFirst();
    return new Folded(
        lay, pleasing.or(() -> best).map(Check::passed), best.map(Check::passed), figures, tried);
  }

  /**
   * The marker to cut.
   *
   * @throws InputException if a piece fits in no way
   */
  Marker best(Job job, Unit unit) {
    return marker.orElseThrow(
        () -> new InputException(NoRoom.problem(lay, all, unit).at(job.origin().path(), 0)));
  }

  /**
   * Figures of the best, beside those of the other ways of laying and of doing without wishes.
   *
   * @param cautions sentences that concern this cloth or its pieces
   */
  Figures figures(Marker best, List<String> cautions) {
    return Figures.of(best, cautions, tried.size() > 1 ? tried : List.of(), shortest);
  }

  private static FoldTried foldTried(
      Cloth cloth, Fold fold, Optional<Tried> tried, Optional<Marker> best, Unit unit) {
    Optional<Marker> marker = tried.flatMap(Tried::marker);
    if (marker.isPresent()) {
      double length = marker.get().clothLengthMm();
      return new FoldTried(
          fold,
          marker.get().lengthMm(),
          length,
          Buying.lengthMm(cloth, length),
          "",
          best.filter(m -> fold == Fold.OPEN && tried.get().isLongerThan(m))
              .flatMap(m -> Carried.inTheWay(m, unit))
              .orElse(""));
    }
    String reason =
        cloth
            .barred(fold)
            .map(Problem::clause)
            .or(() -> tried.flatMap(Tried::noRoom).map(e -> NoRoom.clause(e, unit)))
            .orElse("the search was stopped before it was tried");
    return new FoldTried(fold, 0, 0, 0, reason);
  }
}
