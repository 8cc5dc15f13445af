package ellwand.many.cluster;

import ellwand.problem.InputException;
import java.nio.file.Path;
import java.util.Optional;

/**
 * Where this process lets others in, and whom.
 *
 * @param at its own place, as the others reach it
 * @param keys who shows a key of the same authority comes in; without keys only this machine
 */
public record Door(Place at, Optional<Path> keys) {

  /**
   * @throws InputException if others could come in without a key
   */
  public Door {
    InputException.unless(
        keys.isPresent() || at.onlyHere(),
        "at %s anybody on the network could come in".formatted(at.host()),
        "Make keys with 'helper --make-keys FOLDER' and give each machine its own with --keys,"
            + " or stay on this machine with 127.0.0.1");
  }
}
