package ellwand.pattern;

import ellwand.units.Unit;
import java.util.List;
import java.util.Optional;

/** A computed piece of four straight edges, finished, which may be cut in panels. */
public sealed interface Rectangle permits Gathered, Pleated, Band {

  String name();

  List<Cut> cuts();

  /** All of it as a piece, however wide. */
  Piece piece();

  /**
   * As it is cut from one cloth.
   *
   * @param usableMm what may be cut across the open cloth, before any growth for shrinkage
   * @throws ellwand.problem.InputException if the cloth is too narrow
   */
  Panels panels(Cut cut, double usableMm);

  /** What its maker should look at before it is cut from a cloth. */
  Optional<String> caution(String cloth, Unit unit);

  /** How it comes about, where that is not to be seen from it. */
  List<String> notes(String cloth, Unit unit);
}
