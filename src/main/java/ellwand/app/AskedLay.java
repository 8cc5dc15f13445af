package ellwand.app;

import ellwand.cloth.Cloth;
import ellwand.cloth.Fold;
import ellwand.cloth.Stock;
import ellwand.cloth.Wishes;
import ellwand.job.Job;
import ellwand.lay.Lay;
import ellwand.lay.Scope;
import ellwand.lay.Wanted;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A lay in the words of its job, from which it can be worked out anew wherever that job is.
 *
 * @param cloth its name
 * @param remnant what is laid on, as the user named or measured it; empty for cloth bought by
 *     length
 * @param widthMm of the cloth as it is laid
 * @param folds that it may lie in
 * @param withinMm how wide it may lie
 * @param flawed whether its flaws count
 * @param price of the job's wishes; empty where these are left aside
 * @param garments whose pieces it is made of, by size
 * @param scope what of the job it holds
 * @param cutForBolt whether pieces were cut as for the cloth that is bought, though laid on another
 * @param part which of all that the garments want of the cloth are laid, from 0; empty for all
 */
public record AskedLay(
    String cloth,
    Optional<String> remnant,
    double widthMm,
    List<Fold> folds,
    double withinMm,
    boolean flawed,
    Optional<Wishes.Price> price,
    Map<String, Integer> garments,
    Scope scope,
    boolean cutForBolt,
    Optional<List<Integer>> part) {

  public AskedLay {
    folds = List.copyOf(folds);
    garments = Collections.unmodifiableMap(new LinkedHashMap<>(garments));
    part = part.map(List::copyOf);
  }

  /** A lay of a job, as {@link #lay} makes it again. */
  public static AskedLay of(Job job, Lay lay) {
    Cloth cloth = lay.cloth();
    Map<String, Integer> garments =
        lay.scope() instanceof Scope.Garments some ? some.garments() : job.garments();
    AskedLay whole =
        new AskedLay(
            cloth.name(),
            cloth.stock().map(Stock::name),
            cloth.widthMm(),
            cloth.folds(),
            cloth.withinMm(),
            !cloth.flaws().isEmpty(),
            cloth.wishes().any() ? Optional.of(cloth.wishes().price()) : Optional.empty(),
            garments,
            lay.scope(),
            false,
            Optional.empty());
    if (!(lay.scope() instanceof Scope.Part)) {
      return whole;
    }
    Optional<List<Integer>> part = part(whole.all(job), lay.wanted());
    if (part.isPresent()) {
      return whole.with(false, part);
    }
    AskedLay bolt = whole.with(true, Optional.empty());
    return bolt.with(true, part(bolt.all(job), lay.wanted()));
  }

  private AskedLay with(boolean bolt, Optional<List<Integer>> some) {
    return new AskedLay(
        cloth, remnant, widthMm, folds, withinMm, flawed, price, garments, scope, bolt, some);
  }

  /** Where all hold what is wanted of them; empty if they do not. */
  private static Optional<List<Integer>> part(Lay all, List<Wanted> wanted) {
    List<Wanted> left = new ArrayList<>(all.wanted());
    List<Integer> part = new ArrayList<>();
    for (Wanted one : wanted) {
      int at = left.indexOf(one);
      if (at < 0) {
        return Optional.empty();
      }
      left.set(at, null);
      part.add(at);
    }
    return Optional.of(part);
  }

  /**
   * The lay made anew.
   *
   * @throws ellwand.problem.InputException if the job has no such cloth or remnant
   */
  public Lay lay(Job job) {
    Lay all = all(job);
    return part.map(some -> all.part(some.stream().map(all.wanted()::get).toList()))
        .orElse(all)
        .of(scope);
  }

  private Lay all(Job job) {
    Cloth bolt = Shelf.cloth(job, cloth);
    Cloth laid = laid(job, bolt);
    return JobLays.of(job.withGarments(garments), cutForBolt ? bolt : laid).on(laid);
  }

  private Cloth laid(Job job, Cloth bolt) {
    Cloth laid =
        remnant
            .map(on -> Shelf.remnant(job, on, Optional.of(cloth)).laidAs(bolt))
            .orElseGet(() -> widthMm == bolt.widthMm() ? bolt : bolt.wide(widthMm));
    return laid.lying(folds)
        .within(withinMm)
        .flawed(flawed ? laid.flaws() : List.of())
        .wishing(price.map(p -> new Wishes(bolt.wishes().asked(), p)).orElse(Wishes.NONE));
  }
}
