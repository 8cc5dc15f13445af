package ellwand.draw.piece;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.draw.sheet.Reading;
import ellwand.geometry.Box;
import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import ellwand.geometry.Region;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class LabellingTest {

  private static final Reading READING = new Reading(6);

  @Property(tries = 60)
  void labelAndArrowStayInsideAndApart(
      @ForAll @Size(9) List<@DoubleRange(min = 30, max = 300) Double> radii) {
    Outline star = star(radii);
    GrainLine grain = new GrainLine(Region.of(star).middle(), new Point(1, 0));
    Labelling.Lettered found = new Labelling(READING, star, grain, List.of()).place(wordings());
    Region inside = Region.of(star);
    found
        .label()
        .ifPresent(l -> assertTrue(Region.of(l.box()).minus(inside).isEmpty(), l.toString()));
    found
        .arrow()
        .ifPresent(
            a -> {
              Region line = Region.of(Box.around(List.of(a.tail(), a.head())).grown(0.5));
              assertTrue(line.minus(inside).isEmpty(), a.toString());
              found
                  .label()
                  .ifPresent(l -> assertTrue(line.intersect(Region.of(l.box())).isEmpty()));
            });
  }

  @Test
  void allWordsAreShownWhereThereIsRoom() {
    Labelling.Lettered found = place(400, 300);
    assertEquals(wordings().get(0), found.label().orElseThrow().wording());
    assertTrue(found.arrow().isPresent());
  }

  @Test
  void fewerWordsAreShownInLessRoom() {
    List<String> lines = place(150, 60).label().orElseThrow().wording().lines();
    assertEquals("12 Undercollar", lines.get(0));
    assertTrue(lines.size() < 5);
  }

  @Test
  void narrowPiecesAreLetteredUpended() {
    assertTrue(place(45, 400).label().orElseThrow().upended());
  }

  @Test
  void nothingIsForcedIntoAPieceSmallerThanItsNumber() {
    assertTrue(place(12, 8).label().isEmpty());
    assertTrue(place(12, 8).arrow().isEmpty());
  }

  @Test
  void wordsKeepClearOfInnerLines() {
    Outline piece = Outline.of(new Box(0, 0, 400, 300));
    List<Point> dart = List.of(new Point(200, 0), new Point(200, 300));
    GrainLine grain = new GrainLine(new Point(200, 90), new Point(1, 0));
    Label label =
        new Labelling(READING, piece, grain, List.of(dart)).place(wordings()).label().orElseThrow();
    assertTrue(label.box().maxX() < 200 || label.box().minX() > 200, label.toString());
  }

  private static Labelling.Lettered place(double length, double width) {
    Outline piece = Outline.of(new Box(0, 0, length, width));
    GrainLine grain = new GrainLine(new Point(length / 2, width * 0.3), new Point(1, 0));
    return new Labelling(READING, piece, grain, List.of()).place(wordings());
  }

  private static List<Wording> wordings() {
    return Wording.choices(
        "12",
        Optional.empty(),
        "Undercollar",
        List.of("size 104, garment 2", "pair, cuts 2"),
        List.of("Weir jacket, main", "allowance included"));
  }

  private static Outline star(List<Double> radii) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < radii.size(); i++) {
      double angle = 2 * Math.PI * i / radii.size();
      points.add(new Point(Math.cos(angle), Math.sin(angle)).times(radii.get(i)));
    }
    return Outline.of(points);
  }
}
