package ellwand.app;

import ellwand.cloth.Fold;
import ellwand.lay.Lay;
import ellwand.lay.Wanted;
import ellwand.nest.Tried;
import ellwand.nest.WidthEnough;
import ellwand.nest.pose.NoRoomException;
import ellwand.pattern.Sizes;
import ellwand.problem.Problem;
import ellwand.units.Length;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Says that a piece is too wide, and the way out. */
final class NoRoom {

  private NoRoom() {}

  /** As a clause: why a fold will not do. */
  static String clause(NoRoomException e, Unit unit) {
    if (e.widestMm() == 0) {
      return "the cloth is too narrow for this fold";
    }
    if (e.offRepeat()) {
      return e.piece() + " has no room where place: and match: put it in the repeat";
    }
    return e.piece()
        + " lies "
        + show(e.neededMm(), unit)
        + " across and the widest part of the cloth has "
        + show(e.widestMm(), unit);
  }

  /** Of a lay for which none of its cloth's folds will do. */
  static Problem problem(Lay lay, List<Tried> tried, Unit unit) {
    NoRoomException least =
        widest(tried.stream().flatMap(t -> t.noRoom().stream()))
            .orElseThrow(() -> new IllegalStateException("nothing was tried"));
    return problem(lay, lay.cloth().folds(), least, unit);
  }

  /**
   * The same without searching; empty if one of the folds will do.
   *
   * @param folds in which the cloth can be laid
   */
  static Optional<Problem> foreseen(Lay lay, List<Fold> folds, Unit unit) {
    List<NoRoomException> noRoom = new ArrayList<>();
    for (Fold fold : folds) {
      Optional<NoRoomException> here = WidthEnough.noRoom(lay, fold);
      if (here.isEmpty()) {
        return Optional.empty();
      }
      noRoom.add(here.get());
    }
    return widest(noRoom.stream())
        .map(least -> problem(lay, folds, neediest(lay, folds, least), unit));
  }

  /** What needs most room of all sizes: of the whole lay only the first that has none is known. */
  private static NoRoomException neediest(Lay lay, List<Fold> folds, NoRoomException first) {
    return sizes(lay).stream()
        .flatMap(
            size -> folds.stream().flatMap(f -> WidthEnough.noRoom(only(lay, size), f).stream()))
        .filter(e -> e.widestMm() == first.widestMm() && !first.offRepeat())
        .max(Comparator.comparingDouble(NoRoomException::neededMm))
        .orElse(first);
  }

  private static List<String> sizes(Lay lay) {
    return lay.wanted().stream().map(Wanted::size).distinct().toList();
  }

  private static Lay only(Lay lay, String size) {
    return lay.part(lay.wanted().stream().filter(w -> w.size().equals(size)).toList());
  }

  /** Which other sizes have no room in any fold. */
  private static String others(Lay lay, List<Fold> folds, String named) {
    List<String> others =
        sizes(lay).stream()
            .filter(size -> !size.equals(named))
            .filter(s -> folds.stream().noneMatch(f -> WidthEnough.hasRoom(only(lay, s), f)))
            .toList();
    return others.isEmpty()
        ? ""
        : ", and %s %s no room either"
            .formatted(Sizes.words(others), others.size() == 1 ? "has" : "have");
  }

  private static Optional<NoRoomException> widest(Stream<NoRoomException> noRoom) {
    return noRoom.max(Comparator.comparingDouble(NoRoomException::widestMm));
  }

  /**
   * @param folds one of which was to do
   */
  static Problem problem(Lay lay, List<Fold> folds, NoRoomException least, Unit unit) {
    String cloth = lay.cloth().name();
    List<String> ways = new ArrayList<>();
    if (!folds.contains(Fold.OPEN) && WidthEnough.hasRoom(lay, Fold.OPEN)) {
      ways.add("lay the cloth open");
    }
    WidthEnough.mm(lay, folds, wholeSteps(unit))
        .ifPresent(mm -> ways.add("use cloth at least " + show(mm, unit) + " wide"));
    String inSize =
        least.size().equals(Sizes.ONE_SIZE) ? "" : "in " + Sizes.words(least.size()) + " ";
    if (least.offRepeat()) {
      ways.add("change what is asked for under place: and match:");
      return Problem.inPiece(
          least.piece(),
          inSize + "it has no room where place: and match: put it in the repeat of cloth " + cloth,
          oneOf(ways));
    }
    if (least.widestMm() == 0) {
      ways.add("fold it another way");
      return Problem.of("cloth " + cloth + " is too narrow for this fold", oneOf(ways));
    }
    ways.add("split the piece with a join");
    return Problem.inPiece(
        least.piece(),
        inSize
            + "it lies "
            + show(least.neededMm(), unit)
            + " across, but cloth "
            + cloth
            + " has only "
            + show(least.widestMm(), unit)
            + " for it"
            + others(lay, folds, least.size()),
        oneOf(ways));
  }

  /** Widths are told to a centimetre or a little more, so that they are shown as they are. */
  private static double wholeSteps(Unit unit) {
    return unit.stepMm() * Math.ceil(10 / unit.stepMm());
  }

  private static String oneOf(List<String> ways) {
    int last = ways.size() - 1;
    String all =
        last == 0
            ? ways.get(0)
            : String.join(", ", ways.subList(0, last)) + ", or " + ways.get(last);
    return Character.toUpperCase(all.charAt(0)) + all.substring(1);
  }

  private static String show(double mm, Unit unit) {
    return new Length(mm).show(unit);
  }
}
