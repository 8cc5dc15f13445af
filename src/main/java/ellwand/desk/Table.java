package ellwand.desk;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.app.TableRun;
import ellwand.cloth.Cloth;
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
import java.util.Optional;

/**
 * One cloth of a job on the table: the marker that lies there, the search for a shorter one, and
 * the cutter's hands. What lies there is on disk as soon as it lies there.
 */
final class Table {

  private static final int MOST_STEPS_BACK = 200;

  private final String cloth;
  private final Path file;
  private final Tabs tabs;
  private final Deque<Marker> before = new ArrayDeque<>();
  private Job job;
  private Cloth goods;
  private Optional<HandLaid> hand = Optional.empty();
  private Optional<Stop> search = Optional.empty();
  private long seed;
  private List<Problem> refused = List.of();

  Table(String cloth, Path folder, Tabs tabs) {
    this.cloth = cloth;
    this.file = folder.resolve(cloth + ".marker.json");
    this.tabs = tabs;
  }

  String cloth() {
    return cloth;
  }

  /** Holds what lies here against the job as it is now; a search for what it was ends. */
  synchronized void of(Job now, Cloth as) {
    boolean first = job == null;
    job = now;
    goods = as;
    if (first && Folder.DISK.holds(file.toString())) {
      hand = TableRun.kept(job, goods, file.toString(), Folder.DISK).map(HandLaid::of);
    } else {
      hand = hand.map(h -> HandLaid.of(TableRun.of(job, goods, h.marker())));
      before.clear();
    }
    search.ifPresent(Stop::request);
  }

  /**
   * Starts the search for a marker, or for a shorter one than lies here.
   *
   * @param effort after which it ends by itself
   */
  synchronized void lay(Effort effort) {
    search.ifPresent(Stop::request);
    Stop stop = new Stop();
    search = Optional.of(stop);
    refused = List.of();
    seed++;
    Request request = new Request(effort, new Seed(seed), threads(), stop, Progress.NONE);
    Job asked = job;
    Cloth on = goods;
    Thread searching = new Thread(() -> search(asked, on, request, stop), "table " + cloth);
    searching.setDaemon(true);
    searching.start();
    tabs.tell("searching", said());
  }

  /** One core is left for who moves pieces by hand meanwhile. */
  private static int threads() {
    return Math.max(1, Runtime.getRuntime().availableProcessors() - 1);
  }

  private void search(Job asked, Cloth on, Request request, Stop stop) {
    try {
      Marker best =
          TableRun.lay(asked, on, asked.unit(), request, marker -> better(marker, asked, stop));
      better(best, asked, stop);
    } catch (InputException e) {
      refuse(e.problems(), stop);
    } catch (RuntimeException | Error e) {
      refuse(
          List.of(
              Problem.of(
                  "the search failed by a mistake in Ellwand: " + e,
                  "Please report this with the job file; what lay here before still does")),
          stop);
    }
    ended(stop);
  }

  private synchronized void better(Marker marker, Job asked, Stop stop) {
    if (asked != job || search.filter(s -> s == stop).isEmpty()) {
      return;
    }
    boolean shorter =
        hand.filter(h -> h.findings().isEmpty())
            .map(h -> marker.clothLengthMm() < h.marker().clothLengthMm() - 1e-6)
            .orElse(true);
    if (shorter) {
      put(HandLaid.of(marker));
      tabs.tell("marker", TableJson.event(this, hand.get(), false));
    }
  }

  private synchronized void refuse(List<Problem> problems, Stop stop) {
    if (search.filter(s -> s == stop).isPresent()) {
      refused = problems;
    }
  }

  private synchronized void ended(Stop stop) {
    if (search.filter(s -> s == stop).isPresent()) {
      search = Optional.empty();
      tabs.tell("searched", said());
    }
  }

  private ObjectNode said() {
    ObjectNode said = Json.object();
    said.put("cloth", cloth);
    said.put("searching", search.isPresent());
    said.set("problems", Problems.json(refused));
    return said;
  }

  /** Ends the search; the best that it found lies here. */
  synchronized void keep() {
    search.ifPresent(Stop::request);
  }

  void close() {
    keep();
  }

  /**
   * A step by hand.
   *
   * @param ask what is done ({@code move, slide, turn, exchange}), to which copy, and how far
   * @throws InputException if there is nothing to do it with
   */
  synchronized void step(JsonNode ask) {
    HandLaid now = hand();
    keep();
    search = Optional.empty();
    int copy = copy(ask.path("copy"), now);
    double along = ask.path("along").asDouble();
    double across = ask.path("across").asDouble();
    HandLaid next =
        switch (ask.path("do").asText()) {
          case "move" -> now.move(copy, along, across);
          case "slide" -> now.slide(copy, along, across);
          case "turn" -> now.turn(copy, ask.path("degrees").asDouble());
          case "exchange" -> now.exchange(copy, copy(ask.path("other"), now));
          default ->
              throw InputException.of(
                  "this cannot be done by hand", "Move, slide, turn or exchange a piece");
        };
    before.push(now.marker());
    if (before.size() > MOST_STEPS_BACK) {
      before.removeLast();
    }
    put(next);
    tabs.tell("marker", TableJson.event(this, next, true));
  }

  private static int copy(JsonNode number, HandLaid now) {
    int copy = number.asInt(-1);
    if (copy < 0 || copy >= now.marker().copies().size()) {
      throw InputException.of("there is no such piece on the table", "Look at it as it lies now");
    }
    return copy;
  }

  synchronized void undo() {
    if (!before.isEmpty()) {
      put(HandLaid.of(before.pop()));
      tabs.tell("marker", TableJson.event(this, hand.get(), true));
    }
  }

  private void put(HandLaid next) {
    hand = Optional.of(next);
    WholeFile.write(file, TableRun.bytes(job, next.marker()));
  }

  private HandLaid hand() {
    return hand.orElseThrow(
        () -> InputException.of("nothing lies on " + cloth + " yet", "Lay it first"));
  }

  /**
   * What lies here, to be cut.
   *
   * @throws InputException if nothing does, or it breaks a rule
   */
  synchronized Marker legal() {
    HandLaid now = hand();
    if (!now.findings().isEmpty()) {
      throw InputException.of(
          "the marker of "
              + cloth
              + " cannot be cut: "
              + now.findings().get(0).sentence(job.unit()),
          "Put right what the table tells, or lay it anew");
    }
    return now.marker();
  }

  synchronized Job job() {
    return job;
  }

  /** Another whenever another marker lies here. */
  synchronized Object stamp() {
    return hand.map(System::identityHashCode);
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
