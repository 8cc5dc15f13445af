package ellwand.lay;

import ellwand.cloth.Cloth;
import java.util.List;

/** What is to be cut together from one cloth. */
public record Lay(String style, Cloth cloth, List<Wanted> wanted) {

  public Lay {
    wanted = List.copyOf(wanted);
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
