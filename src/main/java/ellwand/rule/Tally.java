package ellwand.rule;

import ellwand.cloth.Zone;
import ellwand.cutting.CutPiece;
import ellwand.lay.Form;
import ellwand.lay.Wanted;
import ellwand.pattern.Cut;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * What one garment wants of one piece, and what its copies deliver; in pieces of cloth.
 *
 * @param name of the piece, for people
 * @param wholes wanted as drawn
 * @param pairs wanted, one of each hand
 * @param halves wanted on the fold
 * @param placed its copies whose form can deliver
 * @param handed whether the piece differs from its mirror image; asked only where it matters
 */
record Tally(
    String piece,
    int garment,
    String name,
    Optional<CutPiece> cut,
    int wholes,
    int pairs,
    int halves,
    List<Placed> placed,
    Supplier<Boolean> handed) {

  private record Key(String piece, String size, int garment) {}

  static List<Tally> of(Inspection inspection) {
    Map<Key, List<Wanted>> wanted = new LinkedHashMap<>();
    for (Wanted w : inspection.marker().lay().wanted()) {
      wanted
          .computeIfAbsent(new Key(w.cut().name(), w.size(), w.garment()), k -> new ArrayList<>())
          .add(w);
    }
    Map<Key, List<Placed>> placed = new LinkedHashMap<>();
    for (Placed p : inspection.placed()) {
      for (int garment : p.copy().garments()) {
        Key key = new Key(p.copy().piece(), p.copy().size(), garment);
        placed.computeIfAbsent(key, k -> new ArrayList<>()).add(p);
        wanted.putIfAbsent(key, List.of());
      }
    }
    List<Tally> tallies = new ArrayList<>();
    wanted.forEach(
        (key, list) ->
            tallies.add(
                new Tally(
                    key.piece,
                    key.garment,
                    inspection.name(key.piece, key.size, key.garment),
                    list.stream().map(Wanted::cut).findFirst(),
                    count(list, Cut.How.WHOLE),
                    count(list, Cut.How.PAIR),
                    count(list, Cut.How.FOLD),
                    placed.getOrDefault(key, List.of()),
                    () -> inspection.handed(list.get(0).cut()))));
    return tallies;
  }

  private static int count(List<Wanted> wanted, Cut.How how) {
    return (int) wanted.stream().filter(w -> w.how() == how).count();
  }

  int needed() {
    return wholes + 2 * pairs + halves;
  }

  int delivered() {
    return placed.stream().mapToInt(this::delivers).sum();
  }

  /** A twin below a whole or opened copy in a double zone is wasted, so it does not count. */
  private int delivers(Placed p) {
    boolean two = p.copy().form() == Form.PAIR && p.inDoubleZone();
    return p.copy().secondGarment().isEmpty() ? two ? 2 : 1 : two || !second(p) ? 1 : 0;
  }

  /** Whether only the twin is for this garment. */
  private boolean second(Placed p) {
    return p.copy().garment() != garment;
  }

  /** How many of the delivered pieces have the wrong hand. */
  int wrongHands() {
    if (cut.isEmpty() || halves > 0) {
      return 0;
    }
    int eachOfPair = eachOfPair();
    int asDrawn = (int) placed.stream().filter(p -> oneHanded(p) && !mirrored(p)).count();
    // Of a piece that two garments share the second gets the twin.
    int mirrored =
        (int) placed.stream().filter(p -> oneHanded(p) ? mirrored(p) : second(p)).count();
    int tooMany =
        Math.max(0, asDrawn + eachOfPair - wholes - pairs)
            + Math.max(0, mirrored + eachOfPair - pairs);
    int wrong = tooMany - Math.max(0, delivered() - needed());
    return wrong <= 0 || !handed.get() ? 0 : wrong;
  }

  /** The copies that may be at fault for a wrong hand: those there are too many of. */
  List<Placed> suspects() {
    int eachOfPair = eachOfPair();
    long mirrored = placed.stream().filter(p -> oneHanded(p) && mirrored(p)).count();
    boolean tooManyMirrored = mirrored + eachOfPair > pairs;
    List<Placed> found =
        placed.stream().filter(p -> oneHanded(p) && mirrored(p) == tooManyMirrored).toList();
    return found.isEmpty() ? placed : found;
  }

  private int eachOfPair() {
    return (int) placed.stream().filter(p -> delivers(p) == 2).count();
  }

  private static boolean oneHanded(Placed p) {
    return !p.inDoubleZone();
  }

  /** Cut as the mirror image of what is drawn: turned over, or cut from the wrong side. */
  static boolean mirrored(Placed p) {
    boolean wrongSideUp = p.zone().filter(z -> z.sideUp() == Zone.Face.WRONG).isPresent();
    return p.copy().motion().flipped() != wrongSideUp;
  }
}
