package ellwand.nest;

import ellwand.cloth.Fold;
import ellwand.lay.Marker;
import ellwand.nest.pose.NoRoomException;
import java.util.Optional;

/**
 * How one way of folding the cloth fared.
 *
 * @param marker the best that was made so; empty if none was
 * @param pleasing what serves the cutter's wishes best in the place of that; empty if nothing is
 *     wished, or if another way of folding takes less cloth
 * @param noRoom why none could be; empty if one was made, or if the search was stopped before it
 */
public record Tried(
    Fold fold,
    Optional<Marker> marker,
    Optional<Marker> pleasing,
    Optional<NoRoomException> noRoom) {}
