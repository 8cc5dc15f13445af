package ellwand.cli;

import ellwand.problem.InputException;
import ellwand.work.Stop;
import java.io.PrintWriter;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.logging.Level;
import java.util.logging.Logger;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.ExitCode;

/** The program {@code ellwand}. */
@Command(
    name = "ellwand",
    description =
        "Plans how to lay pattern pieces on cloth: how much to buy, where each piece lies.",
    subcommands = {
      LayCommand.class,
      CompareCommand.class,
      FitCommand.class,
      CheckCommand.class,
      DrawCommand.class,
      OrderCommand.class,
      CommandLine.HelpCommand.class
    },
    synopsisSubcommandLabel = "COMMAND",
    mixinStandardHelpOptions = true,
    versionProvider = Main.Version.class)
public final class Main implements Runnable {

  /** Exit codes, as the README lists them. */
  static final int DONE = ExitCode.OK;

  static final int RULE_BROKEN = 1;
  static final int BAD_INPUT = 2;
  static final int OUR_BUG = 3;

  private final Supplier<Stop> stop;

  @CommandLine.Spec private CommandLine.Model.CommandSpec spec;

  private Main(Supplier<Stop> stop) {
    this.stop = stop;
  }

  /**
   * Set from now on when the user wants to stop. Before a command asks for it, and where one never
   * does, there is nothing to keep, and the signals end the program.
   */
  Stop stop() {
    return stop.get();
  }

  /** Counts the solver's work; warns when several solvers run at once, which is what we want. */
  private static final Logger METERS = Logger.getLogger("io.micrometer");

  public static void main(String[] args) {
    System.setProperty("java.awt.headless", "true");
    METERS.setLevel(Level.OFF);
    System.exit(commandLine(Interrupt::install).execute(args));
  }

  /** The whole command line; {@code execute} returns the exit code. */
  static CommandLine commandLine(Supplier<Stop> stop) {
    return new CommandLine(new Main(stop))
        .setCaseInsensitiveEnumValuesAllowed(true)
        .registerConverter(int.class, text -> number(text, Integer::valueOf, "4"))
        .registerConverter(long.class, text -> number(text, Long::valueOf, "4"))
        .registerConverter(Double.class, text -> number(text, Double::valueOf, "0.5"))
        .setExecutionExceptionHandler(Main::failed);
  }

  private static <N extends Number> N number(String text, Function<String, N> read, String like) {
    try {
      return read.apply(text);
    } catch (NumberFormatException e) {
      throw new CommandLine.TypeConversionException(
          "'%s' is not such a number. Write for example %s.".formatted(text, like));
    }
  }

  private static int failed(Exception e, CommandLine command, CommandLine.ParseResult args) {
    PrintWriter err = command.getErr();
    if (e instanceof InputException input) {
      input.problems().forEach(err::println);
      return BAD_INPUT;
    }
    err.println("This is a bug in Ellwand. Please report these lines with the job file:");
    e.printStackTrace(err);
    return OUR_BUG;
  }

  @Override
  public void run() {
    throw new CommandLine.ParameterException(
        spec.commandLine(), "Name a command, for example: lay JOB.yaml");
  }

  /** The version that the build wrote into the jar. */
  static final class Version implements CommandLine.IVersionProvider {
    @Override
    public String[] getVersion() {
      String version = Main.class.getPackage().getImplementationVersion();
      return new String[] {"ellwand " + (version == null ? "(not packaged)" : version)};
    }
  }
}
