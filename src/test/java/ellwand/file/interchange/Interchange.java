package ellwand.file.interchange;

import ellwand.app.ConvertRequest;
import ellwand.app.ConvertRun;
import ellwand.app.Converted;
import ellwand.file.drawn.Asked;
import ellwand.file.drawn.PieceNames;
import ellwand.file.source.Folder;
import ellwand.pattern.Piece;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads a file as the command does. */
final class Interchange {

  private Interchange() {}

  static Converted read(byte[] file) {
    return read(file, Asked.NOTHING);
  }

  static Converted read(byte[] file, Asked asked) {
    return ConvertRun.style(
        List.of("a.dxf"),
        Folder.EMPTY.with("a.dxf", file),
        new ConvertRequest(
            asked,
            PieceNames.NONE,
            OptionalDouble.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty()));
  }

  static List<Piece> pieces(Converted read) {
    return read.file().style().pieces(read.file().design().sizes().base());
  }
}
