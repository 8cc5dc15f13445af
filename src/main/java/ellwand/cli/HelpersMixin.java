package ellwand.cli;

import ellwand.many.Craft;
import ellwand.many.OwnCores;
import ellwand.many.Workshop;
import ellwand.many.cluster.Door;
import ellwand.many.cluster.HelpedWorkshop;
import ellwand.many.cluster.Place;
import ellwand.many.cluster.SecondJar;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Options of commands whose searches helpers on other machines may take over. */
final class HelpersMixin {

  @Option(
      names = "--with-helpers",
      paramLabel = "HOST[:PORT]",
      arity = "0..1",
      fallbackValue = "",
      description =
          "Let other machines help, which join with 'helper --join' at this address of this"
              + " machine. Default: with --keys its own on the network, without only processes of"
              + " this machine; port "
              + Place.USUAL_PORT
              + ".")
  private String at;

  @Option(
      names = "--keys",
      paramLabel = "FILE.p12",
      description =
          "This machine's keys, made with 'helper --make-keys'. Only who has keys of the same"
              + " workshop can help.")
  private Path keys;

  @Spec(Spec.Target.MIXEE)
  private CommandSpec spec;

  /** Whether other machines may help. */
  boolean asked() {
    return at != null;
  }

  /** Takes this command's tasks: this process alone, unless helpers are asked for. */
  Workshop workshop(Craft craft, int cores, PrintWriter err) {
    if (at == null && keys != null) {
      throw new ParameterException(
          spec.commandLine(), "--keys goes with --with-helpers: nobody is let in without that");
    }
    if (at == null) {
      return new OwnCores(craft, cores);
    }
    SecondJar.required();
    Door door = new Door(place(), Optional.ofNullable(keys));
    HelpedWorkshop workshop =
        HelpedWorkshop.open(
            craft,
            cores,
            door,
            text -> {
              err.println(text);
              err.flush();
            });
    err.println(
        "Helpers join with: ellwand helper --join %s%s"
            .formatted(workshop.place(), keys == null ? "" : " --keys THEIR-KEYS.p12"));
    err.flush();
    return workshop;
  }

  private Place place() {
    if (!at.isEmpty()) {
      return Place.of(at, Place.USUAL_PORT);
    }
    return keys == null ? Place.here(Place.USUAL_PORT) : Place.onNetwork(Place.USUAL_PORT);
  }
}
