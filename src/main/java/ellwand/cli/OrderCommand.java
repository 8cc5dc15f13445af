package ellwand.cli;

import ellwand.app.OrderRun;
import ellwand.figures.OrderText;
import ellwand.file.job.OrderJobReader;
import ellwand.job.OrderJob;
import ellwand.units.Unit;
import ellwand.work.Request;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** Plans an order in several sizes and colours. */
@Command(
    name = "order",
    mixinStandardHelpOptions = true,
    description =
        "Plans an order in several sizes and colours: which lays, which sizes in each marker, how"
            + " many plies of which colour. With a style it makes the markers too and plans again"
            + " with their true lengths; without one it plans with the lengths given.",
    footer = {
      "",
      "The effort is for everything together: a tenth for the first plan, half for its markers,"
          + " shared by how many garments they hold, the rest for plans and markers after that."
          + " Where a cloth has wishes, they take up to half as much again.",
      "",
      "Example: order sample-markers/beck-tunic/order.yaml --effort 60s --out tunic-order",
      "Exit code 1: the order cannot be met within its tolerance; the nearest plan is written."
    })
final class OrderCommand implements Callable<Integer> {

  @Mixin private JobMixin file;
  @Mixin private SearchMixin search;
  @Mixin private ShowMixin show;
  @ParentCommand private Main main;
  @Spec private CommandSpec spec;

  @Override
  public Integer call() {
    OrderJob job = OrderJobReader.read(file.path());
    Unit unit = show.unit().orElse(job.unit());
    Request request = search.request(main.stop());
    PrintWriter err = spec.commandLine().getErr();
    OrderRun.Made made;
    try (Console console = Console.open(err, request.effort(), unit)) {
      made = OrderRun.make(job, unit, request.with(console));
    }
    Path folder = file.folder("-out");
    OrderRun.write(made, folder).forEach(written -> err.println("Written: " + written));
    show.print(
        spec.commandLine().getOut(),
        () -> OrderRun.json(made),
        () -> OrderText.of(made.figures(), unit));
    made.figures().misses().forEach(miss -> err.println("Not met: " + miss + "."));
    return made.figures().misses().isEmpty() ? Main.DONE : Main.RULE_BROKEN;
  }
}
