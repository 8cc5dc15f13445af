package ellwand.draw.marker;

import ellwand.cloth.Zone;
import ellwand.cutting.CutPiece;
import ellwand.draw.piece.Labelling;
import ellwand.draw.piece.PieceLines;
import ellwand.draw.plot.Plot;
import ellwand.draw.plot.Stroke;
import ellwand.draw.sheet.Item;
import ellwand.draw.sheet.Reading;
import ellwand.geometry.Box;
import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import ellwand.geometry.Region;
import ellwand.lay.Form;
import ellwand.lay.Lay;
import ellwand.lay.Marker;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * A marker for a plotter or a cutting machine: cutting lines but for those along a fold, notches;
 * and drawn: the edges of the laid cloth, inner lines, grain and labels.
 */
public final class MarkerPlot {

  /** Letters on the table, and smaller ones where they have no room, times those of A4. */
  private static final List<Reading> READINGS =
      List.of(new Reading(2), new Reading(1.3), new Reading(0.8));

  private static final double NUMBER_MM = 4;

  /** Round all of it, mm. */
  private static final double MARGIN_MM = 1;

  private static final double HEAD_MM = 8;

  private final Marker marker;
  private final List<List<Point>> joins;
  private final List<Item.Text> words = new ArrayList<>();
  private final List<Stroke> drawn = new ArrayList<>();
  private final List<Stroke> notches = new ArrayList<>();
  private final List<Stroke> cut = new ArrayList<>();

  private MarkerPlot(Marker marker, List<List<Point>> joins) {
    this.marker = marker;
    this.joins = joins;
  }

  /**
   * In the order of the copies; {@link Plot#shortened} has less travel.
   *
   * @param title stands over it
   */
  public static Plot of(Marker marker, String title) {
    return new MarkerPlot(marker, List.of()).plot(title, true);
  }

  /**
   * The same without words over it, for where they stand elsewhere.
   *
   * @param joins lines along which pages are joined, across which no words stand if there is room
   */
  public static Plot unheaded(Marker marker, String title, List<List<Point>> joins) {
    return new MarkerPlot(marker, joins).plot(title, false);
  }

  private Plot plot(String title, boolean headed) {
    new ShownCloth(marker).zones().forEach(this::zone);
    List<Laid> laid = Laid.of(marker);
    CopyLettering lettering = new CopyLettering(marker, laid, joins);
    laid.forEach(copy -> add(copy, lettering));
    String head = title + ", " + marker.lay().cloth().name() + ", " + marker.fold().words();
    if (headed) {
      Point at = new Point(0, marker.markerWidthMm() + HEAD_MM / 2);
      words.add(Item.Text.of("title", head, at, HEAD_MM, Item.Anchor.START));
    }
    return new Plot(head, frame(), words, drawn, notches, cut);
  }

  /** Round all of it. */
  private Box frame() {
    List<Box> boxes = new ArrayList<>();
    Stream.of(drawn, notches, cut)
        .flatMap(List::stream)
        .forEach(stroke -> boxes.add(Box.around(stroke.points())));
    words.forEach(text -> boxes.add(text.box()));
    return boxes.stream().reduce(Box::union).orElseThrow().grown(MARGIN_MM);
  }

  private void zone(Zone zone) {
    Box box = new ShownCloth(marker).seen(zone);
    drawn.add(new Stroke(Outline.of(box).points(), true));
    double middle = box.centre().x();
    for (Zone.Side side : zone.foldEdges()) {
      Point at =
          switch (side) {
            case LOW_Y -> new Point(middle, box.minY() - HEAD_MM);
            case HIGH_Y -> new Point(middle, box.maxY() + HEAD_MM / 3);
            case LOW_X -> new Point(box.minX() - HEAD_MM / 3, box.centre().y());
          };
      words.add(
          Item.Text.of("fold", "fold", at, HEAD_MM, Item.Anchor.MIDDLE)
              .turned(side == Zone.Side.LOW_X ? 90 : 0));
    }
  }

  private void add(Laid copy, CopyLettering lettering) {
    Outline outline = copy.copy().outline();
    if (copy.copy().form() == Form.HALF && copy.cut().fold().isPresent()) {
      PieceLines.offFold(outline.points(), copy.cut().fold().get())
          .forEach(line -> cut.add(new Stroke(line, false)));
    } else {
      cut.add(new Stroke(outline.points(), true));
    }
    for (CutPiece.Stroke notch : copy.cut().notches()) {
      notches.add(new Stroke(List.of(notch.from(), notch.to()), false));
    }
    copy.cut().innerLines().forEach(line -> drawn.add(new Stroke(line.points(), false)));
    boolean oneHeaded = Laid.oneHeaded(Lay.direction(marker.lay().cloth(), copy.cut()));
    for (Reading reading : READINGS) {
      Labelling.Lettered found = lettering.on(copy, reading);
      if (found.label().isPresent()) {
        add(new PieceLines(reading).arrow(found.arrow(), oneHeaded));
        add(found.label().get().items(reading));
        return;
      }
    }
    String number = Integer.toString(copy.number());
    Point middle = Region.of(outline).middle();
    words.add(Item.Text.of("label", number, middle, NUMBER_MM, Item.Anchor.MIDDLE));
  }

  private void add(List<Item> items) {
    for (Item item : items) {
      if (item instanceof Item.Lines lines) {
        lines.lines().forEach(line -> drawn.add(new Stroke(line, lines.closed())));
      } else if (item instanceof Item.Text text) {
        words.add(text);
      }
    }
  }
}
