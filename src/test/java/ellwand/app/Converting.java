package ellwand.app;

import ellwand.file.drawn.Asked;
import ellwand.file.drawn.PieceNames;
import ellwand.file.pdf.Tiling;
import ellwand.file.source.Folder;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads drawings as the command does where its user says no more than is said here. */
public final class Converting {

  private Converting() {}

  public static Converted read(String name, byte[] file) {
    return read(Map.of(name, file), Asked.NOTHING, List.of(), Optional.empty());
  }

  public static Converted read(
      Map<String, byte[]> files, Asked asked, List<String> sizes, Optional<Tiling> tiling) {
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
            tiling,
            false));
  }
}
