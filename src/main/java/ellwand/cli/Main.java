package ellwand.cli;

import ellwand.problem.InputException;
import ellwand.work.Stop;
import ellwand.work.TooLittleMemory;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
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
    synopsisSubcommandLabel = "COMMAND",
    mixinStandardHelpOptions = true,
    versionProvider = Main.Version.class)
public final class Main implements Runnable {

  /** Exit codes, as the README lists them. */
  static final int DONE = ExitCode.OK;

  static final int RULE_BROKEN = 1;
  static final int BAD_INPUT = 2;
  static final int OUR_BUG = 3;

  /** By name, in the order of the help. */
  private static final Map<String, Class<?>> COMMANDS = new LinkedHashMap<>();

  static {
    COMMANDS.put("lay", LayCommand.class);
    COMMANDS.put("compare", CompareCommand.class);
    COMMANDS.put("fit", FitCommand.class);
    COMMANDS.put("check", CheckCommand.class);
    COMMANDS.put("draw", DrawCommand.class);
    COMMANDS.put("print", PrintCommand.class);
    COMMANDS.put("convert", ConvertCommand.class);
    COMMANDS.put("order", OrderCommand.class);
    COMMANDS.put("batch", BatchCommand.class);
    COMMANDS.put("desk", DeskCommand.class);
    COMMANDS.put("helper", HelperCommand.class);
    COMMANDS.put("help", CommandLine.HelpCommand.class);
  }

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
    // What is said and written is the same everywhere, with points in its numbers.
    Locale.setDefault(Locale.ROOT);
    METERS.setLevel(Level.OFF);
    System.exit(commandLine(Interrupt::install, args).execute(args));
  }

  /**
   * The command line; {@code execute} returns the exit code.
   *
   * @param args that it is for: where they begin with a command it knows no other, for to look at
   *     each takes a while; none if it is for any
   */
  static CommandLine commandLine(Supplier<Stop> stop, String... args) {
    CommandLine commands = commands(stop, args);
    return commandLine(commands, commands.getOut(), commands.getErr());
  }

  /** The same where what is printed goes elsewhere. */
  static CommandLine commandLine(Supplier<Stop> stop, Writer out, Writer err, String... args) {
    return commandLine(commands(stop, args), out, err);
  }

  private static CommandLine commands(Supplier<Stop> stop, String... args) {
    CommandLine commands = new CommandLine(new Main(stop));
    boolean one = args.length > 0 && COMMANDS.containsKey(args[0]) && !args[0].equals("help");
    (one ? Map.of(args[0], COMMANDS.get(args[0])) : COMMANDS).forEach(commands::addSubcommand);
    return commands;
  }

  private static CommandLine commandLine(CommandLine commands, Writer out, Writer err) {
    return commands
        .setOut(PlainText.to(out))
        .setErr(PlainText.to(err))
        .setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF))
        .setExecutionStrategy(Main::run)
        .setCaseInsensitiveEnumValuesAllowed(true)
        .registerConverter(Path.class, Main::path)
        .registerConverter(int.class, text -> number(text, Integer::valueOf, "4"))
        .registerConverter(Integer.class, text -> number(text, Integer::valueOf, "4"))
        .registerConverter(long.class, text -> number(text, Long::valueOf, "4"))
        .registerConverter(Double.class, text -> number(text, Double::valueOf, "0.5"))
        .setParameterExceptionHandler(Main::mistyped)
        .setExecutionExceptionHandler(Main::failed);
  }

  /** Says what is wrong of a command and where to read on; all of its options would hide that. */
  private static int mistyped(CommandLine.ParameterException e, String[] args) {
    CommandLine command = e.getCommandLine();
    PrintWriter err = command.getErr();
    err.println(e.getMessage());
    CommandLine.UnmatchedArgumentException.printSuggestions(e, err);
    if (command.getParent() == null) {
      command.usage(err);
    } else {
      err.println("See: " + command.getCommandSpec().qualifiedName() + " --help");
    }
    return BAD_INPUT;
  }

  /** What begins with {@code ~/} lies in the user's own folder, where no shell has said so, too. */
  private static Path path(String text) {
    try {
      return text.startsWith("~/")
          ? Path.of(System.getProperty("user.home"), text.substring(2))
          : Path.of(text);
    } catch (InvalidPathException e) {
      throw new CommandLine.TypeConversionException(
          "no file can be called '"
              + text
              + "' here. In a locale such as C, try again with LC_ALL=C.UTF-8.");
    }
  }

  private static <N extends Number> N number(String text, Function<String, N> read, String like) {
    try {
      return read.apply(text);
    } catch (NumberFormatException e) {
      throw new CommandLine.TypeConversionException(
          "'%s' is not such a number. Write for example %s.".formatted(text, like));
    }
  }

  /** As usual, but what is no exception is told as one is: by a message and the exit code. */
  private static int run(CommandLine.ParseResult args) {
    try {
      return new CommandLine.RunLast().execute(args);
    } catch (Error e) {
      CommandLine command = args.commandSpec().commandLine();
      return failed(new CommandLine.ExecutionException(command, e.toString(), e), command, args);
    }
  }

  private static int failed(Exception e, CommandLine command, CommandLine.ParseResult args) {
    PrintWriter err = command.getErr();
    Optional<OutOfMemoryError> memory = memory(e);
    if (memory.isPresent()) {
      err.println(tooLittle(memory.get(), Runtime.getRuntime().maxMemory()));
      return OUR_BUG;
    }
    if (e instanceof InputException input) {
      input.problems().forEach(err::println);
      return BAD_INPUT;
    }
    err.println("This is a bug in Ellwand. Please report these lines with the job file:");
    e.printStackTrace(err);
    return OUR_BUG;
  }

  /** What to do where memory ran out, and how much is needed if that is known. */
  static String tooLittle(OutOfMemoryError error, long maxBytes) {
    long needed = error instanceof TooLittleMemory known ? known.neededBytes() : 0;
    String known =
        needed > 0 ? "; %s take about %d MB".formatted(error.getMessage(), needed >> 20) : "";
    return ("There is not enough memory: all %d MB that Java may use are taken%s. Lay fewer"
            + " garments at once, or give it more: java -Xmx%dm -jar ellwand.jar ... Nothing"
            + " was written.")
        .formatted(maxBytes >> 20, known, Math.max(2 * maxBytes, maxBytes + needed) >> 20);
  }

  /** Also where a thread of the search found none. */
  private static Optional<OutOfMemoryError> memory(Throwable e) {
    return e == null
        ? Optional.empty()
        : e instanceof OutOfMemoryError error ? Optional.of(error) : memory(e.getCause());
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
