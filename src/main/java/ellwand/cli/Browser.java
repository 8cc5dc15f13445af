package ellwand.cli;

import java.io.IOException;
import java.util.List;
import java.util.Locale;

/** Opens an address in the browser that the machine prefers; none is no mistake. */
final class Browser {

  private Browser() {}

  static void open(String address) {
    String system = System.getProperty("os.name").toLowerCase(Locale.ROOT);
    List<String> command =
        system.contains("win")
            ? List.of("rundll32", "url.dll,FileProtocolHandler", address)
            : system.contains("mac") ? List.of("open", address) : List.of("xdg-open", address);
    try {
      new ProcessBuilder(command)
          .redirectErrorStream(true)
          .redirectOutput(ProcessBuilder.Redirect.DISCARD)
          .start();
    } catch (IOException e) {
      // The address was printed.
    }
  }
}
