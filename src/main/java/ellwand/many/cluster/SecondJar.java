package ellwand.many.cluster;

import ellwand.problem.InputException;
import java.net.URISyntaxException;
import java.nio.file.Path;

/** The jar that holds what helpers need besides, which the rest of the program does without. */
public final class SecondJar {

  private static final String NAME = "ellwand-helpers.jar";

  private SecondJar() {}

  /**
   * To be asked before anything else of this package.
   *
   * @throws InputException if the jar is not there, with the place where it belongs
   */
  public static void required() {
    try {
      Class.forName(
          "org.apache.pekko.actor.typed.ActorSystem", false, SecondJar.class.getClassLoader());
    } catch (ClassNotFoundException e) {
      throw InputException.of(
          NAME + " is missing, which work with helpers needs", "Put it into " + folder());
    }
  }

  private static String folder() {
    try {
      Path jar =
          Path.of(SecondJar.class.getProtectionDomain().getCodeSource().getLocation().toURI());
      return String.valueOf(jar.toAbsolutePath().getParent());
    } catch (URISyntaxException e) {
      return "the folder of ellwand.jar";
    }
  }
}
