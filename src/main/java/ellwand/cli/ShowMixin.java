package ellwand.cli;

import ellwand.app.Answer;
import ellwand.units.Unit;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Options for how results are shown. */
final class ShowMixin {

  @Mixin private UnitMixin units;

  @Option(names = "--json", description = "Print the figures as JSON and nothing else.")
  private boolean json;

  /** The unit asked for, if any; otherwise that of the job serves. */
  Optional<Unit> unit() {
    return units.unit();
  }

  boolean json() {
    return json;
  }

  /** The same JSON in signs that every encoding has. */
  static String ascii(String json) {
    StringBuilder text = new StringBuilder();
    for (char c : json.toCharArray()) {
      text.append(c < 127 ? String.valueOf(c) : "\\u%04x".formatted((int) c));
    }
    return text.toString();
  }

  /** Prints the result as it is asked for. */
  void print(PrintWriter results, Answer answer) {
    results.println(
        json
            ? ascii(new String(answer.json(), StandardCharsets.UTF_8).strip())
            : answer.text().stripTrailing());
  }
}
