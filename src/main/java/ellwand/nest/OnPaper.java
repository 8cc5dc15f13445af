package ellwand.nest;

import ellwand.geometry.Box;
import ellwand.geometry.Motion;
import ellwand.geometry.NoFitUnion;
import ellwand.geometry.Outline;
import ellwand.geometry.Region;
import ellwand.nest.kernel.Layout;
import ellwand.nest.kernel.Listener;
import ellwand.nest.kernel.Obstacle;
import ellwand.nest.kernel.Shape;
import ellwand.nest.kernel.Strip;
import ellwand.nest.kernel.StripForm;
import ellwand.nest.kernel.StripSearch;
import ellwand.work.Request;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Lays paper pieces close together on a strip of paper, as short as it finds. Paper has no grain:
 * pieces turn as they are allowed to, but never over. Several widths may be tried one after
 * another; what is known of the pieces is worked out once.
 */
public final class OnPaper {

  /** Lines with room round them need not be followed more closely, mm. */
  private static final double NEEDLESS_MM = 1;

  private final List<Outline> pieces;
  private final List<Double> turns;
  private final List<Shape> shapes = new ArrayList<>();
  private final Box kept;
  private StripSearch before;

  /**
   * @param pieces as drawn
   * @param turns degrees by which each may be turned
   * @param gapMm between pieces; half as much is kept from the edges of the paper
   * @param kept how large a corner of the paper is kept for something else: along the strip from
   *     its beginning, and across it from its far edge
   */
  public OnPaper(List<Outline> pieces, List<Double> turns, double gapMm, Box kept) {
    this.pieces = List.copyOf(pieces);
    this.turns = List.copyOf(turns);
    this.kept = kept;
    for (Outline piece : pieces) {
      Outline roomy = Region.of(piece).grownMitred(gapMm / 2).shells().get(0);
      Outline plain = roomy.withoutNeedless(NEEDLESS_MM);
      turns.forEach(turn -> shapes.add(shape(plain.moved(new Motion(false, turn, 0, 0)))));
    }
    shapes.add(shape(Outline.of(kept)));
  }

  private static Shape shape(Outline outline) {
    return new Shape(
        outline.points().stream()
            .flatMap(p -> List.of(p.x(), p.y()).stream())
            .mapToDouble(d -> d)
            .toArray());
  }

  /** How wide the paper must be for every piece to have room in one turn or another, mm. */
  public double leastWidthMm() {
    double least = kept.width();
    for (int i = 0; i < pieces.size(); i++) {
      least = Math.max(least, leastWidthMm(i));
    }
    return least;
  }

  /** How wide the paper must be for a piece, with the room that it keeps, mm. */
  public double leastWidthMm(int piece) {
    double least = Double.POSITIVE_INFINITY;
    for (int t = 0; t < turns.size(); t++) {
      Shape shape = shapes.get(piece * turns.size() + t);
      least = Math.min(least, shape.maxY() - shape.minY());
    }
    return least;
  }

  /**
   * How each piece comes to its place.
   *
   * @param widthMm of the paper, at least {@link #leastWidthMm()}
   * @return in the order of the pieces; empty if nothing was found, as after a stop
   */
  public Optional<List<Motion>> within(double widthMm, Request request) {
    List<List<StripForm>> copies = new ArrayList<>();
    for (int i = 0; i < pieces.size(); i++) {
      List<StripForm> forms = new ArrayList<>();
      for (int t = 0; t < turns.size(); t++) {
        int index = i * turns.size() + t;
        Shape shape = shapes.get(index);
        if (shape.maxY() - shape.minY() <= widthMm) {
          // As wide as the paper to the last digit is wide enough.
          double low = -shape.minY();
          double high = Math.max(low, widthMm - shape.maxY());
          forms.add(StripForm.free(index, low, high, -shape.minX(), shape.maxX()));
        }
      }
      copies.add(List.copyOf(forms));
    }
    Obstacle corner =
        new Obstacle(shapes.size() - 1, -kept.minX(), widthMm - kept.width() - kept.minY());
    Strip strip = new Strip(shapes, copies, List.of(corner), Double.POSITIVE_INFINITY);
    before =
        before == null ? new StripSearch(strip, NoFitUnion::rings) : new StripSearch(strip, before);
    return before
        .run(Optional.empty(), request, Listener.NONE)
        .layout()
        .map(layout -> motions(layout, copies));
  }

  private List<Motion> motions(Layout layout, List<List<StripForm>> copies) {
    List<Motion> motions = new ArrayList<>();
    for (int i = 0; i < pieces.size(); i++) {
      Layout.StripPose pose = layout.poses().get(i);
      int turn = copies.get(i).get(pose.form()).shape() % turns.size();
      motions.add(new Motion(false, turns.get(turn), pose.x(), pose.y()));
    }
    return motions;
  }
}
