package ellwand.app;

import ellwand.cloth.Cloth;
import ellwand.cloth.Fold;
import ellwand.draw.marker.MarkerPlot;
import ellwand.draw.piece.PaperPiece;
import ellwand.draw.sheet.Drawing;
import ellwand.draw.sheet.Item;
import ellwand.draw.sheet.Reading;
import ellwand.draw.tiles.FullSize;
import ellwand.draw.tiles.PrintHead;
import ellwand.draw.tiles.PrintPaper;
import ellwand.draw.tiles.PrintWords;
import ellwand.draw.tiles.Tiling;
import ellwand.figures.Safety;
import ellwand.geometry.Point;
import ellwand.job.Job;
import ellwand.lay.Marker;
import ellwand.nest.EmptyCloth;
import ellwand.pattern.Sizes;
import ellwand.units.Length;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Prints full size. */
public final class PrintRun {

  /** Letters and lines on paper that is cut out by hand, and thrown on cloth from afar. */
  private static final Reading ON_PAPER = new Reading(1.3);

  private static final Reading PROJECTED = new Reading(4);

  private PrintRun() {}

  /**
   * The pieces of a job, each once.
   *
   * @param unit that lengths are told in
   * @throws ellwand.problem.InputException if the style lacks a size, or a piece is wider than the
   *     roll
   */
  public static PrintedPages pieces(Job job, Printing how, Unit unit) {
    List<String> sizes = DrawRun.shown(job, false, how.sizes());
    List<PaperPiece> pieces = PaperPieces.of(job, sizes, how.lines());
    Reading reading = how.projector() ? PROJECTED : ON_PAPER;
    PrintHead head = head(job, how, sizes, pieces);
    PaperLayout layout =
        how.projector()
            ? PaperLayout.projected(pieces, head, how.paper(), unit)
            : how.paper().orElseThrow().isRoll()
                ? PaperLayout.onRoll(pieces, head, how.paper().get(), unit)
                : PaperLayout.onPages(pieces, head, how.paper().get());
    Drawing drawing =
        new Drawing(job.heading(), layout.frame(), items(pieces, layout, sizes, reading));
    FullSize print =
        FullSize.of(drawing, head, layout.outlines(pieces), layout.paper(), how.ground());
    return new PrintedPages(job, List.of(print), unit);
  }

  /**
   * The markers of a job, one after another, each with a head of its own.
   *
   * @throws ellwand.problem.InputException if one is wider than the roll
   */
  public static PrintedPages markers(LaidJob laid, Printing how, Unit unit) {
    PrintPaper paper = how.paper().orElseThrow();
    List<FullSize> parts = new ArrayList<>();
    for (Marker marker : laid.markers()) {
      String name = laid.name(marker);
      String title = laid.job().heading();
      PrintHead head = head(laid.job(), name, paper);
      parts.add(
          MarkerLayout.of(
              // Lines only: fills would take much ink, and figures are on the cut sheet.
              joins -> MarkerPlot.unheaded(marker, title, joins).drawing(),
              head,
              marker.copies().stream().map(c -> c.outline().points()).toList(),
              paper,
              name,
              unit));
    }
    return new PrintedPages(laid.job(), parts, unit);
  }

  /**
   * The job with cloths that lie only so, and no wider than, that their markers have room on the
   * paper, before any is made.
   *
   * @throws ellwand.problem.InputException if a marker will be wider than the roll in every way in
   *     which its cloth may lie
   */
  public static Job fitting(Job job, PrintPaper paper, Unit unit) {
    return paper.isRoll()
        ? job.withCloths(job.cloths().stream().map(c -> fitting(job, c, paper, unit)).toList())
        : job;
  }

  private static Cloth fitting(Job job, Cloth cloth, PrintPaper roll, Unit unit) {
    List<Marker> empty = EmptyCloth.of(JobLays.of(job, cloth));
    if (empty.isEmpty()) {
      return cloth;
    }
    List<Drawing> drawn =
        empty.stream()
            .map(marker -> MarkerPlot.unheaded(marker, job.heading(), List.of()).drawing())
            .toList();
    MarkerLayout.refuseTooWide(drawn, head(job, cloth.name(), roll), roll, cloth.name(), unit);
    double words = drawn.get(0).frame().width() - empty.get(0).markerWidthMm();
    double within = roll.innerWidthMm() - words;
    Set<Fold> tooWide = empty.stream().map(Marker::fold).collect(Collectors.toSet());
    empty.stream()
        .filter(marker -> marker.markerWidthMm() <= within)
        .forEach(marker -> tooWide.remove(marker.fold()));
    return cloth
        .lying(cloth.folds().stream().filter(fold -> !tooWide.contains(fold)).toList())
        .within(within);
  }

  /**
   * What is left out to have room on the paper, sentences for each cloth.
   *
   * @param unit that lengths are told in
   */
  public static List<String> leftOut(Job job, Job fitting, PrintPaper paper, Unit unit) {
    List<String> sentences = new ArrayList<>();
    for (int i = 0; i < job.cloths().size(); i++) {
      Cloth cloth = fitting.cloths().get(i);
      List<Fold> left = new ArrayList<>(job.cloths().get(i).folds());
      left.removeAll(cloth.folds());
      if (!left.isEmpty()) {
        sentences.add(
            "Cloth %s is not laid %s, for which %s is too narrow."
                .formatted(
                    cloth.name(),
                    left.stream().map(Fold::words).collect(Collectors.joining(" or ")),
                    paper.name()));
      }
      if (cloth.withinMm() < cloth.usableWidthMm()) {
        sentences.add(
            "Cloth %s is folded to %s or narrower, for which %s has room."
                .formatted(cloth.name(), new Length(cloth.withinMm()).show(unit), paper.name()));
      }
    }
    return sentences;
  }

  private static PrintHead head(Job job, String marker, PrintPaper paper) {
    List<String> sentences = new ArrayList<>(PrintWords.paper(!paper.isRoll()));
    sentences.addAll(PrintWords.marker());
    sentences.addAll(Safety.of(job.wear()));
    return new PrintHead(
        job.heading(),
        "marker of " + marker + ", full size, for " + paper.name(),
        sentences,
        new Reading(1));
  }

  /** A layer for each size. */
  private static List<Item> items(
      List<PaperPiece> pieces, PaperLayout layout, List<String> sizes, Reading reading) {
    List<Item> layers = new ArrayList<>();
    List<List<Point>> joins =
        layout.paper().isRoll() ? List.of() : new Tiling(layout.paper(), layout.frame()).joins();
    for (String size : sizes) {
      List<Item> ofSize = new ArrayList<>();
      for (int i = 0; i < pieces.size(); i++) {
        if (pieces.get(i).size().equals(size)) {
          ofSize.add(
              Item.Group.titled(
                  "piece-" + (i + 1),
                  "piece",
                  pieces.get(i).title(),
                  pieces.get(i).items(layout.motions().get(i), reading, joins)));
        }
      }
      layers.add(Item.Group.layer("size-" + (layers.size() + 1), "size " + size, ofSize));
    }
    return layers;
  }

  private static PrintHead head(
      Job job, Printing how, List<String> sizes, List<PaperPiece> pieces) {
    List<String> sentences = new ArrayList<>();
    sentences.addAll(
        how.projector()
            ? PrintWords.projector()
            : PrintWords.paper(!how.paper().orElseThrow().isRoll()));
    boolean half = pieces.stream().anyMatch(p -> p.cut().fold().isPresent());
    sentences.addAll(PrintWords.pieces(how.lines(), half));
    pieces.stream()
        .flatMap(p -> p.larger().stream())
        .distinct()
        .forEach(
            by ->
                sentences.add(
                    "Pieces that say so are drawn larger by "
                        + by
                        + ", for cloth that shrinks once it is cut."));
    sentences.addAll(Safety.of(job.wear()));
    String about =
        Sizes.words(sizes)
            + ", "
            + pieces.size()
            + " pieces full size, "
            + how.paper().map(p -> "for " + p.name()).orElse("for a projector");
    return new PrintHead(
        job.heading(), about, sentences, how.projector() ? new Reading(3) : new Reading(1));
  }
}
