package ellwand.file.figures;

import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.figures.Fitting;
import ellwand.file.source.Json;

/** Writes the answer of a fit as JSON. */
public final class FittingWriter {

  private FittingWriter() {}

  /** What fits and what does not, lengths in mm; {@code null} for what there is none of. */
  public static byte[] bytes(Fitting fitting) {
    ObjectNode root = Json.object();
    root.put("remnant", fitting.remnant());
    root.put("cloth", fitting.cloth());
    root.put("fits", fitting.fits());
    root.set("lengthMm", Json.number(fitting.lengthMm()));
    root.set("neededMm", fitting.neededMm().map(Json::number).orElse(null));
    root.set("tooWide", fitting.tooWide().map(FittingWriter::tooWide).orElse(null));
    CopyNames.write(root.putArray("fitting"), fitting.fitting());
    CopyNames.write(root.putArray("leftOut"), fitting.leftOut());
    return Json.bytes(root);
  }

  private static ObjectNode tooWide(Fitting.TooWide piece) {
    ObjectNode node = Json.object();
    node.put("piece", piece.piece());
    node.set("acrossMm", Json.number(piece.acrossMm()));
    node.set("widestMm", Json.number(piece.widestMm()));
    return node;
  }
}
