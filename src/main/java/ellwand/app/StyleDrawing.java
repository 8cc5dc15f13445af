package ellwand.app;

import ellwand.file.interchange.StyleDxf;
import ellwand.file.job.StyleFile;
import java.util.List;
import java.util.Locale;

/** A style in a form that drawing and pattern programs read. */
public record StyleDrawing(StyleFile file) {

  /** What the name of a file may end with that it can be written as. */
  public static List<String> endings() {
    return Format.STYLE.stream().map(Format::ending).toList();
  }

  /** What of the style the file cannot hold as it is, one sentence each. */
  public List<String> remarks(String name) {
    return name.toLowerCase(Locale.ROOT).endsWith(".dxf") ? StyleDxf.changedNames(file) : List.of();
  }

  /**
   * The file of the format that its name ends with.
   *
   * @throws IllegalArgumentException if it ends with none of {@link #endings}
   */
  public Output output(String name) {
    String lower = name.toLowerCase(Locale.ROOT);
    return Format.STYLE.stream()
        .filter(format -> lower.endsWith(format.ending()))
        .findFirst()
        .map(format -> new Output(name, () -> format.writer().apply(file)))
        .orElseThrow(() -> new IllegalArgumentException(name + " ends with no known format"));
  }
}
