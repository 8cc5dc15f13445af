package ellwand.cli;

import ellwand.many.Batch;
import ellwand.many.BatchEntry;
import ellwand.many.BatchIndex;
import ellwand.many.BatchJob;
import ellwand.many.MarkerCraft;
import ellwand.many.Workshop;
import ellwand.work.Progress;
import ellwand.work.Stop;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** Makes many jobs, a night's work. */
@Command(
    mixinStandardHelpOptions = true,
    description =
        "Makes many jobs one after another, each into a folder of its own as its command alone"
            + " would, with one index of all results. Ended by whatever, it goes on where it was"
            + " when it is started again.",
    footer = {
      "",
      "A list has a command a line, such as: order tunic/order.yaml --effort 5min. A job alone is"
          + " laid, or planned if it is an order. Paths are seen from the list; # begins a"
          + " comment.",
      "",
      "Example: batch tonight.txt --effort 10min",
      "Example: batch sample-markers --out all-samples",
      "Exit code: the worst of the jobs; 1 also if some are left."
    })
final class BatchCommand implements Callable<Integer> {

  /** Handed on to every job that does not say otherwise. */
  private static final List<String> USUAL =
      List.of("--effort", "--seed", "--seeds", "--threads", "--units");

  @Parameters(paramLabel = "LIST|FOLDER", description = "A list of jobs, or a folder with jobs.")
  private Path from;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "Folder for all results. Default: beside the list or folder, named after it.")
  private Path out;

  @Option(names = "--json", description = "Print the index as JSON and nothing else.")
  private boolean json;

  @Mixin private SearchMixin search;
  @Mixin private HelpersMixin helpers;
  @Mixin private UnitMixin units;
  @ParentCommand private Main main;
  @Spec private CommandSpec spec;

  @Override
  public Integer call() {
    PrintWriter err = spec.commandLine().getErr();
    Path results = out == null ? beside() : out;
    List<BatchJob> jobs =
        Files.isDirectory(from)
            ? BatchList.ofFolder(from, results, usual())
            : BatchList.ofList(from, usual());
    Stop stop = main.stop();
    BatchIndex index;
    try (Workshop workshop = helpers.workshop(new MarkerCraft(), search.cores(), err)) {
      index = new Batch(jobs, results, workshop, stop, new Told(err)).run();
    }
    spec.commandLine()
        .getOut()
        .println(
            json
                ? ShowMixin.ascii(new String(index.json(), StandardCharsets.UTF_8).strip())
                : text(index));
    err.println("Index: " + results.resolve("index.html"));
    return code(index);
  }

  private Path beside() {
    Path whole = from.toAbsolutePath().normalize();
    String name = whole.getFileName().toString().replaceFirst("\\.[^.]+$", "");
    return whole.resolveSibling(name + "-batch");
  }

  /** The options that the user gave for every job. */
  private List<String> usual() {
    List<String> usual = new ArrayList<>();
    for (String name : USUAL) {
      OptionSpec option = spec.commandLine().getParseResult().matchedOption(name);
      if (option != null) {
        usual.add(name);
        usual.add(option.originalStringValues().get(0));
      }
    }
    if (helpers.asked() && !usual.contains("--threads")) {
      // Then as many jobs are made at once as cores have come together.
      usual.addAll(List.of("--threads", "1"));
    }
    return usual;
  }

  private static String text(BatchIndex index) {
    List<String> lines = new ArrayList<>();
    int width = index.entries().stream().mapToInt(e -> e.name().length()).max().orElse(0);
    for (BatchEntry entry : index.entries()) {
      lines.add(
          ("%-" + width + "s  %-7s  %s")
              .formatted(entry.name(), entry.state().word(), entry.said().replace("\n", " ")));
    }
    return String.join("\n", lines);
  }

  private static int code(BatchIndex index) {
    if (index.count(BatchEntry.State.BROKEN) > 0) {
      return Main.OUR_BUG;
    }
    if (index.count(BatchEntry.State.REFUSED) > 0) {
      return Main.BAD_INPUT;
    }
    return index.count(BatchEntry.State.DONE) < index.entries().size()
        ? Main.RULE_BROKEN
        : Main.DONE;
  }

  /** Says on stderr how a batch gets on. */
  private record Told(PrintWriter err) implements Batch.Listener {

    @Override
    public void read(int kept, List<BatchEntry> refused, int left) {
      refused.forEach(entry -> say(entry.said()));
      say(
          "%d to do%s%s"
              .formatted(
                  left,
                  kept > 0 ? ", " + kept + " done before" : "",
                  refused.isEmpty() ? "" : ", " + refused.size() + " refused"));
    }

    @Override
    public void begun(BatchJob job) {
      say("begun: " + job.words());
    }

    @Override
    public void ended(BatchEntry entry, int left, double secondsLeft) {
      say(
          entry.name()
              + ": "
              + (entry.state() == BatchEntry.State.LEFT ? "stopped" : entry.said()));
      say(left == 0 ? "none left" : left + " left, about " + time(secondsLeft));
    }

    private static String time(double seconds) {
      return seconds < 90 ? Math.round(seconds) + " s" : Math.round(seconds / 60) + " min";
    }

    @Override
    public void hear(News news) {
      if (news instanceof Progress.Mishap mishap) {
        say(mishap.cloth() + ": " + mishap.part() + " failed by a bug in Ellwand: ");
        mishap.why().printStackTrace(err);
      }
    }

    private void say(String line) {
      err.println(line);
      err.flush();
    }
  }
}
