package ellwand.cli;

import ellwand.app.Answer;
import ellwand.app.Hands;
import ellwand.file.source.Folder;
import ellwand.file.source.RunFolder;
import ellwand.many.BatchJob;
import ellwand.many.JobFiles.Read;
import ellwand.many.MarkerCraft;
import ellwand.many.Workshop;
import ellwand.problem.InputException;
import ellwand.units.Unit;
import ellwand.work.Request;
import ellwand.work.Stop;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.function.BiFunction;
import java.util.function.Function;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/**
 * What commands that search have in common: read the job, make, write, print.
 *
 * @param <J> what is asked for
 */
abstract class RunCommand<J> implements Callable<Integer> {

  private final BiFunction<String, Folder, Read<J>> reader;
  private final Function<J, Unit> unit;
  private final String folderEnding;

  @Mixin private JobMixin file;
  @Mixin private SearchMixin search;
  @Mixin private HelpersMixin helpers;
  @Mixin private ShowMixin show;
  @ParentCommand private Main main;
  @Spec private CommandSpec spec;

  /**
   * @param unit of the job, which serves where the user asks for none
   * @param folderEnding of the folder for results, put to the job's name
   */
  RunCommand(
      BiFunction<String, Folder, Read<J>> reader, Function<J, Unit> unit, String folderEnding) {
    this.reader = reader;
    this.unit = unit;
    this.folderEnding = folderEnding;
  }

  /**
   * Does what the command is for.
   *
   * @param shown unit that lengths are shown in
   * @param hands that search for its markers
   */
  abstract Answer make(J job, Unit shown, Request request, Hands hands);

  /**
   * The same as one job of a batch, which decides where results go.
   *
   * @param base that paths are seen from
   * @param args the command as it was parsed
   * @throws InputException if it says something else of its results
   */
  final BatchJob inBatch(Path base, String words, List<String> args) {
    InputException.unless(
        !file.namesFolder() && !show.json() && !helpers.asked(),
        "results and helpers are the batch's own",
        "Leave out --out, --json and --with-helpers, and give them to batch");
    Path named = file.path();
    Path parent = named.normalize().getParent();
    String name =
        (parent == null || named.isAbsolute() || parent.startsWith("..") ? Path.of("") : parent)
            .resolve(file.name() + folderEnding)
            .toString()
            .replace('\\', '/');
    file.seenFrom(base);
    int cores = search.request(new Stop()).threads() * search.seeds();
    return new BatchJob(name, words, cores, () -> ready(args));
  }

  private Request request(Stop stop) {
    return helpers.asked() ? search.shared(stop) : search.request(stop);
  }

  private BatchJob.Ready ready(List<String> args) {
    Read<J> read = reader.apply(file.path().toString(), Folder.DISK);
    Unit shown = UnitMixin.atTable(show.unit().orElseGet(() -> unit.apply(read.what())));
    List<String> words = new ArrayList<>(args);
    words.add(new Main.Version().getVersion()[0]);
    return new BatchJob.Ready(
        read.files().digest(words),
        (workshop, stop, progress) ->
            make(
                read.what(),
                shown,
                search.request(stop).with(progress),
                read.hands(workshop, search.seeds())));
  }

  /** The command, to refuse its options with. */
  final CommandSpec spec() {
    return spec;
  }

  @Override
  public final Integer call() {
    Read<J> read = reader.apply(file.path().toString(), Folder.DISK);
    J job = read.what();
    Unit shown = UnitMixin.atTable(show.unit().orElseGet(() -> unit.apply(job)));
    Request request = request(main.stop());
    PrintWriter err = spec.commandLine().getErr();
    RunFolder folder = RunFolder.at(file.folder(folderEnding)).writable();
    Answer answer;
    try (Console console = Console.open(err, request.effort(), shown);
        Workshop workshop = helpers.workshop(new MarkerCraft(read), search.cores(), err)) {
      answer = make(job, shown, request.with(console), read.hands(workshop, search.seeds()));
    }
    write(answer, folder, err);
    show.print(spec.commandLine().getOut(), answer);
    answer.remarks().forEach(err::println);
    return answer.achieved() ? Main.DONE : Main.RULE_BROKEN;
  }

  /** Nothing is written before everything is made. */
  private static void write(Answer answer, RunFolder folder, PrintWriter err) {
    Map<String, byte[]> files = new LinkedHashMap<>();
    answer.outputs().forEach(output -> files.put(output.name(), output.bytes()));
    if (!files.isEmpty()) {
      folder.write(files).forEach(written -> err.println("Written: " + written));
    }
  }
}
