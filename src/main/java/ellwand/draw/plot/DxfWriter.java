package ellwand.draw.plot;

import ellwand.draw.sheet.Item;
import ellwand.draw.sheet.Lettering;
import ellwand.file.dxf.DxfText;
import ellwand.file.dxf.PlainAscii;
import java.util.Arrays;

/** Writes plots as DXF, release 12, in mm: layers DRAW, NOTCH and CUT, words on DRAW. */
public final class DxfWriter {

  private DxfWriter() {}

  /** As a file. Letters lose their marks, and those that ASCII has no like of become ?. */
  public static byte[] bytes(Plot plot) {
    DxfText text = new DxfText();
    text.header(plot.frame());
    text.layers(Arrays.stream(Plot.Layer.values()).map(Plot.Layer::name).toList());
    text.section("ENTITIES");
    for (Plot.Layer layer : Plot.Layer.values()) {
      for (Stroke stroke : plot.strokes(layer)) {
        text.polyline(layer.name(), stroke.points(), stroke.closed());
      }
    }
    for (Item.Text words : plot.words()) {
      text.text(
          Plot.Layer.DRAW.name(),
          PlainAscii.of(words.words()),
          words.at(),
          words.sizeMm() * Lettering.CAPITALS,
          words.turnDegrees(),
          justified(words.anchor()));
    }
    return text.endSection().bytes();
  }

  private static DxfText.Justified justified(Item.Anchor anchor) {
    return switch (anchor) {
      case START -> DxfText.Justified.LEFT;
      case MIDDLE -> DxfText.Justified.CENTRE;
      case END -> DxfText.Justified.RIGHT;
    };
  }
}
