package ellwand.nest.tidy;

import ellwand.geometry.Motion;
import ellwand.geometry.Outline;
import ellwand.lay.Copy;
import ellwand.lay.Form;
import ellwand.lay.Lay;
import ellwand.lay.Wanted;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** Cutting lines of a lay's copies, turned as they lie but not shifted; alike copies share one. */
final class Drawn {

  private final Lay lay;
  private final Map<Key, Optional<Outline>> known = new HashMap<>();

  private record Key(String piece, String size, Form form, Motion turned) {}

  Drawn(Lay lay) {
    this.lay = lay;
  }

  /** Empty for a copy of nothing that the lay wants. */
  Optional<Outline> turned(Copy copy) {
    Motion turned = copy.motion().unshifted();
    return known.computeIfAbsent(
        new Key(copy.piece(), copy.size(), copy.form(), turned),
        key -> wanted(copy).map(w -> copy.form().drawn(w.cut()).cutting().moved(turned)));
  }

  Optional<Wanted> wanted(Copy copy) {
    return lay.wantedBy(copy);
  }

  /** The copy in a place, with its cutting line as the lay has it now. */
  Copy at(Copy copy, double x, double y) {
    Motion turned = copy.motion().unshifted();
    return turned(copy)
        .map(o -> copy.at(turned.shifted(x, y), o.moved(new Motion(false, 0, x, y))))
        .orElse(copy);
  }
}
