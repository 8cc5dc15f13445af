package ellwand.bench;

import ellwand.order.CutOrderPlan;
import ellwand.order.OrderPlanner;
import ellwand.work.Effort;
import ellwand.work.Request;
import ellwand.work.Seed;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Measures cut-order plans of orders made at random against their bounds. */
@Command(
    name = "orders",
    description =
        "Plans an order made at random at several efforts and tells cost and lays beside the lower"
            + " bounds and one size a lay.",
    mixinStandardHelpOptions = true,
    sortOptions = false)
public final class OrderPlans implements Callable<Integer> {

  @Option(names = "--sizes", defaultValue = "8", description = "Default ${DEFAULT-VALUE}.")
  private int sizes;

  @Option(names = "--colours", defaultValue = "6", description = "Default ${DEFAULT-VALUE}.")
  private int colours;

  @Option(
      names = "--garments",
      defaultValue = "5000",
      description = "About so many; default ${DEFAULT-VALUE}.")
  private int garments;

  @Option(
      names = "--over",
      split = ",",
      defaultValue = "0,2",
      description = "Garments too many that a size and colour may have; default ${DEFAULT-VALUE}.")
  private List<Integer> over;

  @Option(
      names = "--under",
      defaultValue = "0",
      description = "Garments too few; default ${DEFAULT-VALUE}.")
  private int under;

  @Option(
      names = "--seconds",
      split = ",",
      defaultValue = "10,60",
      description = "Default ${DEFAULT-VALUE}.")
  private List<Double> seconds;

  @Option(
      names = "--seed",
      split = ",",
      defaultValue = "1",
      description = "Of the order and the search; default ${DEFAULT-VALUE}.")
  private List<Long> seeds;

  private OrderPlans() {}

  public static void main(String[] args) {
    System.exit(new CommandLine(new OrderPlans()).execute(args));
  }

  @Override
  public Integer call() {
    System.out.println(
        "seed over under seconds  took      cost lays  bound cost lays  above %  one size cost lays");
    for (long seed : seeds) {
      for (int most : over) {
        seconds.forEach(effort -> row(seed, most, effort));
      }
    }
    return 0;
  }

  private void row(long seed, int most, double effort) {
    GeneratedOrder made = GeneratedOrder.of(sizes, colours, garments, most, under, seed);
    long started = System.nanoTime();
    CutOrderPlan plan =
        OrderPlanner.plan(
            made.order(), made.lengths(), Request.of(Effort.ofSeconds(effort), new Seed(seed)));
    double took = (System.nanoTime() - started) / 1e9;
    CutOrderPlan plain = OrderPlanner.oneSizeALay(made.order(), made.lengths());
    System.out.printf(
        "%4d %4d %5d %7.0f %5.1f %9.2f %4d  %10.2f %4d  %7.3f  %13.2f %4d%n",
        seed,
        most,
        under,
        effort,
        took,
        plan.cost(),
        plan.lays().size(),
        plan.atLeast().cost(),
        plan.atLeast().lays(),
        100 * (plan.cost() / plan.atLeast().cost() - 1),
        plain.cost(),
        plain.lays().size());
  }
}
