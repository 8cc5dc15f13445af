package ellwand.rule;

import ellwand.cloth.Direction;
import ellwand.cloth.Fold;
import ellwand.cutting.CutPiece;
import ellwand.geometry.Box;
import ellwand.lay.Copy;
import ellwand.lay.Form;
import ellwand.lay.Lay;
import ellwand.lay.Marker;
import ellwand.lay.Wanted;
import ellwand.pattern.Grain;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Legal markers of random pieces, laid in rows across the cloth, box beside box. */
public final class Shelves {

  private final Random random;
  private final Fold fold;
  private final Cloth cloth;
  private final double rowWidth;
  private final List<Wanted> wanted = new ArrayList<>();
  private final List<Copy> copies = new ArrayList<>();
  private double x;
  private double y;
  private double rowEnd;

  private record Cloth(double width, double gap, Direction direction) {}

  private Shelves(long seed) {
    random = new Random(seed);
    fold = random.nextBoolean() ? Fold.OPEN : Fold.LENGTHWISE;
    cloth =
        new Cloth(
            900 + random.nextInt(700),
            random.nextInt(3) * 2.5,
            Direction.values()[random.nextInt(Direction.values().length)]);
    rowWidth = fold == Fold.OPEN ? cloth.width : cloth.width / 2;
  }

  public static Marker random(long seed) {
    Shelves shelves = new Shelves(seed);
    int garments = 1 + shelves.random.nextInt(3);
    List<CutPiece> pieces = shelves.pieces();
    for (int garment = 1; garment <= garments; garment++) {
      for (CutPiece piece : pieces) {
        List<Wanted> more = Trial.wanted(piece, "110", garment);
        shelves.wanted.addAll(more);
        for (Wanted w : more) {
          shelves.lay(w);
        }
      }
    }
    return shelves.marker();
  }

  private List<CutPiece> pieces() {
    List<CutPiece> pieces = new ArrayList<>();
    // Always one with a hand that lies alone.
    pieces.add(Trial.sloped("front", "1", size(), size()));
    int more = random.nextInt(5);
    for (int i = 0; i < more; i++) {
      pieces.add(
          switch (random.nextInt(4)) {
            case 0 -> Trial.rectangle("band " + i, "2", size(), size());
            case 1 -> Trial.rectangle("half " + i, "1 on fold", size(), size() / 2);
            case 2 -> Trial.sloped("sleeve " + i, "pair", size(), size());
            default -> round("collar " + i);
          });
    }
    return pieces;
  }

  private double size() {
    return 40 + random.nextInt(300);
  }

  /** A many-cornered piece without symmetry. */
  private CutPiece round(String name) {
    int corners = 5 + random.nextInt(30);
    double radius = size() / 2;
    double[] xy = new double[2 * corners];
    for (int i = 0; i < corners; i++) {
      double angle = 2 * Math.PI * i / corners;
      double r = radius * (0.6 + 0.4 * random.nextDouble());
      xy[2 * i] = radius + r * Math.cos(angle);
      xy[2 * i + 1] = radius + r * Math.sin(angle);
    }
    return Trial.piece(name, Grain.EITHER, "1 pair", Trial.points(xy));
  }

  private void lay(Wanted w) {
    boolean down =
        switch (cloth.direction) {
          case ANY_WAY -> random.nextBoolean();
          case ONE_WAY -> false;
          case ONE_WAY_PER_GARMENT -> w.garment() % 2 == 0;
        };
    double turn = down ? 180 : 0;
    switch (w.how()) {
      case WHOLE -> put(w, Form.WHOLE, fold == Fold.LENGTHWISE && random.nextBoolean(), turn);
      case PAIR -> {
        if (fold == Fold.LENGTHWISE) {
          put(w, Form.PAIR, random.nextBoolean(), turn);
        } else {
          put(w, Form.WHOLE, false, turn);
          put(w, Form.WHOLE, true, turn);
        }
      }
      case FOLD -> {
        if (fold == Fold.LENGTHWISE) {
          newRow();
          put(w, Form.HALF, down, turn);
        } else {
          put(w, Form.OPENED, random.nextBoolean(), turn);
        }
      }
    }
  }

  private void put(Wanted w, Form form, boolean flipped, double turn) {
    Copy copy = at(w, form, flipped, turn);
    if (copy.outline().box().maxY() > rowWidth) {
      newRow();
      copy = at(w, form, flipped, turn);
    }
    Box box = copy.outline().box();
    y = box.maxY() + cloth.gap;
    rowEnd = Math.max(rowEnd, box.maxX());
    copies.add(copy);
  }

  private Copy at(Wanted w, Form form, boolean flipped, double turn) {
    return Trial.copy(
        w.cut(),
        w.size(),
        w.garment(),
        form,
        fold == Fold.OPEN ? "open" : "folded",
        flipped,
        turn,
        x,
        y);
  }

  private void newRow() {
    if (y > 0) {
      x = rowEnd + cloth.gap;
      y = 0;
    }
  }

  private Marker marker() {
    Lay lay = new Lay("tabard", Trial.cloth(cloth.width, cloth.gap, cloth.direction, fold), wanted);
    Copy[] all = copies.toArray(Copy[]::new);
    return fold == Fold.OPEN
        ? Trial.open(lay, rowEnd, all)
        : Trial.folded(lay, rowEnd, rowEnd, all);
  }

  /** The first front turned over; in a double zone, where that is allowed, laid singly. */
  static Marker turnedOverFirstSloped(Marker marker) {
    Copy front = marker.copies().get(0);
    Box box = front.outline().box();
    CutPiece cut = marker.lay().wanted().get(0).cut();
    boolean doubled = marker.zones().get(0).plies() == 2;
    Marker turned =
        Trial.changed(
            marker,
            0,
            c ->
                Trial.copy(
                    cut,
                    c.size(),
                    c.garment(),
                    c.form(),
                    doubled ? "opened" : c.zone(),
                    doubled || !c.motion().flipped(),
                    c.motion().turnDegrees(),
                    box.minX(),
                    box.minY()));
    return turned;
  }
}
