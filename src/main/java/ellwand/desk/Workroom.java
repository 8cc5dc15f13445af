package ellwand.desk;

import ellwand.file.job.JobReader;
import ellwand.file.source.Folder;
import ellwand.file.source.Names;
import ellwand.file.source.WholeFile;
import ellwand.job.Job;
import ellwand.problem.InputException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;

/**
 * A maker's folder: her jobs are the YAML files in it and in the folders in that. A job goes by a
 * name that is looked up among those that are there; it never becomes a path.
 */
final class Workroom {

  /** Styles to begin with, as they lie among the resources. */
  static final List<String> SAMPLES =
      List.of(
          "weir-jacket",
          "garth-waistcoat",
          "tarn-waistcoat",
          "fell-bodywarmer",
          "stile-breeches",
          "beck-tunic");

  /** Folder for what the desk keeps. */
  static final String HIDDEN = ".ellwand";

  private final Path folder;
  private final Sharing sharing;
  private final Map<String, OpenJob> open = new ConcurrentHashMap<>();

  Workroom(Path folder) {
    // As files that name one another are called, so that they are recognised.
    this.folder = folder.normalize();
    this.sharing = new Sharing(this::files, file -> hidden(name(file)).resolve("history"));
  }

  /** The jobs that are there, by name. */
  Map<String, Path> jobs() {
    Map<String, Path> jobs = files();
    jobs.keySet().removeIf(name -> name.endsWith(OrderBook.ENDING));
    return jobs;
  }

  /** Jobs, orders and styles, by name. */
  private Map<String, Path> files() {
    Map<String, Path> jobs = new LinkedHashMap<>();
    try (Stream<Path> files = Files.isDirectory(folder) ? Files.walk(folder, 2) : Stream.of()) {
      files
          .filter(this::mayBeJob)
          .sorted(Comparator.comparing(Path::toString))
          .forEach(path -> jobs.put(name(path), path));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return jobs;
  }

  private boolean mayBeJob(Path path) {
    return name(path).matches("([^./][^/]*/)?[^./][^/]*\\.ya?ml") && Files.isRegularFile(path);
  }

  private String name(Path path) {
    return folder.relativize(path).toString().replace('\\', '/');
  }

  /**
   * A job to be looked at.
   *
   * @throws Declined if there is none of this name
   */
  OpenJob open(String name) {
    OpenJob known = open.get(name);
    if (known != null && known.isThere()) {
      return known;
    }
    Path path =
        Optional.ofNullable(jobs().get(name))
            .orElseThrow(
                () ->
                    Declined.notThere(
                        "no job is called " + Names.shown(name),
                        "Choose one that is in the folder"));
    return open.computeIfAbsent(name, n -> new OpenJob(n, path, hidden(n), sharing));
  }

  /** Where history and markers of a job are kept. */
  private Path hidden(String name) {
    return folder.resolve(HIDDEN).resolve(name.replace('/', '+'));
  }

  /**
   * Begins with a sample.
   *
   * @return its name here
   * @throws InputException if there is no such sample
   */
  String begin(String sample) {
    if (!SAMPLES.contains(sample)) {
      throw InputException.of(
          "no sample is called " + Names.shown(sample),
          "Choose one of " + String.join(", ", SAMPLES));
    }
    return create(sample, sample(sample));
  }

  /**
   * Begins a job with a style of the folder, which stays in its own file.
   *
   * @return its name here
   * @throws InputException if there is no such style
   */
  String beginWith(String style) {
    Path path =
        Optional.ofNullable(jobs().get(style))
            .orElseThrow(
                () ->
                    InputException.of(
                        "no style is called " + Names.shown(style),
                        "Choose one that is in the folder"));
    return create(
        style.replaceFirst("\\.ya?ml$", "") + " job",
        Newcomer.with(path.toString(), folder.relativize(path).toString().replace('\\', '/')));
  }

  /**
   * Reads a sample as a page will ask for one, so that all that takes is there when it does.
   * Whatever goes wrong will go wrong again where somebody sees it.
   */
  static void warm() {
    try {
      String name = SAMPLES.get(0) + ".yaml";
      Job job = JobReader.read(name, Folder.EMPTY.with(name, sample(SAMPLES.get(0))));
      PiecesJson.of(job, job.style().drawnSize()).toString();
    } catch (RuntimeException e) {
      // See above.
    }
  }

  /**
   * Puts a new job into the folder, beside one of the same name.
   *
   * @return its name here
   */
  String create(String wanted, byte[] job) {
    String plain = wanted.replaceAll("[^\\p{L}\\p{N} _-]", " ").strip();
    String name = plain.isEmpty() ? "style" : plain.substring(0, Math.min(60, plain.length()));
    Path path = folder.resolve(name + ".yaml");
    // A style that ended like an order's file would not be listed.
    for (int i = 2; Files.exists(path) || path.toString().endsWith(OrderBook.ENDING); i++) {
      path = folder.resolve(name + " " + i + ".yaml");
    }
    WholeFile.write(path, job);
    return name(path);
  }

  private static byte[] sample(String name) {
    try (InputStream in =
        Workroom.class.getResourceAsStream("/ellwand/samples/" + name + "/job.yaml")) {
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Lets the other jobs see what was changed in one, if they share it. */
  void changed(OpenJob by) {
    open.values().stream().filter(job -> job != by).forEach(OpenJob::lookAgain);
  }

  /** Opens those that have their style where a job has it, so that their markers follow. */
  void openSharers(OpenJob job) {
    Map<String, Path> jobs = jobs();
    for (String sharer : job.sharers()) {
      if (jobs.containsKey(sharer) && Sharing.isJob(jobs.get(sharer))) {
        open(sharer);
      }
    }
  }

  /** Ends all searches; each keeps its best. */
  void close() {
    open.values().forEach(OpenJob::close);
  }
}
