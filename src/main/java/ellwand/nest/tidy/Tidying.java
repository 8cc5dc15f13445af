package ellwand.nest.tidy;

import ellwand.cloth.Zone;
import ellwand.lay.Copy;
import ellwand.lay.Marker;
import ellwand.nest.kernel.Layout;
import ellwand.nest.kernel.NoFit;
import ellwand.nest.kernel.Outcome;
import ellwand.rule.Check;
import ellwand.work.Request;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.IntStream;

/**
 * Goes on from a marker: copies are drawn as the lay has them now, what overlaps is parted, and the
 * marker is shortened. Copies keep their turn and their place in the list, and their zone if they
 * can lie there; on cloth with bars those that ask for a place among them move by whole repeats.
 */
public final class Tidying {

  private final Marker start;
  private final Set<Integer> pinned;
  private final NoFit noFit;
  private final Request request;
  private final Drawn drawn;

  /**
   * @param start may break rules
   * @param pinned copies that stay where they are, by their places in the marker
   */
  public Tidying(Marker start, Set<Integer> pinned, NoFit noFit, Request request) {
    this.start = start;
    this.pinned = Set.copyOf(pinned);
    this.noFit = noFit;
    this.request = request;
    drawn = new Drawn(start.lay());
  }

  private Copy drawnAnew(int index) {
    Copy copy = start.copies().get(index);
    Copy anew = drawn.at(copy, copy.motion().x(), copy.motion().y());
    return pinned.contains(index) || roomIn(copy.zone(), anew)
        ? anew
        : start.zones().stream()
            .map(Zone::id)
            .filter(zone -> roomIn(zone, anew))
            .findFirst()
            .map(anew::in)
            .orElse(anew);
  }

  private boolean roomIn(String zone, Copy copy) {
    return start.zones().stream()
        .filter(z -> z.id().equals(zone))
        .anyMatch(z -> Room.of(start, drawn, copy, z).isPresent());
  }

  /**
   * The best that was found, which may break rules that no push mends; empty if what overlaps
   * cannot be parted.
   *
   * @param better hears of what is shorter on the way, not checked yet
   */
  public Optional<Marker> tidied(Consumer<Supplier<Marker>> better) {
    Marker now =
        start
            .byHand()
            .with(IntStream.range(0, start.copies().size()).mapToObj(this::drawnAnew).toList());
    for (int i = 0; i < new Stretches(now, pinned).count(); i++) {
      Optional<Marker> next = tidied(new Stretches(now, pinned), i, better);
      if (next.isEmpty()) {
        return next;
      }
      now = next.get();
    }
    return Optional.of(now);
  }

  private Optional<Marker> tidied(Stretches all, int number, Consumer<Supplier<Marker>> better) {
    Marker now = all.marker();
    Optional<Stretch> stretch =
        rests(all, number) ? Optional.empty() : Stretch.of(all, number, drawn, noFit);
    if (stretch.isEmpty()) {
      return Optional.of(now);
    }
    double share = stretch.get().copies().size() / (double) now.copies().size();
    return search(all, number, stretch.get(), request.part(share), better);
  }

  /** Whether nothing is to be gained by moving anything there. */
  private static boolean rests(Stretches all, int number) {
    return all.endStays(number)
        && !all.last(number)
        && all.copies(number).noneMatch(i -> broken(all.marker(), List.of(i)));
  }

  private Optional<Marker> search(
      Stretches all, int number, Stretch stretch, Request part, Consumer<Supplier<Marker>> better) {
    Deque<Layout> found = new ArrayDeque<>();
    Outcome outcome =
        stretch
            .search()
            .goOn(
                stretch.start(),
                part,
                (layout, evaluations) -> {
                  found.push(layout);
                  better.accept(() -> laid(all, number, stretch, layout));
                });
    if (outcome.layout().isEmpty()) {
      return Optional.empty();
    }
    // The kernel's sums are not trusted: the shortest that passes the check is the answer.
    return found.stream()
        .map(layout -> laid(all, number, stretch, layout))
        .filter(marker -> !broken(marker, stretch.copies()))
        .findFirst()
        .or(() -> outcome.layout().map(layout -> laid(all, number, stretch, layout)));
  }

  private static boolean broken(Marker marker, List<Integer> copies) {
    return Check.of(marker).stream().flatMap(f -> f.copies().stream()).anyMatch(copies::contains);
  }

  private Marker laid(Stretches all, int number, Stretch stretch, Layout layout) {
    return all.ended(number, stretch.laid(all.marker(), drawn, layout));
  }
}
