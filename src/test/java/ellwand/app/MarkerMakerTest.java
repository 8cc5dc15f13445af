package ellwand.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.cloth.Direction;
import ellwand.cloth.Wish;
import ellwand.file.job.JobReader;
import ellwand.job.Job;
import ellwand.lay.Marker;
import ellwand.order.AreaLengths;
import ellwand.order.SizeMix;
import ellwand.order.Spreading;
import ellwand.rule.Check;
import ellwand.rule.Rules;
import ellwand.units.Unit;
import ellwand.work.Effort;
import ellwand.work.Request;
import ellwand.work.Seed;
import ellwand.work.Stop;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** How the markers of an order are estimated, made and searched for again. */
class MarkerMakerTest {

  @TempDir private Path folder;

  private static Request steps(long steps) {
    return Request.of(Effort.ofSteps(steps), new Seed(1));
  }

  private MarkerMaker maker(Path path, Spreading.Faces faces) {
    Job job = JobReader.read(path);
    Spreading spreading =
        new Spreading(faces, Spreading.PlyHeadings.ONE_WAY, Direction.ANY_WAY, false, false);
    return new MarkerMaker(job, job.cloths().get(0), spreading, Unit.CM, Hands.OWN);
  }

  /** Few steps for many garments, more for the parts that they can be laid of. */
  @Test
  void noMarkerIsLongerThanOthersEndToEndNorThanALargerOne() {
    MarkerMaker maker =
        maker(Path.of("sample-markers/beck-tunic/job.yaml"), Spreading.Faces.ALL_UP);
    SizeMix one = SizeMix.one("104");
    SizeMix two = new SizeMix(new TreeMap<>(Map.of("104", 1, "110", 1)));
    SizeMix three = new SizeMix(new TreeMap<>(Map.of("104", 2, "110", 1)));
    SizeMix five = new SizeMix(new TreeMap<>(Map.of("104", 3, "110", 2)));
    maker.make(List.of(five), steps(1));
    double searched = maker.made().get(five).lengthMm();
    maker.make(List.of(two, three), steps(1500));
    double gap = maker.cloth().gapMm();
    double joined = maker.made().get(two).lengthMm() + gap + maker.made().get(three).lengthMm();
    assertTrue(joined < searched, joined + " and " + searched);
    assertEquals(joined, maker.made().get(five).lengthMm(), 1e-6);
    assertEquals(List.of(), Check.of(maker.made().get(five)));
    assertEquals(maker.lay(five).wanted(), maker.made().get(five).lay().wanted());
    maker.make(List.of(one), steps(1));
    assertTrue(maker.made().get(one).lengthMm() <= maker.made().get(two).lengthMm());
  }

  /** Laid piece after piece, as a stop leaves it, it would take three times the cloth. */
  @Test
  void whatIsWantedAfterAStopIsSearchedForBriefly() {
    Path tunic = Path.of("sample-markers/beck-tunic/job.yaml");
    SizeMix two = new SizeMix(Map.of("104", 2));
    MarkerMaker unhurried = maker(tunic, Spreading.Faces.ALL_UP);
    unhurried.make(List.of(two), steps(20));
    MarkerMaker stopped = maker(tunic, Spreading.Faces.ALL_UP);
    stopped.make(List.of(two), steps(1000).with(new Stop(() -> true)));
    double mm = unhurried.made().get(two).lengthMm();
    assertEquals(mm, stopped.made().get(two).lengthMm(), 1e-6);
    MarkerMaker later = maker(tunic, Spreading.Faces.ALL_UP);
    AtomicInteger polls = new AtomicInteger();
    later.make(List.of(two), steps(1000).with(new Stop(() -> polls.incrementAndGet() > 3)));
    assertTrue(later.made().get(two).lengthMm() <= mm + 1e-6);
  }

  @Test
  void whatOthersMakeEndToEndNeedsNoSearch() {
    MarkerMaker maker =
        maker(Path.of("sample-markers/beck-tunic/job.yaml"), Spreading.Faces.ALL_UP);
    SizeMix one = SizeMix.one("104");
    SizeMix three = new SizeMix(Map.of("104", 3));
    assertFalse(maker.join(three));
    maker.makeBriefly(List.of(one), steps(1));
    assertTrue(maker.join(three));
    double mm = 3 * maker.made().get(one).lengthMm() + 2 * maker.cloth().gapMm();
    assertEquals(mm, maker.made().get(three).lengthMm(), 1e-6);
    assertEquals(List.of(), Check.of(maker.made().get(three)));
  }

  @Test
  void searchingAgainNeverMakesAMarkerLonger() {
    MarkerMaker maker =
        maker(Path.of("sample-markers/beck-tunic/job.yaml"), Spreading.Faces.ALL_UP);
    SizeMix two = new SizeMix(new TreeMap<>(Map.of("104", 1, "98", 1)));
    SizeMix three = new SizeMix(Map.of("110", 3));
    maker.make(List.of(two, three), steps(60));
    double before = maker.made().get(two).lengthMm();
    double other = maker.made().get(three).lengthMm();
    maker.polish(Map.of(two, 1.0), steps(1));
    assertTrue(maker.made().get(two).lengthMm() <= before);
    maker.polish(Map.of(two, 1.0), steps(300));
    assertTrue(maker.made().get(two).lengthMm() < before, "300 steps find more than 24");
    assertEquals(other, maker.made().get(three).lengthMm());
  }

  @Test
  void wishesAreServedOnWhatIsCutAndNoLongerThanTheTable() throws IOException {
    String tunic = Files.readString(Path.of("sample-markers/beck-tunic/job.yaml"));
    String wishing = "\n  main:\n    wishes: [garments together]\n";
    Path job = Files.writeString(folder.resolve("job.yaml"), tunic.replace("\n  main:\n", wishing));
    MarkerMaker maker = maker(job, Spreading.Faces.ALL_UP);
    SizeMix mix = new SizeMix(Map.of("98", 3));
    maker.make(List.of(mix), steps(1500));
    Marker shortest = maker.made().get(mix);
    WishedMarkers wished = new WishedMarkers(maker);
    assertEquals(shortest, wished.toCut(mix));

    wished.please(Map.of(mix, 1.0), steps(400), 1.06 * shortest.lengthMm());
    Marker cut = wished.toCut(mix);
    // Something shorter may be found by the way.
    assertTrue(maker.made().get(mix).lengthMm() <= shortest.lengthMm());
    assertEquals(List.of(), Check.of(cut));
    assertTrue(cut.lengthMm() <= 1.06 * shortest.lengthMm());
    double apart = Rules.amount(Wish.GARMENTS_TOGETHER, cut);
    assertTrue(apart < Rules.amount(Wish.GARMENTS_TOGETHER, shortest) - 1, "" + apart);

    // On a table that has no room for anything longer they stay as they are, and are told.
    wished.please(Map.of(mix, 1.0), steps(20), shortest.lengthMm() - 50);
    assertEquals(maker.made().get(mix).copies(), wished.toCut(mix).copies());
    assertTrue(wished.toCut(mix).lay().cloth().wishes().any());
  }

  @Test
  void nothingIsSpentOnWishesUnlessThatBringsThemNearer() throws IOException {
    String tunic = Files.readString(Path.of("sample-markers/beck-tunic/job.yaml"));
    String wishing = "\n  main:\n    wishes: [garments together, one left-over]\n";
    Path job = Files.writeString(folder.resolve("job.yaml"), tunic.replace("\n  main:\n", wishing));
    for (int n = 1; n <= 3; n++) {
      MarkerMaker maker = maker(job, Spreading.Faces.ALL_UP);
      SizeMix mix = new SizeMix(Map.of("98", n));
      // A search that comes farther than the first comes upon shorter markers.
      maker.make(List.of(mix), steps(n == 3 ? 200 : 5));
      WishedMarkers wished = new WishedMarkers(maker);
      wished.please(Map.of(mix, 1.0), steps(60), Double.POSITIVE_INFINITY);
      Marker shortest = maker.made().get(mix);
      Marker cut = wished.toCut(mix);
      double left = 0;
      for (Wish wish : List.of(Wish.GARMENTS_TOGETHER, Wish.ONE_LEFT_OVER)) {
        left += Rules.amount(wish, cut) / Rules.amount(wish, shortest);
      }
      boolean longer = cut.lengthMm() > shortest.lengthMm();
      assertTrue(!longer || left < 2, n + " garments: " + left);
    }
  }

  @Test
  void aProbeTellsHowFullFoldedPliesLie() throws IOException {
    Path job =
        Files.writeString(
            folder.resolve("job.yaml"),
            "{ellwand: 1, unit: cm, style: {name: Bag, size: M, allowance: 0, pieces: {side: {cut:"
                + " {felt: pair}, outline: [[0, 0], [30, 0], [30, 38], [0, 38]]}}}, cloths: {felt:"
                + " {width: 80, fold: lengthwise fold}}}");
    MarkerMaker maker = maker(job, Spreading.Faces.FOLDED);
    SizeMix four = new SizeMix(Map.of("M", 4));
    AreaLengths byArea = maker.estimate(List.of("M"));
    AreaLengths probed = maker.probed(byArea, SizeMix.one("M"), steps(5));
    // One pair beside the other: 30 cm each, and 38 of the folded 40 cm are used.
    assertEquals(1200, probed.lengthMm(four), 1);
    assertEquals(1200 * 0.95 / 0.75, byArea.lengthMm(four), 1);
  }
}
