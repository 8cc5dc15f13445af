package ellwand.pattern;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A piece with an outline, as its maker describes it: what it is made from, what is altered of that
 * in every size, and what is said of it then.
 *
 * @param value what it is worth where not all can be cut; see {@link Asks}
 * @param place where in the repeat it wants to lie
 */
public record Outlined(
    String name,
    Start start,
    List<Step> alter,
    Finish finish,
    Optional<Double> value,
    Optional<Asks.Place> place) {

  public Outlined {
    alter = List.copyOf(alter);
  }

  /** One that is cut as it is drawn. */
  public Outlined(Draft draft, Optional<Double> value, Optional<Asks.Place> place) {
    this(draft.name(), new Start.Drawn(draft), List.of(), Finish.cut(draft.cuts()), value, place);
  }

  /** One that is cut as it is drawn and asks nothing of its cloth but its grain. */
  public Outlined(Draft draft) {
    this(draft, Optional.empty(), Optional.empty());
  }

  /**
   * The piece before it is altered. One that is cut in pairs only has a seam where it, or what it
   * is made from, could lie on the fold; one that is drawn has what is drawn.
   *
   * @throws ellwand.problem.InputException if it cannot be made
   */
  Workpiece started(String size, Sizes sizes, Others others) {
    Workpiece work = start.in(name, size, sizes, others);
    boolean pairs =
        !finish.cuts().isEmpty()
            && finish.cuts().stream().allMatch(cut -> cut.how() == Cut.How.PAIR);
    return start.draft().isEmpty() && finish.fold().isEmpty() && pairs
        ? work.withFold(Optional.empty())
        : work;
  }

  /** Names of the other pieces that it is made from. */
  public Set<String> needs() {
    Set<String> needs = new LinkedHashSet<>(start.needs());
    alter.forEach(step -> needs.addAll(step.alteration().needs()));
    return needs;
  }
}
