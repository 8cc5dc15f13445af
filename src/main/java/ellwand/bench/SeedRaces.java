package ellwand.bench;

import ellwand.nest.kernel.Layout;
import ellwand.work.Effort;
import ellwand.work.Request;
import ellwand.work.Seed;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What several seeds bring, each with the same effort, and whether to share the best at last. */
@Command(
    name = "seeds",
    mixinStandardHelpOptions = true,
    description = {
      "The best of 1, 4, 16 .. seeds, each with the same effort;",
      "and what it brings if they race in fours whose best all go on from in the last part."
    })
final class SeedRaces implements Runnable {

  private static final PrintStream OUT = System.out;
  private static final int RACING = 4;

  @Parameters(paramLabel = "FILE-or-DIR", arity = "1..*")
  private List<Path> paths;

  @Option(names = "--effort", defaultValue = "20s", description = "of each seed")
  private String effort;

  @Option(names = "--seeds", defaultValue = "16", description = "a multiple of four")
  private int seeds;

  @Option(names = "--alone", split = ",", description = "share before the last part, 0 to 1")
  private List<Double> alone = List.of();

  @Override
  public void run() {
    try {
      for (Path path : paths) {
        for (Path file : InstanceFile.in(path)) {
          run(InstanceFile.read(file));
        }
      }
    } catch (IOException e) {
      throw new IllegalArgumentException(e.getMessage(), e);
    }
  }

  private void run(Instance instance) {
    Effort whole = Effort.parse(effort);
    Trial trial = new Trial(instance);
    List<Layout> apart = new ArrayList<>();
    for (int from = 1; from <= seeds; from += RACING) {
      List<Layout> racing = searched(trial, instance, Optional.empty(), whole, from);
      apart.addAll(racing);
      String group = "seeds %d to %d".formatted(from, from + RACING - 1);
      tell(instance, group + " apart", best(racing));
      for (double share : alone) {
        Layout first = best(searched(trial, instance, Optional.empty(), whole.part(share), from));
        int others = (int) new Seed(from).child(1).value();
        Layout last =
            best(searched(trial, instance, Optional.of(first), whole.part(1 - share), others));
        tell(
            instance,
            "%s, %.2f apart, then from their best".formatted(group, share),
            best(List.of(first, last)));
      }
    }
    for (int count = 1; count <= seeds; count *= RACING) {
      tell(instance, "best of " + count, best(apart.subList(0, count)));
    }
  }

  private static List<Layout> searched(
      Trial trial, Instance instance, Optional<Layout> start, Effort effort, int from) {
    List<Layout> found = new ArrayList<>();
    for (int i = 0; i < RACING; i++) {
      Layout layout = trial.layout(start, Request.of(effort, new Seed(from + i)).onThreads(1));
      if (!Judge.faults(instance, trial.placed(layout)).isEmpty()) {
        throw new IllegalStateException("seed " + (from + i) + " is not legal");
      }
      found.add(layout);
    }
    return found;
  }

  private static Layout best(List<Layout> layouts) {
    return layouts.stream().min((a, b) -> Double.compare(a.length(), b.length())).orElseThrow();
  }

  private void tell(Instance instance, String what, Layout best) {
    double density = instance.area() / (instance.width() * best.length());
    OUT.printf("%-10s %s each, %s: %.2f %%%n", instance.name(), effort, what, 100 * density);
    OUT.flush();
  }
}
