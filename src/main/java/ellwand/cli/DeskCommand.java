package ellwand.cli;

import ellwand.desk.Desk;
import ellwand.work.Stop;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** Opens the desk, a page in the browser. */
@Command(
    mixinStandardHelpOptions = true,
    description =
        "Opens the desk: a page in your browser on which you do the whole job. Nothing leaves this"
            + " machine.",
    footer = {"", "Example: desk patterns", "Ctrl-C closes it; all work is saved."})
final class DeskCommand implements Callable<Integer> {

  private static final long POLL_MILLIS = 100;

  @Parameters(
      paramLabel = "FOLDER",
      arity = "0..1",
      defaultValue = ".",
      description = "Folder with your jobs. Default: the one you are in.")
  private Path folder;

  @Option(
      names = "--port",
      paramLabel = "N",
      defaultValue = "0",
      description = "Port of the page. Default: any that is free.")
  private int port;

  @Option(
      names = "--host",
      paramLabel = "ADDRESS",
      defaultValue = "127.0.0.1",
      description =
          "Address to serve at, if other machines of yours are to reach it. Default: this machine"
              + " alone.")
  private String host;

  @Option(names = "--no-browser", description = "Only print the address.")
  private boolean noBrowser;

  @ParentCommand private Main main;
  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws InterruptedException {
    Stop stop = main.stop();
    PrintWriter out = spec.commandLine().getOut();
    Optional<String> open = Desk.open(folder);
    if (open.isPresent()) {
      show("Ellwand is open on this folder already, at ", open.get(), out);
      return Main.DONE;
    }
    try (Desk desk = Desk.start(folder, host, port)) {
      show("Ellwand is at ", desk.address(), out);
      while (!stop.wanted()) {
        Thread.sleep(POLL_MILLIS);
      }
    }
    return Main.DONE;
  }

  private void show(String words, String address, PrintWriter out) {
    out.println(words + address);
    out.flush();
    if (!noBrowser) {
      Browser.open(address);
    }
  }
}
