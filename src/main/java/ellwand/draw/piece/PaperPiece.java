package ellwand.draw.piece;

import ellwand.cutting.CutPiece;
import ellwand.draw.sheet.Colour;
import ellwand.draw.sheet.Item;
import ellwand.draw.sheet.Lettering;
import ellwand.draw.sheet.Reading;
import ellwand.geometry.Motion;
import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import ellwand.geometry.Region;
import ellwand.pattern.Sizes;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A piece full size on paper, as it is cut out of the paper and pinned to the cloth.
 *
 * @param cut as drawn
 * @param cuts how many are cut from which cloth, each in words
 * @param larger by how much it is drawn larger than its pattern, in words
 * @param lines which lines it is drawn with
 */
public record PaperPiece(
    CutPiece cut,
    String style,
    String size,
    List<String> cuts,
    Optional<String> larger,
    Lines lines) {

  /** Which of its lines are drawn. */
  public enum Lines {
    SEWING,
    CUTTING,
    BOTH
  }

  private static final double FALLBACK_POINTS = 8;

  /** Long enough to be measured from both of its ends to a selvedge. */
  private static final double LONGEST_ARROW_MM = 200;

  public PaperPiece {
    cuts = List.copyOf(cuts);
  }

  /** What it is cut out of the paper along, as drawn. */
  public Outline outline() {
    return lines == Lines.SEWING ? cut.sewing() : cut.cutting();
  }

  public String title() {
    return cut.name() + ", " + Sizes.words(size);
  }

  /**
   * The piece in its place.
   *
   * @param joins lines along which pages are joined, across which no words stand if there is room
   *     elsewhere
   */
  public List<Item> items(Motion motion, Reading reading, List<List<Point>> joins) {
    CutPiece placed = cut.moved(motion);
    PieceLines drawn = new PieceLines(reading);
    Outline out = outline().moved(motion);
    List<Item> items = new ArrayList<>(drawn.cutting(out, placed.fold(), Colour.WHITE));
    items.addAll(
        switch (lines) {
          case SEWING -> drawn.marks(placed, notchesOnSewingLine(placed));
          case CUTTING -> drawn.marks(placed, placed.notches());
          case BOTH -> drawn.inside(placed);
        });
    placed.fold().ifPresent(f -> items.add(drawn.fold(f.from(), f.to())));
    items.addAll(lettering(placed, GrainLine.of(cut).moved(motion), drawn, reading, joins));
    return items;
  }

  private List<Item> lettering(
      CutPiece placed,
      GrainLine grain,
      PieceLines drawn,
      Reading reading,
      List<List<Point>> joins) {
    List<List<Point>> inner = placed.innerLines().stream().map(CutPiece.Drawn::points).toList();
    List<List<Point>> clear = new ArrayList<>(inner);
    clear.addAll(joins);
    Labelling onOnePage = new Labelling(reading, placed.sewing(), grain, clear);
    Labelling.Lettered there = onOnePage.place(wordings());
    boolean straddles =
        there
            .label()
            .filter(l -> clear.stream().anyMatch(j -> Room.crosses(j, l.box())))
            .isPresent();
    Labelling labelling =
        straddles ? new Labelling(reading, placed.sewing(), grain, inner) : onOnePage;
    Labelling.Lettered lettered = straddles ? labelling.place(wordings()) : there;
    Labelling.Arrow arrow =
        lettered
            .arrow()
            .map(a -> labelling.grown(a, lettered.label(), LONGEST_ARROW_MM))
            .orElseGet(() -> labelling.across(lettered.label()));
    List<Item> items = new ArrayList<>(drawn.topArrow(arrow));
    lettered
        .label()
        .ifPresentOrElse(
            label -> {
              items.add(label.ground(Colour.WHITE, reading));
              items.addAll(label.items(reading));
            },
            () -> items.add(smallName(placed.sewing(), reading)));
    return items;
  }

  /** The name of a piece that has no room for it: so small that it stays inside. */
  private Item smallName(Outline inside, Reading reading) {
    boolean upended = inside.box().width() > inside.box().length();
    double room = 0.8 * Math.max(inside.box().length(), inside.box().width());
    double most = reading.points(FALLBACK_POINTS);
    double size = Math.min(most, most * room / Lettering.width(title(), most));
    return Item.Text.of("label", title(), Region.of(inside).middle(), size, Item.Anchor.MIDDLE)
        .turned(upended ? 90 : 0);
  }

  private List<Wording> wordings() {
    List<String> main = new ArrayList<>(List.of(Sizes.words(size)));
    main.addAll(cuts);
    List<String> more = new ArrayList<>(List.of(style, allowance()));
    larger.ifPresent(by -> more.add("drawn larger by " + by));
    return Wording.choices("", Optional.empty(), cut.name(), main, more);
  }

  private String allowance() {
    boolean some = cut.piece().edges().stream().anyMatch(e -> e.allowanceMm() > 0);
    return !some
        ? "no allowance"
        : lines == Lines.SEWING ? "add the allowance" : "allowance included";
  }

  /** Strokes that begin on the sewing line instead of the cutting line. */
  private List<CutPiece.Stroke> notchesOnSewingLine(CutPiece placed) {
    List<CutPiece.Stroke> strokes = new ArrayList<>();
    for (CutPiece.Stroke notch : placed.notches()) {
      Point inward = notch.to().minus(notch.from()).unit();
      onSewingLine(placed, notch.from(), inward)
          .ifPresent(
              at ->
                  strokes.add(
                      new CutPiece.Stroke(
                          at, at.plus(inward.times(notch.from().distance(notch.to()))))));
    }
    return strokes;
  }

  /** Where a line into the piece first meets the sewing line. */
  private static Optional<Point> onSewingLine(CutPiece placed, Point from, Point inward) {
    List<Point> ring = placed.sewing().points();
    double nearest = Double.POSITIVE_INFINITY;
    for (int i = 0; i < ring.size(); i++) {
      Point a = ring.get(i).minus(from);
      Point side = ring.get((i + 1) % ring.size()).minus(ring.get(i));
      double across = inward.cross(side);
      double away = a.cross(side) / across;
      double share = a.cross(inward) / across;
      if (across != 0 && away > -1e-6 && share >= -1e-9 && share <= 1 + 1e-9) {
        nearest = Math.min(nearest, away);
      }
    }
    return nearest < Double.POSITIVE_INFINITY
        ? Optional.of(from.plus(inward.times(nearest)))
        : Optional.empty();
  }
}
