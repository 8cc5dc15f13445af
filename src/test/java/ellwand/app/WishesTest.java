package ellwand.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.cloth.Cloth;
import ellwand.cloth.Direction;
import ellwand.cloth.Flaw;
import ellwand.cloth.Fold;
import ellwand.cloth.Wish;
import ellwand.cloth.Wishes;
import ellwand.cutting.CutPiece;
import ellwand.figures.Figures;
import ellwand.figures.Served;
import ellwand.figures.WishText;
import ellwand.file.job.JobReader;
import ellwand.geometry.Point;
import ellwand.job.Job;
import ellwand.lay.Lay;
import ellwand.lay.Marker;
import ellwand.lay.Wanted;
import ellwand.nest.Nester;
import ellwand.nest.Tried;
import ellwand.rule.Check;
import ellwand.rule.Rules;
import ellwand.rule.Trial;
import ellwand.units.Unit;
import ellwand.work.Effort;
import ellwand.work.Request;
import ellwand.work.Seed;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.regex.Pattern;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Wishes are served, at a price that is stated truly, and never against a hard rule. */
class WishesTest {

  private static final Effort SHORT = Effort.ofSteps(400);

  @TempDir private Path folder;

  private static Tried nest(Lay lay, Effort effort) {
    return Nester.nest(lay, lay.cloth().possibleFolds(), Request.of(effort, new Seed(1))).stream()
        .filter(t -> t.pleasing().isPresent() || lay.cloth().possibleFolds().size() == 1)
        .findFirst()
        .orElseThrow();
  }

  private static Lay wishing(Lay lay, List<Wish> asked) {
    Cloth cloth = lay.cloth().wishing(new Wishes(asked, Wishes.USUAL_PRICE));
    return lay.on(cloth);
  }

  private static void assertImproves(Lay lay, Wish wish, Effort effort) {
    Tried tried = nest(wishing(lay, List.of(wish)), effort);
    Marker without = tried.marker().orElseThrow();
    Marker with = tried.pleasing().orElseThrow();
    assertEquals(List.of(), Check.of(with));
    double before = Rules.amount(wish, without);
    double after = Rules.amount(wish, with);
    assertTrue(after < 0.99 * before, wish + ": " + before + " to " + after);
    assertTrue(
        with.clothLengthMm() <= with.lay().cloth().wishes().longestMm(without.clothLengthMm()),
        with.clothLengthMm() + " instead of " + without.clothLengthMm());
  }

  @ParameterizedTest
  @EnumSource(Wish.class)
  void eachIsServedOnTrousersInCorduroy(Wish wish) {
    Job job = JobReader.read(Path.of("sample-markers/mill-trousers/job.yaml"));
    Cloth cloth = job.cloths().get(0).lying(List.of(Fold.OPEN));
    // Sections are searched one by one, so that each has only a part of the effort.
    Effort effort = wish == Wish.STRAIGHT_CUTS ? Effort.ofSteps(1_500) : SHORT;
    assertImproves(JobLays.of(job, cloth), wish, effort);
  }

  /** On some of them: the shortest marker may serve a wish already as well as any. */
  @ParameterizedTest
  @EnumSource(Wish.class)
  void eachIsServedOnRandomStyles(Wish wish) {
    int served = 0;
    for (int seed = 1; seed <= 8; seed++) {
      Tried tried = nest(wishing(random(seed, 2), List.of(wish)), SHORT);
      Marker with = tried.pleasing().orElseThrow();
      assertEquals(List.of(), Check.of(with));
      double before = Rules.amount(wish, tried.marker().orElseThrow());
      served += Rules.amount(wish, with) < 0.99 * before ? 1 : 0;
    }
    assertTrue(served >= 2, wish + " served on " + served + " of 8");
  }

  /** A style of a few pieces, large and small, in several garments. */
  private static Lay random(long seed, int garments) {
    Random random = new Random(seed);
    List<CutPiece> pieces = new ArrayList<>();
    pieces.add(Trial.sloped("front", "pair", 300 + random.nextInt(200), 150 + random.nextInt(100)));
    pieces.add(Trial.rectangle("back", "1", 300 + random.nextInt(200), 200 + random.nextInt(150)));
    pieces.add(Trial.sloped("facing", "1", 200 + random.nextInt(200), 60 + random.nextInt(60)));
    pieces.add(Trial.rectangle("tab", "2", 60 + random.nextInt(40), 40 + random.nextInt(40)));
    List<Wanted> wanted = new ArrayList<>();
    for (int garment = 1; garment <= garments; garment++) {
      for (CutPiece piece : pieces) {
        wanted.addAll(Trial.wanted(piece, "110", garment));
      }
    }
    Fold fold = seed % 2 == 0 ? Fold.LENGTHWISE : Fold.OPEN;
    Direction direction = Direction.values()[random.nextInt(3)];
    return new Lay("smock", Trial.cloth(900, random.nextInt(3) * 2, direction, fold), wanted);
  }

  @Property(tries = 8, shrinking = ShrinkingMode.OFF)
  void noWishBreaksAHardRule(@ForAll long seed) {
    Random random = new Random(seed);
    Lay lay = random(seed, 1 + random.nextInt(3));
    if (random.nextInt(3) == 0) {
      Flaw hole = Flaw.round("hole", new Point(random.nextInt(600), random.nextInt(900)), 20);
      lay = new Lay(lay.style(), lay.cloth().flawed(List.of(hole)), lay.wanted());
    }
    List<Wish> asked = Arrays.stream(Wish.values()).filter(w -> random.nextBoolean()).toList();
    Tried tried = nest(wishing(lay, asked), Effort.ofSteps(60));
    Marker without = tried.marker().orElseThrow();
    assertEquals(asked.isEmpty(), tried.pleasing().isEmpty());
    tried
        .pleasing()
        .ifPresent(
            with -> {
              assertEquals(List.of(), Check.of(with));
              for (Wish wish : asked) {
                double before = Rules.amount(wish, without);
                double after = Rules.amount(wish, with);
                assertTrue(after <= before * (1 + 1e-9), wish + ": " + before + " to " + after);
              }
              assertTrue(
                  with.clothLengthMm()
                      <= with.lay().cloth().wishes().longestMm(without.clothLengthMm()) + 1e-6);
            });
  }

  @Test
  void thePriceIsWhatTheSameJobTakesLessWithoutWishes() throws IOException {
    Figures without = figures("");
    Figures with = figures("    wishes: [straight cuts]\n    wish-price: 25 cm\n");
    Served served = with.wishes();
    assertEquals(List.of(Wish.STRAIGHT_CUTS), served.asked());
    assertEquals(without.lengths().clothMm(), served.clothLengthWithoutMm());
    assertEquals(without.handling(), served.without());
    assertTrue(served.priceMm() > 0 && served.priceMm() <= 250, "" + served.priceMm());
    assertEquals(with.lengths().clothMm() - without.lengths().clothMm(), served.priceMm(), 1e-9);
    assertEquals(
        with.lengths().toBuyMm() - without.lengths().toBuyMm(), served.priceToBuyMm(), 1e-9);
    assertEquals(with.money().cost() - without.money().cost(), served.price(), 1e-9);
    assertTrue(with.handling().straightCuts() > without.handling().straightCuts());
    assertEquals(List.of(), without.wishes().asked());
    assertEquals(0, without.wishes().priceMm());
  }

  @Test
  void straightCutsOfClothFoldedAcrossAreCountedFromItsFold() throws IOException {
    Path path =
        Files.writeString(
            folder.resolve("pouch.yaml"),
            "{ellwand: 1, unit: cm, style: {name: Pouch, size: M, allowance: 0, pieces: {side:"
                + " {cut: {felt: pair}, outline: [[0, 0], [30, 0], [30, 38], [0, 38]]}}}, cloths:"
                + " {felt: {width: 80, fold: crosswise fold, wishes: [straight cuts]}}, order:"
                + " {garments: {M: 6}}}");
    LaidJob made =
        LayRun.make(JobReader.read(path), Unit.CM, Request.of(Effort.ofSteps(100), new Seed(1)));
    String lines = WishText.lines(made.figures().cloths().get(0), Unit.CM).toString();
    assertTrue(lines.contains("at 30.0, 60.0 cm from the fold"), lines);
  }

  @Test
  void eachWishIsToldInPlainWords() throws IOException {
    Figures figures =
        figures(
            "    wishes: [garments together, one left-over, straight cuts, small pieces away from"
                + " the ends]\n");
    String lines = String.join("\n", WishText.lines(figures, Unit.CM));
    String length = "\\d+\\.\\d cm";
    for (String line :
        List.of(
            "garments together: pieces lie "
                + length
                + " from the middle of their garment on average",
            "one left-over: the largest left-over, \\d+ cm², is \\d+ % of all that is left over",
            "small pieces away from the ends: (none|\\d+) of \\d+ small pieces lies? within 10\\.0"
                + " cm of an end",
            "; (the same )?without the wishes")) {
      assertTrue(Pattern.compile(line).matcher(lines).find(), line + " in " + lines);
    }
  }

  private Figures figures(String wishes) throws IOException {
    String trousers = Files.readString(Path.of("sample-markers/mill-trousers/job.yaml"));
    Path path =
        Files.writeString(
            folder.resolve("job.yaml"),
            trousers
                .replace("cloths:\n  corduroy:\n", "cloths:\n  corduroy:\n" + wishes)
                .replaceAll("shop-step: 10", "shop-step: 1"));
    Request request = Request.of(SHORT, new Seed(1));
    LaidJob made = LayRun.make(JobReader.read(path), Unit.CM, request);
    return made.figures().cloths().get(0);
  }
}
