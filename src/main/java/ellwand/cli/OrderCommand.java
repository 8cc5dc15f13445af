package ellwand.cli;

import ellwand.app.Answer;
import ellwand.app.Hands;
import ellwand.app.OrderRun;
import ellwand.job.OrderJob;
import ellwand.many.JobFiles;
import ellwand.units.Unit;
import ellwand.work.Request;
import picocli.CommandLine.Command;

/** Plans an order in several sizes and colours. */
@Command(
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
final class OrderCommand extends RunCommand<OrderJob> {

  OrderCommand() {
    super(JobFiles::order, OrderJob::unit, "-out");
  }

  @Override
  Answer make(OrderJob job, Unit shown, Request request, Hands hands) {
    return OrderRun.make(job, shown, request, hands);
  }
}
