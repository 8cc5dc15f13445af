package ellwand.pattern;

import ellwand.geometry.Point;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A design drawn in its sizes.
 *
 * @param bySize every size's pieces, sizes in the user's order, the same pieces in each
 */
public record Style(Design design, Map<String, PieceSet> bySize) {

  public Style {
    bySize = Collections.unmodifiableMap(new LinkedHashMap<>(bySize));
  }

  /**
   * Draws a design in all of its sizes.
   *
   * @throws InputException if that cannot be
   */
  public static Style of(Design design) {
    Map<String, PieceSet> bySize = new LinkedHashMap<>();
    design.sizes().names().forEach(size -> bySize.put(size, design.in(size)));
    return new Style(design, bySize);
  }

  public String name() {
    return design.name();
  }

  /** In the user's order. */
  public List<String> sizes() {
    return List.copyOf(bySize.keySet());
  }

  /** The size that it is drawn in, which is laid where no other is asked for. */
  public String drawnSize() {
    return design.sizes().base();
  }

  public List<Seam> seams() {
    return design.seams();
  }

  public List<Match> matches() {
    return design.matches();
  }

  /** What a garment of a size takes of a trim, nothing if it has none. */
  public Optional<Trim.Amount> amount(Trim trim, String size) {
    return trim.amount(size, in(size));
  }

  /** All pieces of a size, computed rectangles whole, however wide. */
  public List<Piece> pieces(String size) {
    return in(size).all();
  }

  /**
   * The pieces of a size that are cut from one cloth, computed rectangles in panels where the cloth
   * is too narrow.
   *
   * @param usableMm as for {@link Gathered#panels}
   */
  public List<Piece> pieces(String size, String cloth, double usableMm) {
    List<Piece> pieces = new ArrayList<>();
    PieceSet ofSize = in(size);
    Stream.concat(ofSize.drawn().stream(), ofSize.bindings().stream().map(Binding::piece))
        .filter(p -> p.cutFrom(cloth).isPresent())
        .forEach(p -> pieces.add(p.inCloth(cloth)));
    panels(size, cloth, usableMm).forEach(p -> pieces.addAll(p.pieces()));
    return pieces;
  }

  /** The computed rectangles of a size as they are cut from one cloth. */
  public List<Panels> panels(String size, String cloth, double usableMm) {
    List<Panels> panels = new ArrayList<>();
    for (Rectangle g : in(size).rectangles()) {
      g.cuts().stream()
          .filter(c -> c.cloth().equals(cloth))
          .forEach(c -> panels.add(g.panels(c, usableMm)));
    }
    return panels;
  }

  /** The bindings of a size that are cut from one cloth. */
  public List<Binding> bindings(String size, String cloth) {
    return in(size).bindings().stream()
        .filter(b -> b.cuts().stream().anyMatch(c -> c.cloth().equals(cloth)))
        .toList();
  }

  /** What to look at before the computed pieces of a size are cut from a cloth. */
  public List<String> cautions(String size, String cloth, Unit unit) {
    PieceSet pieces = in(size);
    return Stream.concat(
            pieces.bindings().stream().flatMap(b -> b.caution(cloth, unit).stream()),
            pieces.rectangles().stream().flatMap(r -> r.caution(cloth, unit).stream()))
        .toList();
  }

  /** What the computed pieces of a size that are cut several times are sewn to. */
  public List<String> notes(String size, String cloth, Unit unit) {
    PieceSet pieces = in(size);
    return Stream.concat(
            pieces.bindings().stream().flatMap(b -> b.note(cloth, unit).stream()),
            pieces.rectangles().stream().flatMap(r -> r.notes(cloth, unit).stream()))
        .toList();
  }

  /** Names of the pieces that their grade moves as they are: to no size they grow. */
  public List<String> shifted() {
    return design.sizes().rules().keySet().stream().filter(this::shifted).toList();
  }

  private boolean shifted(String name) {
    Optional<Piece> drawn = drawn(name, drawnSize());
    List<Optional<Point>> shifts =
        sizes().stream()
            .map(size -> drawn.flatMap(d -> drawn(name, size).flatMap(d::shiftTo)))
            .toList();
    return shifts.stream().allMatch(Optional::isPresent)
        && shifts.stream().flatMap(Optional::stream).anyMatch(by -> by.norm() > Draft.SAME_MM);
  }

  private Optional<Piece> drawn(String name, String size) {
    return in(size).drawn().stream().filter(p -> p.name().equals(name)).findFirst();
  }

  private PieceSet in(String size) {
    PieceSet pieces = bySize.get(size);
    if (pieces == null) {
      throw new InputException(
          Problem.of(
              "style " + name() + " has no size " + size,
              "Use one of " + String.join(", ", bySize.keySet())));
    }
    return pieces;
  }
}
