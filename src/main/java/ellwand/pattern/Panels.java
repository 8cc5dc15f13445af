package ellwand.pattern;

import ellwand.units.Length;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A computed rectangle as it is cut from one cloth.
 *
 * @param name of the rectangle
 * @param pieces one panel of each kind, or the whole rectangle; they differ only in the notches of
 *     their maker's own, and each has the count of all that are like it in one garment
 * @param count how many panels make one rectangle, 1 or more
 * @param asked how many its maker asked for, 1 or more
 * @param wholeMm cut width of the rectangle in one, mm
 * @param panelMm cut width of a panel, mm
 * @param usableMm what may be cut across the open cloth, mm
 * @param wholeWidths whether each is as wide as the cloth because it may be
 * @param chosen what was chosen because of the cloth, and why
 */
public record Panels(
    String name,
    List<Piece> pieces,
    int count,
    int asked,
    double wholeMm,
    double panelMm,
    double usableMm,
    boolean wholeWidths,
    Optional<String> chosen) {

  /** One that is not cut apart. */
  static Panels whole(Piece piece, double wholeMm, double usableMm) {
    return new Panels(
        piece.name(), List.of(piece), 1, 1, wholeMm, wholeMm, usableMm, false, Optional.empty());
  }

  /** The first of its panels. */
  public Piece piece() {
    return pieces.get(0);
  }

  /** What was chosen, and that it is cut in panels, if it is. */
  public List<String> sentences(Unit unit) {
    List<String> sentences = new ArrayList<>();
    chosen.ifPresent(why -> sentences.add(name + ": " + why));
    if (count > asked && !wholeWidths) {
      sentences.add(
          String.format(
              Locale.ROOT,
              "%s: %s is wider than the %s usable of %s, so it is cut as %d panels %s wide with"
                  + " joins",
              name,
              asked == 1
                  ? show(wholeMm, unit)
                  : "each of " + asked + " panels, " + show(wholeMm / asked, unit) + ",",
              show(usableMm, unit),
              piece().cuts().get(0).cloth(),
              count,
              show(panelMm, unit)));
    } else if (count > 1) {
      sentences.add(
          String.format(
              Locale.ROOT,
              "%s: cut as %d panels %s wide with joins",
              name,
              count,
              show(panelMm, unit)));
    }
    if (pieces.size() > 1) {
      sentences.add(
          name
              + ": its own notches do not stand on all panels: cut "
              + pieces.stream()
                  .map(p -> p.cuts().get(0) + " of " + p.name())
                  .collect(Collectors.joining(" and ")));
    }
    return sentences;
  }

  private static String show(double mm, Unit unit) {
    return new Length(mm).show(unit);
  }
}
