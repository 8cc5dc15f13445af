package ellwand.pattern.block;

import ellwand.pattern.Draft;
import ellwand.pattern.Grain;
import ellwand.pattern.Others;
import ellwand.pattern.Sizes;
import ellwand.pattern.Start;
import ellwand.pattern.Workpiece;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A piece that is drafted from the body measures of each size.
 *
 * @param easeMm what is said of ease, for whatever blocks; see {@link Block#usualEaseMm}
 */
public record FromBody(Block block, Map<String, Double> easeMm) implements Start {

  /** Of edges until it is said; wide enough for the notches. */
  private static final double ALLOWANCE_MM = 10;

  public FromBody {
    easeMm = Collections.unmodifiableMap(new LinkedHashMap<>(easeMm));
  }

  @Override
  public Workpiece in(String name, String size, Sizes sizes, Others others) {
    Map<String, Double> ease = new HashMap<>(block.usualEaseMm());
    ease.replaceAll((of, usual) -> easeMm.getOrDefault(of, usual));
    BlockLines lines = block.lines(new Measured(sizes.body(), size, ease), others);
    return Workpiece.of(
        new Draft(
            name,
            lines.nodes(),
            lines.edges(),
            ALLOWANCE_MM,
            lines.fold(),
            Grain.ALONG,
            lines.notches(),
            List.of(),
            List.of()));
  }

  @Override
  public Set<String> needs() {
    return block.needs();
  }

  @Override
  public boolean drafted() {
    return true;
  }
}
