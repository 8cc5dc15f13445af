package ellwand.rule;

import ellwand.cloth.Cloth;
import ellwand.cloth.Direction;
import ellwand.cloth.Fold;
import ellwand.cloth.Goods;
import ellwand.cloth.LaidCloth;
import ellwand.cloth.Laying;
import ellwand.cloth.Selling;
import ellwand.cloth.Zone;
import ellwand.cutting.CutPiece;
import ellwand.geometry.Box;
import ellwand.geometry.Motion;
import ellwand.geometry.Outline;
import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.lay.Copy;
import ellwand.lay.Form;
import ellwand.lay.Heading;
import ellwand.lay.Lay;
import ellwand.lay.Marker;
import ellwand.lay.Wanted;
import ellwand.pattern.Cut;
import ellwand.pattern.Edge;
import ellwand.pattern.Grain;
import ellwand.pattern.Piece;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** Pieces without allowances, and markers made by hand, to try rules on. Lengths in mm. */
public final class Trial {

  private Trial() {}

  public static List<Point> points(double... xy) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < xy.length; i += 2) {
      points.add(new Point(xy[i], xy[i + 1]));
    }
    return points;
  }

  public static CutPiece piece(String name, Grain grain, String cut, List<Point> corners) {
    List<Edge> edges = edges(corners);
    boolean onFold = cut.contains("fold");
    Optional<String> fold = onFold ? Optional.of(edges.get(0).name()) : Optional.empty();
    Piece piece =
        new Piece(name, edges, fold, grain, List.of(), List.of(), List.of(Cut.parse("main", cut)));
    Outline line = Outline.of(corners);
    return new CutPiece(
        piece,
        line,
        line,
        List.of(),
        List.of(),
        fold.map(f -> new CutPiece.Stroke(corners.get(0), corners.get(1))));
  }

  private static List<Edge> edges(List<Point> corners) {
    List<Edge> edges = new ArrayList<>();
    for (int i = 0; i < corners.size(); i++) {
      Point next = corners.get((i + 1) % corners.size());
      edges.add(new Edge("e" + i, Path.line(corners.get(i), next), 0, false));
    }
    return edges;
  }

  /** A piece that is its own mirror image. */
  public static CutPiece rectangle(String name, String cut, double length, double width) {
    return piece(name, Grain.ALONG, cut, points(0, 0, length, 0, length, width, 0, width));
  }

  /** A piece with a hand: one end slopes. */
  public static CutPiece sloped(String name, String cut, double length, double width) {
    return piece(name, Grain.ALONG, cut, points(0, 0, length, 0, length * 0.8, width, 0, width));
  }

  public static Cloth cloth(double usableWidth, double gap, Direction direction, Fold... folds) {
    return new Cloth(
        "main",
        Goods.wide(usableWidth + 20).selvedge(10),
        Laying.in(folds).heading(direction).gap(gap).ends(40),
        Selling.inSteps(50).at(8, "EUR"));
  }

  public static Lay lay(Cloth cloth, CutPiece... cuts) {
    List<Wanted> wanted = new ArrayList<>();
    for (CutPiece cut : cuts) {
      wanted.addAll(wanted(cut, "110", 1));
    }
    return new Lay("tabard", cloth, wanted);
  }

  public static List<Wanted> wanted(CutPiece cut, String size, int garment) {
    Cut how = cut.piece().cuts().get(0);
    List<Wanted> wanted = new ArrayList<>();
    for (int i = 0; i < how.count(); i++) {
      wanted.add(new Wanted(cut, size, garment, how.how()));
    }
    return wanted;
  }

  /** A copy whose low corner, when it is turned, is at x, y. */
  public static Copy copy(
      CutPiece cut, Form form, String zone, boolean flipped, double turn, double x, double y) {
    return copy(cut, "110", 1, form, zone, flipped, turn, x, y);
  }

  public static Copy copy(
      CutPiece cut,
      String size,
      int garment,
      Form form,
      String zone,
      boolean flipped,
      double turn,
      double x,
      double y) {
    Outline line = (form == Form.OPENED ? cut.opened() : cut).cutting();
    Box box = line.moved(new Motion(flipped, turn, 0, 0)).box();
    Motion motion = new Motion(flipped, turn, x - box.minX(), y - box.minY());
    return new Copy(
        cut.name(),
        size,
        garment,
        form,
        zone,
        Heading.ofTurn(turn, flipped),
        motion,
        line.moved(motion));
  }

  public static Marker open(Lay lay, double length, Copy... copies) {
    return marker(lay, Fold.OPEN, List.of(zone(lay, Fold.OPEN, 0, 0, length)), copies);
  }

  /** Folded up to {@code border}, opened from there to {@code length}. */
  public static Marker folded(Lay lay, double border, double length, Copy... copies) {
    return marker(
        lay,
        Fold.LENGTHWISE,
        List.of(
            zone(lay, Fold.LENGTHWISE, 0, 0, border),
            zone(lay, Fold.LENGTHWISE, 1, border, length)),
        copies);
  }

  private static Zone zone(Lay lay, Fold fold, int stretch, double from, double to) {
    return LaidCloth.of(lay.cloth(), fold).stretches().get(stretch).get(0).zone(from, to);
  }

  public static Marker marker(Lay lay, Fold fold, List<Zone> zones, Copy... copies) {
    return new Marker(lay, fold, zones, List.of(copies))
        .foundBy(new Marker.Search(1, 1, "1steps", false));
  }

  public static Marker changed(Marker m, int index, UnaryOperator<Copy> change) {
    return m.with(index, change.apply(m.copies().get(index)));
  }

  public static Marker dropped(Marker m, int index) {
    List<Copy> copies = new ArrayList<>(m.copies());
    copies.remove(index);
    return m.with(copies);
  }

  public static Marker added(Marker m, Copy copy) {
    List<Copy> copies = new ArrayList<>(m.copies());
    copies.add(copy);
    return m.with(copies);
  }

  /** Moved in earnest: pose and outline. */
  public static UnaryOperator<Copy> shifted(double dx, double dy) {
    return c -> c.shifted(dx, dy);
  }

  /** Only the outline, the pose as it was. */
  public static UnaryOperator<Copy> redrawn(UnaryOperator<Outline> change) {
    return c -> c.at(c.motion(), change.apply(c.outline()));
  }

  /** Only the pose, the outline as it was. */
  public static UnaryOperator<Copy> posed(UnaryOperator<Motion> change) {
    return c -> c.at(change.apply(c.motion()), c.outline());
  }

  public static UnaryOperator<Copy> headed(Heading heading) {
    return c ->
        new Copy(
            c.piece(), c.size(), c.garment(), c.form(), c.zone(), heading, c.motion(), c.outline());
  }

  public static UnaryOperator<Copy> zoned(String zone) {
    return c ->
        new Copy(
            c.piece(), c.size(), c.garment(), c.form(), zone, c.heading(), c.motion(), c.outline());
  }

  public static UnaryOperator<Copy> formed(Form form) {
    return c ->
        new Copy(
            c.piece(), c.size(), c.garment(), form, c.zone(), c.heading(), c.motion(), c.outline());
  }

  public static UnaryOperator<Copy> named(String piece, String size, int garment) {
    return c ->
        new Copy(piece, size, garment, c.form(), c.zone(), c.heading(), c.motion(), c.outline());
  }

  /** The rules that it breaks, each once. */
  public static List<String> broken(Marker marker) {
    return Check.of(marker).stream().map(f -> f.rule().id()).distinct().toList();
  }

  /** What the check says of it, in cm. */
  public static List<String> told(Marker marker) {
    return Check.of(marker).stream().map(f -> f.sentence(Unit.CM)).toList();
  }
}
