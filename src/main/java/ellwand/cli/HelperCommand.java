package ellwand.cli;

import ellwand.many.MarkerCraft;
import ellwand.many.cluster.Helper;
import ellwand.many.cluster.KeyMaker;
import ellwand.many.cluster.Place;
import ellwand.many.cluster.SecondJar;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** Helps another machine with its searches. */
@Command(
    mixinStandardHelpOptions = true,
    description =
        "Helps another machine: searches for the markers that a command there asks for with"
            + " --with-helpers, until Ctrl-C. Waits where nobody asks yet, and for the next when a"
            + " command has ended.",
    footer = {
      "",
      "Example, once for the workshop: helper --make-keys keys table attic",
      "Example, on the machine in the attic: helper --join table --keys attic.p12"
    })
final class HelperCommand implements Callable<Integer> {

  @ArgGroup(multiplicity = "1")
  private Does does;

  /** One or the other. */
  static final class Does {
    @Option(
        names = "--join",
        paramLabel = "HOST[:PORT]",
        description = "Whom to help. Default port: " + Place.USUAL_PORT + ".")
    private String join;

    @Option(
        names = "--make-keys",
        paramLabel = "FOLDER",
        description =
            "Make a file of keys for each MACHINE, and in the same folder the authority that signs"
                + " them, if there is none yet. Bring each file to its machine, and show it to"
                + " nobody else; the authority stays.")
    private Path makeKeys;
  }

  @Parameters(
      paramLabel = "MACHINE",
      arity = "0..*",
      description = "With --make-keys: what the files are called. Default: asker and helper.")
  private List<String> machines = List.of();

  @Option(
      names = "--cores",
      paramLabel = "N",
      description = "How many cores to lend. Default: all.")
  private int cores = Runtime.getRuntime().availableProcessors();

  @Option(
      names = "--keys",
      paramLabel = "FILE.p12",
      description = "This machine's keys. Without, only a command on this machine can be helped.")
  private Path keys;

  @Option(
      names = "--at",
      paramLabel = "HOST[:PORT]",
      description =
          "This machine's address as the others reach it. Default: the one that leads to HOST, at"
              + " any free port.")
  private String at;

  @ParentCommand private Main main;
  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws IOException, InterruptedException {
    PrintWriter out = spec.commandLine().getOut();
    if (does.makeKeys != null) {
      List<String> names = machines.isEmpty() ? List.of("asker", "helper") : machines;
      new KeyMaker(does.makeKeys).make(names).forEach(out::println);
      return Main.DONE;
    }
    if (!machines.isEmpty() || cores < 1) {
      throw new ParameterException(
          spec.commandLine(),
          machines.isEmpty()
              ? "--cores takes a number from 1 up"
              : "MACHINE goes with --make-keys; whom to help is said with --join");
    }
    SecondJar.required();
    PrintWriter err = spec.commandLine().getErr();
    new Helper(
            new MarkerCraft(),
            cores,
            () -> Place.known(does.join, Place.USUAL_PORT),
            Optional.ofNullable(at).map(text -> Place.of(text, 0)),
            Optional.ofNullable(keys),
            text -> {
              err.println(text);
              err.flush();
            })
        .run(main.stop());
    return Main.DONE;
  }
}
