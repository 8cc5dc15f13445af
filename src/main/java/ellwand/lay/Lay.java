package ellwand.lay;

import ellwand.cloth.Cloth;
import ellwand.cloth.Direction;
import ellwand.cutting.CutPiece;
import ellwand.pattern.Grain;
import ellwand.pattern.Match;
import java.util.List;
import java.util.Optional;

/**
 * What is to be cut together from one cloth.
 *
 * @param style its name
 * @param matches places of each garment's pieces that are to lie alike in the cloth's repeat
 * @param scope what of its job it holds
 */
public record Lay(
    String style, Cloth cloth, List<Wanted> wanted, List<Match> matches, Scope scope) {

  /** A whole lay. */
  public Lay(String style, Cloth cloth, List<Wanted> wanted, List<Match> matches) {
    this(style, cloth, wanted, matches, Scope.WHOLE);
  }

  /** A whole lay in which nothing has to match. */
  public Lay(String style, Cloth cloth, List<Wanted> wanted) {
    this(style, cloth, wanted, List.of());
  }

  public Lay {
    wanted = List.copyOf(wanted);
    matches = List.copyOf(matches);
  }

  /** The same on other cloth. */
  public Lay on(Cloth other) {
    return new Lay(style, other, wanted, matches, scope);
  }

  /** The same as that much of its job. */
  public Lay of(Scope other) {
    return new Lay(style, cloth, wanted, matches, other);
  }

  /** Only some of what it wants; the same scope if it is all. */
  public Lay part(List<Wanted> some) {
    return new Lay(style, cloth, some, matches, some.equals(wanted) ? scope : Scope.PART);
  }

  /** What a copy was made of; empty if nothing of its name and size is wanted. */
  public Optional<Wanted> wantedBy(Copy copy) {
    return wanted.stream()
        .filter(w -> w.cut().name().equals(copy.piece()) && w.size().equals(copy.size()))
        .findFirst();
  }

  /** Which headings a piece may have on a cloth: its own say goes before the cloth's. */
  public static Direction direction(Cloth cloth, CutPiece cut) {
    return cut.piece()
        .grain()
        .heads()
        .map(h -> h == Grain.Heads.ANY_WAY ? Direction.ANY_WAY : Direction.ONE_WAY)
        .orElse(cloth.direction());
  }

  /** The area of everything wanted as cut: halves opened, both of a pair; square mm. */
  public double wantedAreaMm2() {
    return wanted.stream()
        .mapToDouble(
            w ->
                switch (w.how()) {
                  case WHOLE -> w.cut().cutting().area();
                  case FOLD, PAIR -> 2 * w.cut().cutting().area();
                })
        .sum();
  }
}
