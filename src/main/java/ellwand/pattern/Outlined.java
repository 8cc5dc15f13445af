package ellwand.pattern;

import java.util.Optional;

/**
 * A piece with an outline, as its maker describes it.
 *
 * @param value what it is worth where not all can be cut; see {@link Asks}
 * @param place where in the repeat it wants to lie
 */
public record Outlined(Drafting drafting, Optional<Double> value, Optional<Asks.Place> place) {

  /** A drawn one that asks nothing of its cloth but its grain. */
  public Outlined(Draft draft) {
    this(new Drawn(draft), Optional.empty(), Optional.empty());
  }

  public String name() {
    return drafting.name();
  }
}
