package ellwand.file;

import ellwand.cloth.Cloth;
import ellwand.pattern.Style;
import ellwand.units.Unit;
import java.nio.file.Path;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What is to be cut.
 *
 * @param path the job file as the user gave it
 * @param sha256 hexadecimal, of the job file followed by the files it names
 * @param title heads the drawings, if given
 * @param notes sentences to show with the cautions
 * @param unit what results are shown in
 * @param cloths in the user's order, names unique
 * @param garments how many of each size are wanted, 1 or more, in the user's order
 */
public record Job(
    Path path,
    String sha256,
    Optional<String> title,
    List<String> notes,
    Unit unit,
    Style style,
    List<Cloth> cloths,
    Map<String, Integer> garments) {

  public Job {
    notes = List.copyOf(notes);
    cloths = List.copyOf(cloths);
    garments = Collections.unmodifiableMap(new LinkedHashMap<>(garments));
  }
}
