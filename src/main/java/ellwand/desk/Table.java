package ellwand.desk;

import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.app.TableRun;
import ellwand.cloth.Cloth;
import ellwand.cloth.Fold;
import ellwand.edit.HandLaid;
import ellwand.file.source.Folder;
import ellwand.file.source.Json;
import ellwand.file.source.WholeFile;
import ellwand.job.Job;
import ellwand.lay.Marker;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import ellwand.work.Effort;
import ellwand.work.Progress;
import ellwand.work.Request;
import ellwand.work.Seed;
import ellwand.work.Stop;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

/**
 * One cloth of a job on the table: the marker that lies there, the search for a shorter one, and
 * the cutter's hands. What lies there is on disk as soon as it lies there.
 */
final class Table {

  private static final int MOST_STEPS_BACK = 200;

  /** Less than this is rounding, mm. */
  private static final double SAME_MM = 1e-6;

  private final String cloth;
  private final Path file;
  private final Tabs tabs;
  private final Deque<Laid> before = new ArrayDeque<>();
  private Job job;
  private Cloth goods;
  private Optional<HandLaid> hand = Optional.empty();
  private Optional<Search> search = Optional.empty();
  private long seed;

  /** How often a page was told of it: of two answers the later has the larger number. */
  private long told;

  private List<Problem> refused = List.of();

  /** How often something was laid here. */
  private long laid;

  /** What lay here. */
  private record Laid(Marker marker, Set<Integer> pinned) {}

  /** How a search finds markers, told to a listener on the way. */
  @FunctionalInterface
  private interface Finder {
    Marker find(Request request, Consumer<Marker> listener);
  }

  /** A search that runs. */
  private static final class Search {
    private final Stop stop = new Stop();
    private final boolean anew;
    private final boolean keepsPins;
    private boolean found;

    /**
     * @param anew whether what it finds first takes the place of what lies there, longer or not
     * @param keepsPins whether its copies are those that lie there
     */
    Search(boolean anew, boolean keepsPins) {
      this.anew = anew;
      this.keepsPins = keepsPins;
    }
  }

  Table(String cloth, Path folder, Tabs tabs) {
    this.cloth = cloth;
    this.file = folder.resolve(cloth + ".marker.json");
    this.tabs = tabs;
  }

  String cloth() {
    return cloth;
  }

  /**
   * Holds what lies here against the job as it is now; a search for what it was ends.
   *
   * @param renamed names that pieces have now, by those that they had
   */
  synchronized void of(Job now, Cloth as, Map<String, String> renamed) {
    boolean first = job == null;
    job = now;
    goods = as;
    endSearch();
    if (first && Folder.DISK.holds(file.toString())) {
      hand = TableRun.kept(job, goods, file.toString(), Folder.DISK);
    } else if (hand.isPresent()) {
      HandLaid same = hand();
      hand = Optional.of(TableRun.of(job, goods, renamed(same.marker(), renamed), same.pinned()));
    }
    if (!renamed.isEmpty()) {
      List<Laid> all = List.copyOf(before);
      before.clear();
      all.forEach(l -> before.add(new Laid(renamed(l.marker(), renamed), l.pinned())));
      hand.ifPresent(this::put);
    }
  }

  private static Marker renamed(Marker marker, Map<String, String> names) {
    return names.isEmpty()
        ? marker
        : marker.with(
            marker.copies().stream()
                .map(copy -> copy.called(names.getOrDefault(copy.piece(), copy.piece())))
                .toList());
  }

  /**
   * Starts the search for a marker, or for a shorter one than lies here.
   *
   * @param effort after which it ends by itself
   * @param way in which the cloth shall lie, whether that takes more of it or not; any if empty
   * @throws Declined if the cloth cannot lie so
   */
  synchronized void lay(Effort effort, Optional<String> way) {
    List<Fold> folds = way.map(this::fold).map(List::of).orElseGet(goods::possibleFolds);
    Job asked = job;
    Cloth on = goods;
    start(
        effort,
        new Search(way.isPresent(), false),
        (request, listener) -> TableRun.lay(asked, on, folds, request, listener::accept));
  }

  private Fold fold(String words) {
    return goods.possibleFolds().stream()
        .filter(fold -> fold.words().equals(words))
        .findFirst()
        .orElseThrow(
            () ->
                Declined.asItIsNow(
                    cloth + " cannot lie like that", "Choose one of its ways, or add it to them"));
  }

  /**
   * Goes on from what lies here.
   *
   * @param effort after which it ends by itself
   */
  synchronized void tidy(Effort effort) {
    HandLaid from = hand();
    start(
        effort,
        new Search(false, true),
        (request, listener) -> TableRun.tidy(from, request, listener::accept));
  }

  private void start(Effort effort, Search next, Finder finder) {
    search.ifPresent(s -> s.stop.request());
    search = Optional.of(next);
    refused = List.of();
    seed++;
    Request request = new Request(effort, new Seed(seed), threads(), next.stop, Progress.NONE);
    Job asked = job;
    Thread searching = new Thread(() -> run(finder, request, asked, next), "table " + cloth);
    searching.setDaemon(true);
    searching.start();
    tabs.tell("searching", said());
  }

  /** One core is left for who moves pieces by hand meanwhile. */
  private static int threads() {
    return Math.max(1, Runtime.getRuntime().availableProcessors() - 1);
  }

  private void run(Finder finder, Request request, Job asked, Search by) {
    try {
      better(finder.find(request, marker -> better(marker, asked, by, false)), asked, by, true);
    } catch (InputException e) {
      refuse(e.problems(), by);
    } catch (RuntimeException | Error e) {
      refuse(
          List.of(
              Problem.of(
                  "the search failed by a mistake in Ellwand: " + e,
                  "Please report this with the job file; what lay here before still does")),
          by);
    }
    ended(by);
  }

  private boolean runs(Search by) {
    return search.filter(s -> s == by).isPresent();
  }

  private synchronized void better(Marker marker, Job asked, Search by, boolean last) {
    if (asked != job || !runs(by)) {
      return;
    }
    boolean shorter =
        hand.filter(h -> h.findings().isEmpty())
            .map(h -> marker.clothLengthMm() < h.marker().clothLengthMm() - SAME_MM)
            .orElse(true);
    // What serves the cutter's wishes comes last and is longer.
    boolean pleases = last && by.found && !by.keepsPins && goods.wishes().any();
    if (shorter || pleases || by.anew && !by.found) {
      if (!by.found) {
        remember();
      }
      by.found = true;
      put(HandLaid.of(marker, by.keepsPins ? hand().pinned() : Set.of()));
      tellMarker();
    }
  }

  private synchronized void refuse(List<Problem> problems, Search by) {
    if (runs(by)) {
      refused = problems;
    }
  }

  private synchronized void ended(Search by) {
    if (runs(by)) {
      search = Optional.empty();
      tabs.tell("searched", said());
    }
  }

  /** The number of what a page is told next. */
  synchronized long tell() {
    return ++told;
  }

  private ObjectNode said() {
    ObjectNode said = Json.object();
    said.put("cloth", cloth);
    said.put("told", tell());
    said.put("searching", search.isPresent());
    said.set("problems", Problems.json(refused));
    return said;
  }

  /** Ends the search; the best that it found lies here. */
  synchronized void keep() {
    search.ifPresent(s -> s.stop.request());
  }

  /** Ends the search without waiting for more. */
  private void endSearch() {
    if (search.isPresent()) {
      keep();
      search = Optional.empty();
      tabs.tell("searched", said());
    }
  }

  /** Ends the search for good; the best that it has found is on disk. */
  synchronized void close() {
    keep();
    search = Optional.empty();
  }

  /**
   * A step by hand.
   *
   * @return the number of what the tabs are told of it
   * @throws Declined if it cannot be done with what lies here
   */
  synchronized long step(HandStep step) {
    HandLaid from = hand();
    HandLaid next = step.on(from);
    endSearch();
    remember();
    put(next);
    tabs.tell("marker", TableJson.moved(this, from, next));
    return told;
  }

  private void tellMarker() {
    tabs.tell("marker", TableJson.event(this, hand()));
  }

  private void remember() {
    hand.ifPresent(h -> before.push(new Laid(h.marker(), h.pinned())));
    if (before.size() > MOST_STEPS_BACK) {
      before.removeLast();
    }
  }

  synchronized void undo() {
    endSearch();
    if (!before.isEmpty()) {
      Laid last = before.pop();
      put(TableRun.of(job, goods, last.marker(), last.pinned()));
      tellMarker();
    }
  }

  private void put(HandLaid next) {
    hand = Optional.of(next);
    laid++;
    WholeFile.write(file, TableRun.bytes(job, next));
  }

  private HandLaid hand() {
    return hand.orElseThrow(
        () -> Declined.asItIsNow("nothing lies on " + cloth + " yet", "Lay it first"));
  }

  synchronized boolean canBeCut() {
    return hand.filter(h -> h.findings().isEmpty()).isPresent();
  }

  /**
   * What lies here, to be cut.
   *
   * @throws Declined if nothing does, or it breaks a rule
   */
  synchronized Marker legal() {
    HandLaid now = hand();
    if (!now.findings().isEmpty()) {
      throw Declined.asItIsNow(
          "the marker of "
              + cloth
              + " cannot be cut: "
              + now.findings().get(0).sentence(job.unit()),
          "Put right what the table tells, or lay it anew");
    }
    return now.marker();
  }

  /** What is left of the cloth as it lies now. */
  synchronized LeftOvers leftOvers() {
    return LeftOvers.of(hand().marker(), job.unit());
  }

  synchronized Job job() {
    return job;
  }

  /** Another whenever another marker lies here. */
  synchronized Object stamp() {
    return hand.map(System::identityHashCode);
  }

  /** The number of what lies here: the next that is laid has the next. */
  synchronized long laid() {
    return laid;
  }

  synchronized boolean canUndo() {
    return !before.isEmpty();
  }

  /** All that a page needs to draw it. */
  synchronized ObjectNode json() {
    ObjectNode json = said();
    json.set("goods", TableJson.goods(goods));
    hand.ifPresent(h -> json.set("marker", TableJson.whole(this, h)));
    return json;
  }
}
