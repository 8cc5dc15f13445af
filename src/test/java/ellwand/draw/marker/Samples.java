package ellwand.draw.marker;

import ellwand.cloth.Cloth;
import ellwand.cloth.Direction;
import ellwand.cloth.Fold;
import ellwand.cloth.Goods;
import ellwand.cloth.LaidCloth;
import ellwand.cloth.Laying;
import ellwand.cloth.Selling;
import ellwand.cloth.Wish;
import ellwand.cloth.Wishes;
import ellwand.cloth.Zone;
import ellwand.cutting.CutPiece;
import ellwand.draw.piece.Drafting;
import ellwand.draw.piece.Pieces;
import ellwand.figures.Figures;
import ellwand.figures.JobFigures;
import ellwand.figures.Safety;
import ellwand.geometry.Box;
import ellwand.geometry.Motion;
import ellwand.geometry.Outline;
import ellwand.job.Wear;
import ellwand.lay.Copy;
import ellwand.lay.Form;
import ellwand.lay.Heading;
import ellwand.lay.Lay;
import ellwand.lay.Marker;
import ellwand.lay.Wanted;
import ellwand.pattern.Cut;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Markers laid by hand, for the drawings to show. */
public final class Samples {

  private Samples() {}

  static Cloth cloth(Direction direction, Fold fold) {
    return new Cloth(
        "main",
        Goods.wide(1400).selvedge(10),
        Laying.in(fold).heading(direction).gap(3).ends(40),
        Selling.inSteps(50).at(14, "EUR"));
  }

  /** A child's jacket on a lengthwise fold, one way, its pockets where the cloth is opened. */
  public static Marker jacket() {
    Lay lay =
        new Lay(
            "Weir jacket",
            cloth(Direction.ONE_WAY, Fold.LENGTHWISE),
            List.of(
                new Wanted(Pieces.back(), "104", 1, Cut.How.FOLD),
                new Wanted(Pieces.front(), "104", 1, Cut.How.PAIR),
                new Wanted(Pieces.sleeve(), "104", 1, Cut.How.PAIR),
                new Wanted(Pieces.collar(), "104", 1, Cut.How.FOLD),
                new Wanted(Pieces.facing(), "104", 1, Cut.How.PAIR),
                new Wanted(Pieces.pocket(), "104", 1, Cut.How.WHOLE),
                new Wanted(Pieces.loop(), "104", 1, Cut.How.WHOLE)));
    List<Zone> zones =
        LaidCloth.of(lay.cloth(), Fold.LENGTHWISE).stretches().stream()
            .map(s -> s.get(0))
            .map(b -> b.id().equals("folded") ? b.zone(0, 968) : b.zone(968, 1120))
            .toList();
    List<Copy> copies =
        List.of(
            laid(Pieces.back(), 1, Form.HALF, "folded", 0, 0, 0),
            laid(Pieces.front(), 1, Form.PAIR, "folded", 0, 0, 223),
            laid(Pieces.facing(), 1, Form.PAIR, "folded", 0, 0, 474),
            laid(Pieces.collar(), 1, Form.HALF, "folded", 0, 532, 0),
            laid(Pieces.sleeve(), 1, Form.PAIR, "folded", 0, 535, 190),
            laid(Pieces.collar(), 1, Form.OPENED, "opened", 0, 970, 5),
            laid(Pieces.pocket(), 1, Form.WHOLE, "opened", 0, 970, 380),
            laid(Pieces.pocket(), 1, Form.WHOLE, "opened", 0, 970, 515),
            laid(Pieces.loop(), 1, Form.WHOLE, "opened", 0, 970, 660));
    return new Marker(lay, Fold.LENGTHWISE, zones, copies)
        .foundBy(new Marker.Search(1, 2, "5000steps", false));
  }

  /** Six overalls on open cloth, either way up, laid in rows as they come. */
  public static Marker overalls() {
    List<CutPiece> cuts =
        List.of(
            Pieces.back().opened(),
            Pieces.front(),
            Pieces.front(),
            Pieces.sleeve(),
            Pieces.sleeve(),
            Pieces.pocket(),
            Pieces.loop());
    List<Wanted> wanted = new ArrayList<>();
    List<Copy> copies = new ArrayList<>();
    double x = 0;
    double y = 0;
    double row = 0;
    for (int garment = 1; garment <= 6; garment++) {
      for (CutPiece cut : cuts) {
        boolean second = copies.size() % 2 == 1;
        Cut.How how = cut.piece().cuts().get(0).how();
        CutPiece drawn = how == Cut.How.FOLD ? Pieces.back() : cut;
        // Two copies on open cloth make one pair.
        if (how != Cut.How.PAIR || !isPairBegun(wanted, drawn, garment)) {
          wanted.add(new Wanted(drawn, "104", garment, how));
        }
        Form form = how == Cut.How.FOLD ? Form.OPENED : Form.WHOLE;
        Copy copy = laid(drawn, garment, form, "open", second ? 180 : 0, x, y);
        if (copy.outline().box().maxY() > 1380) {
          x = row + 3;
          y = 0;
          copy = laid(drawn, garment, form, "open", second ? 180 : 0, x, y);
        }
        y = copy.outline().box().maxY() + 3;
        row = Math.max(row, copy.outline().box().maxX());
        copies.add(copy);
      }
    }
    Lay lay = new Lay("Overalls", cloth(Direction.ANY_WAY, Fold.OPEN), wanted);
    List<Zone> zones = List.of(LaidCloth.of(lay.cloth(), Fold.OPEN).bands().get(0).zone(0, row));
    return new Marker(lay, Fold.OPEN, zones, copies).foundBy(new Marker.Search(7, 2, "30s", true));
  }

  static final String TAGS = "<b>&\"pocket\"</b>";
  static final String LETTERS = "Ålesund – złoty кант 裁";
  static final String LONG = "Undercollar interfacing panel ".repeat(12).strip();

  /** Names that try to break out of the file or the page. */
  public static Marker hostile() {
    List<CutPiece> cuts =
        List.of(
            Drafting.rectangle(TAGS, 300, 200, 10).cut("main", "1"),
            Drafting.rectangle(LETTERS, 300, 200, 10).cut("main", "1"),
            Drafting.rectangle(LONG, 300, 200, 10).cut("main", "1"),
            Drafting.rectangle("X".repeat(400), 300, 200, 10).cut("main", "1"),
            Drafting.rectangle("tab\tline\nbell\u0007", 300, 200, 10).cut("main", "1"));
    List<Wanted> wanted = cuts.stream().map(c -> new Wanted(c, "104", 1, Cut.How.WHOLE)).toList();
    List<Copy> copies = new ArrayList<>();
    for (CutPiece cut : cuts) {
      copies.add(laid(cut, 1, Form.WHOLE, "open", 0, 0, copies.size() * 230));
    }
    Lay lay = new Lay("<script>" + LONG, cloth(Direction.ONE_WAY, Fold.OPEN), wanted);
    List<Zone> zones = List.of(LaidCloth.of(lay.cloth(), Fold.OPEN).bands().get(0).zone(0, 320));
    return new Marker(lay, Fold.OPEN, zones, copies).foundBy(new Marker.Search(1, 1, "1s", false));
  }

  private static boolean isPairBegun(List<Wanted> wanted, CutPiece cut, int garment) {
    return wanted.stream()
        .anyMatch(w -> w.cut().name().equals(cut.name()) && w.garment() == garment);
  }

  /**
   * A half on the fold and a patch whose twin is spare: small enough to read as a file, and without
   * curves, so that only the drawing decides how the file looks.
   */
  public static Marker bib() {
    CutPiece bib =
        Drafting.of("Bib", 0, 0)
            .fold("centre", 180, 0)
            .line("top", 20, 180, 70)
            .line("side", 10, 0, 120)
            .line("waist", 15, 0, 0)
            .notch("side", 60, 1)
            .cut("main", "1 on fold");
    CutPiece patch = Drafting.rectangle("Patch", 60, 50, 10).cut("main", "1");
    Lay lay =
        new Lay(
            "Quay bib",
            new Cloth("main", Goods.wide(400), Laying.in(Fold.LENGTHWISE), Selling.USUAL),
            List.of(
                new Wanted(bib, "86", 1, Cut.How.FOLD), new Wanted(patch, "86", 1, Cut.How.WHOLE)));
    Zone folded = LaidCloth.of(lay.cloth(), Fold.LENGTHWISE).bands().get(0).zone(0, 215);
    List<Copy> copies =
        List.of(
            laid(bib, "86", 1, Form.HALF, "folded", 0, 0, 0),
            laid(patch, "86", 1, Form.WHOLE, "folded", 180, 135, 130));
    return new Marker(lay, Fold.LENGTHWISE, List.of(folded), copies)
        .foundBy(new Marker.Search(1, 1, "10steps", false));
  }

  /** One copy whose cutting line begins at a place, mm. */
  static Copy laid(
      CutPiece cut, int garment, Form form, String zone, double turn, double minX, double minY) {
    return laid(cut, "104", garment, form, zone, turn, minX, minY);
  }

  private static Copy laid(
      CutPiece cut,
      String size,
      int garment,
      Form form,
      String zone,
      double turn,
      double minX,
      double minY) {
    Outline drawn = form == Form.OPENED ? cut.opened().cutting() : cut.cutting();
    Box box = drawn.moved(new Motion(false, turn, 0, 0)).box();
    Motion motion = new Motion(false, turn, minX - box.minX(), minY - box.minY());
    return new Copy(
        cut.name(),
        size,
        garment,
        form,
        zone,
        Heading.ofTurn(turn, false),
        motion,
        drawn.moved(motion));
  }

  static MarkerHead head(Marker marker) {
    return MarkerHead.of(marker.lay().style());
  }

  public static Figures figures(Marker marker) {
    return Figures.of(
        marker, List.of("Front facing is cut in one piece: fold it along its middle."));
  }

  /** The same with what the cutter wishes for. */
  public static Figures wished(Marker marker) {
    Cloth cloth =
        marker.lay().cloth().wishing(new Wishes(List.of(Wish.values()), Wishes.USUAL_PRICE));
    Lay lay = marker.lay().on(cloth);
    Marker wished = marker.of(lay);
    return Figures.of(wished, List.of(), List.of(), Optional.of(marker));
  }

  public static JobFigures job(Marker... markers) {
    return JobFigures.of(
        markers[0].lay().style(),
        Arrays.stream(markers).map(Samples::figures).toList(),
        Safety.of(Set.of(Wear.CHILDREN)));
  }
}
