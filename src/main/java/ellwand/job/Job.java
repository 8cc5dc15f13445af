package ellwand.job;

import ellwand.cloth.Cloth;
import ellwand.cloth.Remnant;
import ellwand.pattern.Style;
import ellwand.units.Unit;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What is to be cut.
 *
 * @param title heads the drawings, if given
 * @param notes sentences to show with the cautions
 * @param wear what the garment is for, as far as rules on safety ask
 * @param unit what results are shown in
 * @param cloths in the user's order, names unique
 * @param remnants on the shelf, names unique
 * @param severalBolts cloths of which the pieces of one garment may come from several bolts and
 *     remnants
 * @param garments how many of each size are wanted, 1 or more, in the user's order
 */
public record Job(
    Origin origin,
    Optional<String> title,
    List<String> notes,
    Set<Wear> wear,
    Unit unit,
    Style style,
    List<Cloth> cloths,
    List<Remnant> remnants,
    Set<String> severalBolts,
    Map<String, Integer> garments) {

  public Job {
    notes = List.copyOf(notes);
    wear = Collections.unmodifiableSet(new LinkedHashSet<>(wear));
    cloths = List.copyOf(cloths);
    remnants = List.copyOf(remnants);
    severalBolts = Set.copyOf(severalBolts);
    garments = Collections.unmodifiableMap(new LinkedHashMap<>(garments));
  }

  /** What heads the drawings: the title, or the style's name where there is none. */
  public String heading() {
    return title.orElse(style.name());
  }

  /** Of all sizes together. */
  public int garmentCount() {
    return garments.values().stream().mapToInt(Integer::intValue).sum();
  }

  /** The same job cut from other cloths. */
  public Job withCloths(List<Cloth> other) {
    return new Job(
        origin, title, notes, wear, unit, style, other, remnants, severalBolts, garments);
  }

  /** The same job with other garments wanted. */
  public Job withGarments(Map<String, Integer> other) {
    return new Job(origin, title, notes, wear, unit, style, cloths, remnants, severalBolts, other);
  }
}
