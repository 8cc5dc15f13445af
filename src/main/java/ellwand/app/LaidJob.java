package ellwand.app;

import ellwand.cloth.Stock;
import ellwand.draw.marker.MarkerHead;
import ellwand.figures.Figures;
import ellwand.figures.FiguresText;
import ellwand.figures.JobFigures;
import ellwand.figures.Trimmings;
import ellwand.figures.Washing;
import ellwand.file.figures.FiguresWriter;
import ellwand.job.Job;
import ellwand.lay.Lay;
import ellwand.lay.Marker;
import ellwand.pattern.Piece;
import ellwand.units.Length;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A job's markers, which have passed the check, with their figures.
 *
 * @param markers one for each cloth of the job, in its order, or several where remnants are used
 * @param unit that lengths are shown in
 */
public record LaidJob(Job job, List<Marker> markers, JobFigures figures, Unit unit)
    implements Answer {

  public LaidJob {
    markers = List.copyOf(markers);
  }

  /**
   * @param figures of each marker
   */
  static LaidJob of(Job job, List<Marker> markers, List<Figures> figures, Unit unit) {
    List<String> cautions = new ArrayList<>(Shades.cautions(job, markers));
    cautions.addAll(washing(job, markers, figures, unit));
    cautions.addAll(JobCautions.of(job, unit));
    return new LaidJob(
        job,
        markers,
        JobFigures.of(
            job.style().name(),
            job.garmentCount(),
            figures,
            new Trimmings(job.style()).toBuy(job.garments()),
            cautions),
        unit);
  }

  private static List<String> washing(
      Job job, List<Marker> markers, List<Figures> figures, Unit unit) {
    List<String> sentences = new ArrayList<>();
    for (int i = 0; i < markers.size(); i++) {
      Lay lay = markers.get(i).lay();
      List<Piece> pieces = lay.wanted().stream().map(w -> w.cut().piece()).toList();
      Optional<Stock> stock = lay.cloth().stock();
      (stock.isPresent()
              ? Washing.remnant(stock.get().name(), Shelf.cloth(job, lay.cloth().name()))
              : Washing.bought(lay.cloth(), pieces, figures.get(i).lengths().toBuyMm(), unit))
          .ifPresent(sentences::add);
    }
    return sentences;
  }

  /** The same with each marker for plotters or cutting machines too. */
  public Answer also(List<PlotFormat> formats) {
    List<PlottedMarker> plotted =
        formats.isEmpty()
            ? List.of()
            : markers.stream().map(m -> PlottedMarker.of(name(m), m, job)).toList();
    return new PlottedJob(this, plotted, formats);
  }

  /** Everything to buy for it. */
  ShoppingList shopping() {
    return new ShoppingList(job.heading(), job.garmentCount(), figures.buy(), job.wear(), unit);
  }

  @Override
  public boolean achieved() {
    return true;
  }

  @Override
  public String text() {
    return FiguresText.of(figures, unit);
  }

  /** The style, and how long each marker is. */
  @Override
  public String headline() {
    return Answer.super.headline()
        + markers.stream()
            .map(marker -> name(marker) + " " + new Length(marker.clothLengthMm()).show(unit))
            .collect(Collectors.joining(", ", "; ", ""));
  }

  /** What {@code figures.json} holds. */
  @Override
  public byte[] json() {
    return FiguresWriter.bytes(figures);
  }

  /** Drawings and marker file of each marker, figures and cut sheet of all. */
  @Override
  public List<Output> outputs() {
    List<Output> outputs = new ArrayList<>();
    MarkerHead head = MarkerHead.of(job.heading());
    for (int i = 0; i < markers.size(); i++) {
      Marker marker = markers.get(i);
      LaidMarker laid = LaidMarker.of(job, marker, figures.cloths().get(i), head, unit);
      outputs.addAll(Format.outputs(Format.MARKER, name(marker), laid));
    }
    outputs.addAll(Format.outputs(Format.JOB, "", this));
    return outputs;
  }

  /** Its only marker for plotters or cutting machines. */
  public Output plotted(PlotFormat format, String name) {
    if (markers.size() != 1) {
      throw new IllegalArgumentException("one file cannot hold " + markers.size() + " markers");
    }
    PlottedMarker plotted = PlottedMarker.of(name(markers.get(0)), markers.get(0), job);
    return new Output(name, () -> format.bytes(plotted.plot()));
  }

  /** The cloth, with the remnant where there are several pieces of it. */
  String name(Marker marker) {
    String cloth = marker.lay().cloth().name();
    boolean several =
        markers.stream().filter(m -> m.lay().cloth().name().equals(cloth)).count() > 1;
    return several
        ? marker.lay().cloth().stock().map(s -> name(cloth, s.name())).orElse(cloth + " to buy")
        : cloth;
  }

  /** Of a marker on a remnant, where there are several of its cloth. */
  static String name(String cloth, String remnant) {
    return cloth + " on " + remnant;
  }
}
