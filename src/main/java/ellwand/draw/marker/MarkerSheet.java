package ellwand.draw.marker;

import ellwand.cloth.Fold;
import ellwand.draw.sheet.Block;
import ellwand.draw.sheet.Colour;
import ellwand.draw.sheet.Drawing;
import ellwand.draw.sheet.Item;
import ellwand.draw.sheet.Palette;
import ellwand.draw.sheet.Paragraphs;
import ellwand.draw.sheet.Reading;
import ellwand.draw.sheet.Rows;
import ellwand.draw.sheet.Shown;
import ellwand.draw.sheet.TitleBlock;
import ellwand.draw.sheet.TitleBlock.Cell;
import ellwand.figures.Figures;
import ellwand.figures.WishText;
import ellwand.geometry.Box;
import ellwand.geometry.Point;
import ellwand.lay.Marker;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** A marker with its title block, key and cautions, composed for a width and a way of reading. */
final class MarkerSheet {

  /** Between the parts of the sheet on paper, mm. */
  private static final double GAP = 3;

  /** From this width on paper, cautions stand beside the key, mm. */
  private static final double TWO_COLUMNS = 230;

  /** Room that cautions may take on paper, mm; our own choice. */
  private static final double MOST_CAUTIONS = 80;

  private static final String MORE_CAUTIONS = "More to take care of stands in the cut sheet.";

  private final Marker marker;
  private final Figures figures;
  private final MarkerHead head;
  private final Shown shown;
  private final List<Laid> laid;
  private final Map<String, String> numbers;
  private final Palette palette;

  private final int rows;
  private MarkerPicture drawn;

  MarkerSheet(Marker marker, Figures figures, MarkerHead head, Unit unit) {
    this(marker, figures, head, unit, suitingRows(marker));
  }

  /**
   * @param rows into which the picture is broken; 1 for a full-size print
   */
  MarkerSheet(Marker marker, Figures figures, MarkerHead head, Unit unit, int rows) {
    this.rows = rows;
    this.head = head;
    this.marker = marker;
    this.figures = figures;
    this.shown = new Shown(unit);
    this.laid = Laid.of(marker);
    this.numbers = PieceKey.numbers(laid);
    this.palette =
        new Palette(marker.lay().wanted().stream().map(w -> w.cut().name()).distinct().toList());
  }

  List<Laid> laid() {
    return laid;
  }

  Shown shown() {
    return shown;
  }

  /** How wide and high the sheet is at the least, in mm drawn. */
  double heightMm(double widthMm, Reading reading) {
    return head(widthMm, reading).heightMm()
        + rows(reading).box().width()
        + foot(widthMm, reading).heightMm()
        + 2 * reading.mm(GAP);
  }

  double pictureWidthMm(Reading reading) {
    return rows(reading).box().length();
  }

  /**
   * The sheet.
   *
   * @param widthMm of it all, in mm drawn
   * @param scale stated on it, mm of cloth for one mm of paper; 0 to leave it out
   */
  Drawing drawing(double widthMm, Reading reading, double scale) {
    // What stands in it takes long to place, and several files show it alike.
    if (drawn == null || !drawn.reading().equals(reading)) {
      drawn = picture(reading);
    }
    MarkerPicture picture = drawn;
    Rows broken = rows(reading);
    Box box = broken.box();
    double left = box.centre().x() - widthMm / 2;
    Block heading = head(widthMm, reading, scale);
    Block foot = foot(widthMm, reading);
    double gap = reading.mm(GAP);
    double top = box.maxY() + gap + heading.heightMm();
    double bottom = box.minY() - gap - foot.heightMm();
    List<Item> items = new ArrayList<>(heading.items(new Point(left, top)));
    items.addAll(broken.items(picture.items(), picture.cloth()));
    items.addAll(foot.items(new Point(left, box.minY() - gap)));
    return new Drawing(
        head.title() + ", " + marker.lay().cloth().name(),
        new Box(left, bottom, left + widthMm, top),
        items);
  }

  private static int suitingRows(Marker marker) {
    Box cloth = new ShownCloth(marker).box();
    return Rows.suiting(cloth.length(), cloth.width());
  }

  private Rows rows(Reading reading) {
    MarkerPicture picture = picture(reading);
    return new Rows(rows, picture.box(), picture.cloth().maxX(), reading);
  }

  private MarkerPicture picture(Reading reading) {
    return new MarkerPicture(marker, figures, laid, palette, reading, shown);
  }

  private Block head(double widthMm, Reading reading) {
    return head(widthMm, reading, 1);
  }

  private Block head(double widthMm, Reading reading, double scale) {
    return new TitleBlock(
        head.title()
            + " · "
            + marker.lay().cloth().name()
            + figures.lies().remnant().map(r -> " on " + r).orElse(""),
        TitleBlock.drawnAt(scale) + ", lengths in " + shown.unitWords(),
        cells(),
        widthMm,
        reading);
  }

  /** The figures that matter at the table and in the shop. */
  private List<Cell> cells() {
    List<Cell> cells = new ArrayList<>(head.cells(shown));
    boolean ofOrder = head.marker().isPresent();
    if (!ofOrder) {
      cells.add(new Cell("length to buy", shown.bought(figures.lengths().toBuyMm())));
    }
    cells.add(new Cell("cloth width", shown.length(figures.widths().clothMm())));
    cells.add(new Cell("marker length", shown.length(figures.lengths().markerMm())));
    if (Math.abs(figures.lengths().clothMm() - figures.lengths().markerMm()) > 0.5) {
      cells.add(new Cell("cloth length", shown.length(figures.lengths().clothMm())));
    }
    cells.add(new Cell("laid", figures.lies().fold().words()));
    cells.add(new Cell("direction", figures.lies().direction().words()));
    cells.add(new Cell("garments", Integer.toString(figures.lies().garments())));
    cells.add(new Cell("utilisation", Shown.share(figures.areas().utilisation())));
    if (figures.money().cost() > 0 && !ofOrder) {
      cells.add(new Cell("cost", Shown.money(figures.money().cost(), figures.money().currency())));
    }
    return cells;
  }

  private Block foot(double widthMm, Reading reading) {
    double gap = reading.mm(GAP);
    boolean beside = beside(widthMm, reading);
    double keyWidth = beside ? widthMm * 0.5 : widthMm;
    Block key = new PieceKey(numbers, palette, keyWidth, reading);
    Block cautions = cautions(cautionsWidthMm(widthMm, reading), reading);
    Block small =
        new Paragraphs(
            "small-print", "", List.of(smallPrint()), Reading.SMALL, Colour.GREY, widthMm, reading);
    Block lies =
        new Paragraphs(
            "cloth-words",
            "",
            List.of(String.join(" ", ClothWords.of(marker, shown))),
            Reading.TEXT,
            Colour.INK,
            widthMm,
            reading);
    Block wishes =
        new Paragraphs(
            "wishes",
            figures.wishes().asked().isEmpty() ? "" : "Wishes",
            WishText.lines(figures, shown.unit()),
            Reading.TEXT,
            Colour.INK,
            widthMm,
            reading);
    return beside
        ? new Block.Stack(
            List.of(
                lies,
                wishes,
                new Block.Beside(key, cautions, widthMm * 0.5 + reading.mm(5)),
                small),
            gap)
        : new Block.Stack(List.of(lies, wishes, key, cautions, small), gap);
  }

  private boolean beside(double widthMm, Reading reading) {
    return widthMm >= reading.mm(TWO_COLUMNS) && !figures.cautions().isEmpty();
  }

  private double cautionsWidthMm(double widthMm, Reading reading) {
    return beside(widthMm, reading) ? widthMm * 0.5 - reading.mm(5) : widthMm;
  }

  /** Cautions that a sheet so wide has no room for all of. */
  List<String> cautionsElsewhere(double widthMm, Reading reading) {
    double width = cautionsWidthMm(widthMm, reading);
    boolean room =
        cautions(figures.cautions(), width, reading).heightMm() <= reading.mm(MOST_CAUTIONS);
    return room ? List.of() : figures.cautions();
  }

  /** As many as leave room for the marker; a cut sheet has them all. */
  private Block cautions(double widthMm, Reading reading) {
    List<String> all = figures.cautions();
    Block shown = cautions(all, widthMm, reading);
    for (int kept = all.size() - 1;
        kept >= 0 && shown.heightMm() > reading.mm(MOST_CAUTIONS);
        kept--) {
      List<String> first = new ArrayList<>(all.subList(0, kept));
      first.add(MORE_CAUTIONS);
      shown = cautions(first, widthMm, reading);
    }
    return shown;
  }

  private static Block cautions(List<String> sentences, double widthMm, Reading reading) {
    return new Paragraphs(
        "caution",
        sentences.isEmpty() ? "" : "Take care",
        sentences,
        Reading.TEXT,
        Colour.INK,
        widthMm,
        reading);
  }

  private String smallPrint() {
    String arrow =
        Laid.oneHeaded(marker.lay().cloth().direction())
            ? "Arrow: grain, its head at the piece's top. "
            : "Arrow: grain, either way up. ";
    String folded = ClothWords.lies(marker) == Fold.OPEN ? "" : "Dash and dot: fold. ";
    return "Heavy line: cut here. Dashed line: sew here. Short strokes: notches. "
        + arrow
        + folded
        + (marker.lay().cloth().repeat().isPresent() ? "Light lines: middles of the stripes. " : "")
        + (laid.stream().anyMatch(copy -> !copy.marks().isEmpty())
            ? "Rings: places that lie where the job asks. "
            : "")
        + String.format(
            Locale.ROOT,
            "Numbers run from the %s. Ellwand, %s.",
            ClothWords.start(marker),
            marker.search().map(MarkerSheet::words).orElse("laid by hand"));
  }

  private static String words(Marker.Search search) {
    return "seed "
        + search.seed()
        + ", effort "
        + search.effort()
        + (search.stoppedEarly() ? ", stopped early" : "");
  }
}
