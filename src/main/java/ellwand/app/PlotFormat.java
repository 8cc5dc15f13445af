package ellwand.app;

import ellwand.draw.plot.DxfWriter;
import ellwand.draw.plot.HpglWriter;
import ellwand.draw.plot.Plot;
import ellwand.draw.sheet.PdfWriter;
import ellwand.draw.sheet.SvgWriter;
import ellwand.problem.InputException;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Collectors;

/** A kind of file for plotters and cutting machines. */
public enum PlotFormat {
  PDF(plot -> PdfWriter.onePage(plot.drawing(), 1)),
  SVG(plot -> SvgWriter.bytes(plot.drawing())),
  DXF(DxfWriter::bytes),
  HPGL(HpglWriter::bytes);

  private final Function<Plot, byte[]> writer;

  PlotFormat(Function<Plot, byte[]> writer) {
    this.writer = writer;
  }

  /** As in a file's name. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  byte[] bytes(Plot plot) {
    return writer.apply(plot);
  }

  /**
   * @throws InputException naming those that are known
   */
  public static PlotFormat parse(String text) {
    return Arrays.stream(values())
        .filter(f -> f.name().equalsIgnoreCase(text.strip()))
        .findFirst()
        .orElseThrow(
            () ->
                InputException.of(
                    "'" + text.strip() + "' is no kind of file for a plotter",
                    "Use "
                        + Arrays.stream(values())
                            .map(PlotFormat::word)
                            .collect(Collectors.joining(", "))));
  }

  /** Of each of several texts, each kind once. */
  public static List<PlotFormat> parse(List<String> texts) {
    return texts.stream().map(PlotFormat::parse).distinct().sorted().toList();
  }
}
