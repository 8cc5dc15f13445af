package ellwand.file.interchange;

import ellwand.app.Converted;
import ellwand.app.Converting;
import ellwand.file.drawn.Asked;
import ellwand.pattern.Piece;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads a file as the command does. */
final class Interchange {

  private Interchange() {}

  static Converted read(byte[] file) {
    return read(Map.of("a.dxf", file), Asked.NOTHING, List.of());
  }

  static Converted read(byte[] file, Asked asked) {
    return read(Map.of("a.dxf", file), asked, List.of());
  }

  static Converted read(byte[] file, List<String> sizes) {
    return read(Map.of("a.dxf", file), Asked.NOTHING, sizes);
  }

  /** With the table of its grade rules. */
  static Converted read(byte[] file, byte[] rules) {
    return read(Map.of("a.dxf", file, "a.rul", rules), Asked.NOTHING, List.of());
  }

  private static Converted read(Map<String, byte[]> files, Asked asked, List<String> sizes) {
    return Converting.read(files, asked, sizes, Optional.empty());
  }

  static List<Piece> pieces(Converted read) {
    return read.file().style().pieces(read.file().design().sizes().base());
  }
}
