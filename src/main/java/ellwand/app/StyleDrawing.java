package ellwand.app;

import ellwand.file.interchange.StyleDxf;
import ellwand.file.job.StyleFile;
import java.util.List;
import java.util.Locale;

/**
 * A style in a form that drawing and pattern programs read.
 *
 * @param sizes to be written to DXF; none for all
 * @param rules whether DXF is to have the base size and a table of grade rules for the others
 */
public record StyleDrawing(StyleFile file, List<String> sizes, boolean rules) {

  /** What the name of a file may end with that it can be written as. */
  public static List<String> endings() {
    return Format.STYLE.stream().map(Format::ending).toList();
  }

  /** Whether it is written as a pattern for other pattern programs. */
  public static boolean isPattern(String name) {
    return name.toLowerCase(Locale.ROOT).endsWith(".dxf");
  }

  /**
   * The files: one of the format that its name ends with, and the table of rules that goes with it.
   *
   * @param said takes what of the style they cannot hold as it is, one sentence each
   * @throws IllegalArgumentException if it ends with none of {@link #endings}
   */
  public List<Output> outputs(String name, List<String> said) {
    if (isPattern(name)) {
      said.addAll(StyleDxf.lost(file));
      return rules
          ? ruled(name, said)
          : List.of(new Output(name, () -> StyleDxf.bytes(file, sizes)));
    }
    String lower = name.toLowerCase(Locale.ROOT);
    return Format.STYLE.stream()
        .filter(format -> lower.endsWith(format.ending()))
        .findFirst()
        .map(format -> List.of(new Output(name, () -> format.writer().apply(file))))
        .orElseThrow(() -> new IllegalArgumentException(name + " ends with no known format"));
  }

  private List<Output> ruled(String name, List<String> said) {
    String plain = name.substring(0, name.length() - ".dxf".length());
    StyleDxf.Ruled ruled = StyleDxf.ruled(file, sizes, plain);
    said.addAll(ruled.said());
    return List.of(new Output(name, ruled::dxf), new Output(plain + ".rul", ruled::table));
  }
}
