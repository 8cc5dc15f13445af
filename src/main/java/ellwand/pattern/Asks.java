package ellwand.pattern;

import java.util.Optional;

/**
 * What a piece asks of its cloth besides its grain.
 *
 * @param value what it is worth where not all can be cut, 0 or more, in any measure; pieces without
 *     one come after those with one, the larger first
 */
public record Asks(Optional<Double> value) {

  public static final Asks NOTHING = new Asks(Optional.empty());
}
