package ellwand.draw.sheet;

import ellwand.geometry.Point;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * One calm fill and hatching for each kind of piece: in grey, where fills look alike, the first
 * seven kinds are told apart by their hatching, in colour forty-nine by both. Numbers on the copies
 * tell the rest apart.
 */
public final class Palette {

  /** Okabe & Ito, Color Universal Design (2008): told apart by the colour-blind too. */
  private static final List<Colour> OKABE_ITO =
      Stream.of(0x56B4E9, 0xE69F00, 0x009E73, 0xF0E442, 0xCC79A7, 0x0072B2, 0xD55E00)
          .map(Colour::new)
          .toList();

  /** Pale enough for text on it, strong enough to be seen on a poor printer. */
  private static final double TINT = 0.42;

  /** From line to line and their width on paper, mm. */
  private static final double HATCH = 2;

  private static final double HATCH_LINE = 0.15;

  /** So dark that hatching shows on the fill in grey, too. */
  private static final double SHADE = 0.6;

  private final Map<String, Integer> kinds = new LinkedHashMap<>();

  /**
   * @param kinds names of the pieces, in the order in which they are to be coloured
   */
  public Palette(List<String> kinds) {
    kinds.forEach(k -> this.kinds.putIfAbsent(k, this.kinds.size()));
  }

  /** Hatchings, each a list of angles; the first kind has none. */
  private static final List<List<Integer>> ANGLES =
      List.of(
          List.of(),
          List.of(45),
          List.of(135),
          List.of(45, 135),
          List.of(0),
          List.of(90),
          List.of(0, 90));

  /** The fill of a kind; after seven kinds they come round again, hatched otherwise. */
  public Colour fill(String kind) {
    return OKABE_ITO.get(index(kind) % OKABE_ITO.size()).tint(TINT);
  }

  /** Lines that tell a kind from others of its fill, and stay off its words. */
  public List<Item> hatching(String kind, List<Point> outline, Reading reading) {
    int index = index(kind);
    Colour colour = OKABE_ITO.get(index % OKABE_ITO.size()).shade(SHADE);
    return ANGLES.get((index + index / OKABE_ITO.size()) % ANGLES.size()).stream()
        .map(
            angle ->
                (Item)
                    new Item.Lines(
                        "hatching",
                        Hatching.of(outline, reading.mm(HATCH), angle),
                        false,
                        Ink.line(colour, reading.mm(HATCH_LINE))))
        .toList();
  }

  /** The place of a kind in the list, from 0. */
  public int index(String kind) {
    return kinds.get(kind);
  }

  public List<String> kinds() {
    return List.copyOf(kinds.keySet());
  }
}
