package ellwand.desk;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.file.source.Folder;
import ellwand.file.source.Json;
import ellwand.file.source.WholeFile;
import ellwand.file.source.YamlEdit;
import ellwand.file.source.YamlTree;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.BiFunction;

/**
 * A file of the maker's, which is changed one entry at a time: on disk before anything else, what
 * it held before kept. Other programs may change it as well. For one thread at a time.
 *
 * @param <T> what it says
 */
final class KeptFile<T> {

  private static final int MOST_BYTES = 5_000_000;

  private final Path path;
  private final History history;
  private final Sharing sharing;
  private final BiFunction<String, Folder, T> reader;
  private String text = "";
  private NotedFolder seen = new NotedFolder(Folder.EMPTY);
  private Optional<T> read = Optional.empty();
  private List<Problem> problems = List.of();

  /**
   * @param history folder for what it held before
   * @param sharing knows which other files take something from it
   * @param reader reads a file of a name from a folder
   */
  KeptFile(Path path, Path history, Sharing sharing, BiFunction<String, Folder, T> reader) {
    this.path = path;
    this.history = new History(history);
    this.sharing = sharing;
    this.reader = reader;
    set();
    this.history.note(text);
  }

  Path path() {
    return path;
  }

  /**
   * Reads the file again if it, or one that it names, was changed elsewhere, and tells whether it
   * was. What somebody else wrote is a step of its history as well, so that none takes it away.
   */
  boolean look() {
    if (seen.same()) {
      return false;
    }
    set();
    history.note(text);
    return true;
  }

  private void set() {
    seen = new NotedFolder(Folder.DISK);
    text = new String(seen.read(path.toString(), MOST_BYTES), StandardCharsets.UTF_8);
    try {
      read = Optional.of(reader.apply(path.toString(), seen));
      problems = List.of();
    } catch (InputException e) {
      read = Optional.empty();
      problems = e.problems();
    }
  }

  /**
   * Changes one entry.
   *
   * @param at from the outermost entry inward
   * @param was what the page shows of it, nothing for an entry that is not there
   * @param value what it is to be, nothing to take it out
   * @throws Declined if somebody else has changed it meanwhile
   * @throws InputException if the file would have problems that it did not have; it is then as
   *     before
   */
  void edit(List<String> at, Optional<JsonNode> was, Optional<JsonNode> value) {
    look();
    Optional<JsonNode> now = at(at);
    if (!same(now, was)) {
      throw Declined.asItIsNow(
          "this was changed meanwhile, to " + now.map(JsonNode::toString).orElse("nothing"),
          "Look at it as it is now, and change it again if you still want to");
    }
    change(
        value.map(v -> YamlEdit.set(text, at, v)).orElseGet(() -> YamlEdit.remove(text, at)),
        (old, fresh) -> {});
  }

  /**
   * Changes all of the text at once.
   *
   * @param held holds what it said against what it would say, and may refuse
   * @throws InputException if it, or a file that takes something from it, would have problems that
   *     it did not have; it is then as before
   */
  void change(String next, BiConsumer<T, T> held) {
    byte[] bytes = next.getBytes(StandardCharsets.UTF_8);
    Folder then = Folder.DISK.with(path.toString(), bytes);
    // Several jobs may change one style.
    synchronized (sharing) {
      List<Problem> fresh = new ArrayList<>();
      try {
        T said = reader.apply(path.toString(), then);
        read.ifPresent(old -> held.accept(old, said));
      } catch (InputException e) {
        fresh.addAll(e.problems());
        fresh.removeIf(p -> problems.stream().anyMatch(old -> old.what().equals(p.what())));
      }
      fresh.addAll(sharing.broken(path, then, seen::has));
      if (!fresh.isEmpty()) {
        throw new InputException(fresh);
      }
      keep(next);
      history.note(next);
    }
  }

  /** A page writes 1.50 as 1.5. */
  private static boolean same(Optional<JsonNode> now, Optional<JsonNode> was) {
    return now.isPresent() == was.isPresent()
        && now.filter(n -> !n.equals(KeptFile::compare, was.get())).isEmpty();
  }

  private static int compare(JsonNode one, JsonNode other) {
    return one.isNumber() && other.isNumber()
        ? Double.compare(one.asDouble(), other.asDouble())
        : one.equals(other) ? 0 : 1;
  }

  private void keep(String next) {
    WholeFile.write(path, next.getBytes(StandardCharsets.UTF_8));
    set();
  }

  void undo() {
    look();
    history.undo().ifPresent(this::keep);
  }

  void redo() {
    look();
    history.redo().ifPresent(this::keep);
  }

  String text() {
    return text;
  }

  /** What stands at a place. */
  Optional<JsonNode> at(List<String> place) {
    return YamlTree.at(text, place);
  }

  /** What it says, if it can be read. */
  Optional<T> said() {
    return read;
  }

  /**
   * What it says.
   *
   * @throws Declined with what is wrong with it
   */
  T get() {
    return read.orElseThrow(() -> Declined.asItIsNow(problems));
  }

  /** What a page needs to change it. */
  ObjectNode json() {
    ObjectNode json = Json.object();
    json.set("entries", YamlTree.of(text).orElse(Json.object()));
    json.put("undo", history.canUndo());
    json.put("redo", history.canRedo());
    json.set("problems", Problems.json(problems));
    return json;
  }
}
