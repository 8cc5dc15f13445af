package ellwand.pattern;

import java.util.Optional;

/**
 * A piece that is drawn, as its maker describes it.
 *
 * @param value what it is worth where not all can be cut; see {@link Asks}
 * @param place where in the repeat it wants to lie
 */
public record Outlined(Draft draft, Optional<Double> value, Optional<Asks.Place> place) {

  /** One that asks nothing of its cloth but its grain. */
  public Outlined(Draft draft) {
    this(draft, Optional.empty(), Optional.empty());
  }

  public String name() {
    return draft.name();
  }
}
