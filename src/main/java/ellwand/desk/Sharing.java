package ellwand.desk;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.file.job.JobReader;
import ellwand.file.job.OrderJobReader;
import ellwand.file.job.StyleFile;
import ellwand.file.source.Folder;
import ellwand.file.source.YamlTree;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import java.nio.charset.StandardCharsets;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;

/**
 * Which files of a maker's folder take something from which others: a style that several jobs
 * share, a block that a piece starts from. Who changes one of them must not break the rest.
 */
final class Sharing {

  /** What a file may take whole from another, by the name of its section. */
  static final List<String> SECTIONS = List.of("style", "sizes", "cloths", "remnants", "order");

  private static final int MOST_BYTES = 5_000_000;

  private final Supplier<Map<String, Path>> files;
  private final UnaryOperator<Path> histories;

  /**
   * @param files of the folder that may take something, by the name that they go by
   * @param histories where it is kept what a file of the folder held before
   */
  Sharing(Supplier<Map<String, Path>> files, UnaryOperator<Path> histories) {
    this.files = files;
    this.histories = histories;
  }

  /**
   * Where it is kept what a file held before.
   *
   * @throws InputException if it is none of the folder's
   */
  Path history(Path file) {
    if (!files.get().containsValue(file)) {
      throw InputException.of(
          file.getFileName() + " lies outside this folder",
          "Open the desk on a folder that has it");
    }
    return histories.apply(file);
  }

  /** The names of those that take something from a file, also by way of others. */
  List<String> users(Path of) {
    Map<String, Path> all = files.get();
    Set<Path> known = new LinkedHashSet<>(Set.of(of));
    List<String> users = new ArrayList<>();
    boolean more = true;
    while (more) {
      more = false;
      for (Map.Entry<String, Path> file : all.entrySet()) {
        if (!known.contains(file.getValue())
            && taken(file.getValue()).stream().anyMatch(known::contains)) {
          known.add(file.getValue());
          users.add(file.getKey());
          more = true;
        }
      }
    }
    return users;
  }

  private static List<Path> taken(Path file) {
    List<Path> taken = new ArrayList<>();
    entries(file, Folder.DISK)
        .ifPresent(
            root -> {
              SECTIONS.forEach(section -> named(file, root.path(section)).ifPresent(taken::add));
              root.path("style")
                  .path("pieces")
                  .forEach(piece -> named(file, piece.path("from")).ifPresent(taken::add));
            });
    return taken;
  }

  /** The file that {@code {file: coat.yaml}} names, seen from the one in which it stands. */
  static Optional<Path> named(Path from, JsonNode entry) {
    try {
      JsonNode file = entry.path("file");
      return file.isTextual()
          ? Optional.of(from.resolveSibling(file.asText()).normalize())
          : Optional.empty();
    } catch (InvalidPathException e) {
      return Optional.empty();
    }
  }

  /** What a file says; nothing if it cannot be read. */
  static Optional<ObjectNode> entries(Path file, Folder from) {
    try {
      byte[] bytes = from.read(file.toString(), MOST_BYTES);
      return YamlTree.of(new String(bytes, StandardCharsets.UTF_8));
    } catch (InputException e) {
      return Optional.empty();
    }
  }

  /**
   * What would go wrong elsewhere that is right now, if the folder held this instead.
   *
   * @param tried which files need not be looked at
   */
  List<Problem> broken(Path by, Folder then, Predicate<Path> tried) {
    Map<String, Path> all = files.get();
    List<Problem> broken = new ArrayList<>();
    List<String> users = users(by);
    users.removeIf(user -> tried.test(all.get(user)));
    for (String user : users) {
      List<Problem> now = problems(all.get(user), Folder.DISK);
      problems(all.get(user), then).stream()
          .filter(p -> now.stream().noneMatch(old -> old.what().equals(p.what())))
          .forEach(p -> broken.add(in(user, p)));
    }
    return broken;
  }

  /** Whether a file can be opened as it is; one that cannot be read is, to show what is wrong. */
  static boolean isJob(Path file) {
    return entries(file, Folder.DISK)
        .map(root -> root.has("cloths") || !root.has("style"))
        .orElse(true);
  }

  private static Problem in(String user, Problem p) {
    return new Problem(
        p.file(), p.line(), p.piece(), p.edge(), "then in " + user + " " + p.what(), p.remedy());
  }

  private static List<Problem> problems(Path file, Folder from) {
    try {
      ObjectNode root = entries(file, from).orElse(null);
      if (root == null) {
        return List.of();
      }
      if (file.toString().endsWith(OrderBook.ENDING)) {
        OrderJobReader.read(file.toString(), from);
      } else if (root.has("cloths")) {
        JobReader.read(file.toString(), from);
      } else {
        StyleFile.read(file.toString(), from);
      }
      return List.of();
    } catch (InputException e) {
      return e.problems();
    }
  }
}
