package ellwand.cli;

import com.fasterxml.jackson.databind.JsonNode;
import ellwand.file.job.OrderJobReader;
import ellwand.file.source.Folder;
import ellwand.file.source.Source;
import ellwand.file.source.Tree;
import ellwand.many.BatchJob;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import ellwand.work.Stop;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine;

/** Reads what a batch is to make: a list of commands, or all jobs of a folder. */
final class BatchList {

  private static final int MOST_BYTES = 5_000_000;

  /** A word, of which parts may stand in quotes and hold spaces; or a quote that is not closed. */
  private static final Pattern WORD = Pattern.compile("(?:\"[^\"]*\"|'[^']*'|[^\\s\"'])+|[\"']");

  private static final Pattern QUOTED = Pattern.compile("\"([^\"]*)\"|'([^']*)'");

  /** How the name of a job's file ends. */
  private static final String JOB = ".*\\.ya?ml";

  private static final Set<String> COMMANDS = Set.of("lay", "order", "compare", "fit");

  private final Path base;
  private final List<String> usual;
  private final List<BatchJob> jobs = new ArrayList<>();
  private final Set<String> names = new HashSet<>();

  /**
   * @param base that paths are seen from
   * @param usual options of every command that does not say otherwise
   */
  private BatchList(Path base, List<String> usual) {
    this.base = base;
    this.usual = usual;
  }

  /**
   * The jobs of a list: a command a line as on the command line, or a job alone, which is laid, or
   * planned if it is an order. Paths are seen from the list.
   *
   * @throws InputException with every line that is no such command
   */
  static List<BatchJob> ofList(Path list, List<String> usual) {
    if (list.toString().matches(JOB)) {
      throw new InputException(
          Problem.of("this is a job, no list of jobs", "Lay it, or name it in a list")
              .at(list.toString(), 0));
    }
    String[] lines = Source.read(list.toString(), Folder.DISK, MOST_BYTES).text().split("\\R", -1);
    BatchList read = new BatchList(list.resolveSibling(""), usual);
    List<Problem> problems = new ArrayList<>();
    for (int i = 0; i < lines.length; i++) {
      String line = lines[i].strip();
      if (!line.isEmpty() && !line.startsWith("#")) {
        try {
          read.add(words(line));
        } catch (InputException e) {
          int number = i + 1;
          e.problems().forEach(p -> problems.add(p.at(list.toString(), number)));
        }
      }
    }
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
    return read.jobs(list);
  }

  /**
   * The jobs and orders in a folder and in those in it.
   *
   * @param out where results lie, which are no jobs
   */
  static List<BatchJob> ofFolder(Path folder, Path out, List<String> usual) {
    BatchList read = new BatchList(folder, usual);
    try (Stream<Path> files = Files.walk(folder)) {
      files
          .filter(path -> path.getFileName().toString().matches("[^.]" + JOB))
          .filter(path -> Files.isRegularFile(path) && !path.startsWith(out))
          .filter(BatchList::isJob)
          .map(path -> folder.relativize(path).toString().replace('\\', '/'))
          .sorted()
          .forEach(path -> read.add(List.of(path)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return read.jobs(folder);
  }

  private List<BatchJob> jobs(Path from) {
    if (jobs.isEmpty()) {
      throw new InputException(
          Problem.of("there is no job", "Name a list with a job a line, or a folder with jobs")
              .at(from.toString(), 0));
    }
    return jobs;
  }

  private void add(List<String> line) {
    List<String> words = new ArrayList<>(line);
    if (words.get(0).matches(JOB)) {
      words.add(0, isOrder(base.resolve(words.get(0))) ? "order" : "lay");
    }
    InputException.unless(
        COMMANDS.contains(words.get(0)),
        words.get(0) + " is no command of a batch",
        "Write lay, order, compare or fit, or a job alone");
    List<String> args = new ArrayList<>(words);
    args.addAll(1, usual);
    BatchJob job = job(words, args);
    String name = job.name();
    for (int i = 2; !names.add(name); i++) {
      name = job.name() + "-" + i;
    }
    jobs.add(new BatchJob(name, job.words(), job.cores(), job.reader()));
  }

  private static List<String> words(String line) {
    List<String> words = new ArrayList<>();
    Matcher matcher = WORD.matcher(line);
    while (matcher.find()) {
      String word = matcher.group();
      InputException.unless(
          !word.equals("\"") && !word.equals("'"),
          "a quote is not closed",
          "Write both quotes round a name with spaces; round one with a quote the other kind");
      if (word.startsWith("#")) {
        break;
      }
      words.add(QUOTED.matcher(word).replaceAll("$1$2"));
    }
    return words;
  }

  private static String written(List<String> words) {
    return words.stream()
        .map(word -> word.contains(" ") ? "'" + word + "'" : word)
        .collect(Collectors.joining(" "));
  }

  private BatchJob job(List<String> words, List<String> args) {
    CommandLine commands = Main.commandLine(Stop::new).setOverwrittenOptionsAllowed(true);
    try {
      CommandLine.ParseResult parsed = commands.parseArgs(args.toArray(String[]::new)).subcommand();
      InputException.unless(
          !parsed.isUsageHelpRequested(), "--help makes nothing", "Ask for it on the command line");
      RunCommand<?> command = (RunCommand<?>) parsed.commandSpec().userObject();
      return command.inBatch(base, written(words), args);
    } catch (CommandLine.ParameterException e) {
      throw InputException.of(
          e.getMessage().strip().replaceAll("\\.$", ""), "Write it as on the command line");
    }
  }

  /** Styles and other files that jobs name are none; what cannot be read is, so that it is told. */
  private static boolean isJob(Path path) {
    JsonNode root = root(path);
    return root == null || root.has("cloths") || root.has("order");
  }

  private static boolean isOrder(Path path) {
    try {
      return OrderJobReader.isOrder(path.toString(), Folder.DISK);
    } catch (InputException e) {
      return false;
    }
  }

  private static JsonNode root(Path path) {
    try {
      return Tree.ofYaml(Source.read(path.toString(), Folder.DISK, MOST_BYTES)).root();
    } catch (InputException e) {
      return null;
    }
  }
}
