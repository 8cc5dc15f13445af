package ellwand.file.interchange;

import ellwand.app.ConvertRequest;
import ellwand.app.ConvertRun;
import ellwand.app.Converted;
import ellwand.file.drawn.Asked;
import ellwand.file.drawn.PieceNames;
import ellwand.file.source.Folder;
import ellwand.pattern.Piece;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

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
    Folder folder = Folder.EMPTY;
    for (Map.Entry<String, byte[]> file : files.entrySet()) {
      folder = folder.with(file.getKey(), file.getValue());
    }
    return ConvertRun.style(
        files.keySet().stream().sorted().toList(),
        folder,
        new ConvertRequest(
            asked,
            PieceNames.NONE,
            OptionalDouble.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            sizes,
            Optional.empty(),
            false));
  }

  static List<Piece> pieces(Converted read) {
    return read.file().style().pieces(read.file().design().sizes().base());
  }
}
