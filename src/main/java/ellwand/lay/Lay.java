package ellwand.lay;

import ellwand.cloth.Cloth;
import ellwand.pattern.Match;
import java.util.List;

/**
 * What is to be cut together from one cloth.
 *
 * @param style its name
 * @param matches places of each garment's pieces that are to lie alike in the cloth's repeat
 */
public record Lay(String style, Cloth cloth, List<Wanted> wanted, List<Match> matches) {

  /** A lay in which nothing has to match. */
  public Lay(String style, Cloth cloth, List<Wanted> wanted) {
    this(style, cloth, wanted, List.of());
  }

  public Lay {
    wanted = List.copyOf(wanted);
    matches = List.copyOf(matches);
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
