package ellwand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What {@code check} says of a job that can be read, and of one that cannot be laid. */
class CheckJobTest {

  private static final String JOB =
      """
      ellwand: 1
      unit: cm
      style:
        name: tabard
        size: M
        allowance: 1
        seams:
          - [bib.bottom, leg.waist]
        pieces:
          bib:
            cut: {main: 1}
            outline: [{point: a, at: [0, 0]}, [20, 0], [20, 30], {point: b, at: [0, 30]}]
            edges: {bottom: {from: b, to: a}}
            lines: {pocket: {path: [[5, 5], [5, 20]]}}
          leg:
            cut: {main: 1}
            outline: [[0, 0], {point: a, at: [60, 0]}, {point: b, at: [60, 30]}, [0, 30]]
            edges: {waist: {from: a, to: b}}
      cloths:
        main: {width: 140}
      """;

  @TempDir Path folder;

  private Ran check(String from, String to) throws IOException {
    assertTrue(JOB.contains(from), from);
    return Ran.of("check", Files.writeString(folder.resolve("job.yaml"), JOB.replace(from, to)));
  }

  private void looks(String from, String to, String caution) throws IOException {
    Ran ran = check(from, to);
    assertEquals(0, ran.code(), ran.err());
    assertEquals(
        caution + "\n" + folder.resolve("job.yaml") + " can be laid, with one thing to look at.\n",
        ran.out());
  }

  @Test
  void nothingIsWrongWhereNothingIsToBeLookedAt() throws IOException {
    Ran ran = check("ellwand: 1", "ellwand: 1");
    assertEquals("Nothing wrong with " + folder.resolve("job.yaml") + ".\n", ran.out());
  }

  @Test
  void aSeamThatDoesNotMatchIsAThingToLookAt() throws IOException {
    looks(
        "{point: b, at: [0, 30]}",
        "{point: b, at: [0, 28]}",
        "size M: bib.bottom is 2.00 cm too short for leg.waist.");
  }

  /** The bib is 20 by 30 cm. */
  @Test
  void anAllowanceWiderThanItsPieceIsAThingToLookAt() throws IOException {
    looks(
        "{from: b, to: a}",
        "{from: b, to: a, allowance: 21}",
        "bib, edge bottom: its allowance of 21.0 cm is wider than the finished piece, which is 20.0"
            + " cm.");
    assertTrue(
        check("{from: b, to: a}", "{from: b, to: a, allowance: 20}")
            .out()
            .startsWith("Nothing wrong"));
  }

  /** The bib is 18 by 30 cm in S, 20 in M, and 22 in L, where all is well. */
  @Test
  void whatIsSoInSomeSizesSaysInWhich() throws IOException {
    String graded =
        JOB.replace("{from: b, to: a}", "{from: b, to: a, allowance: 21}")
            .replace("[20, 0], [20, 30]", "{point: c, at: [20, 0]}, {point: d, at: [20, 30]}")
            .replace(
                "cloths:",
                "sizes: {names: [S, M, L], grade: {bib: {a: [-2, 0], b: [-2, 0]}}}\n"
                    + "order: {garments: {S: 1, M: 1, L: 1}}\ncloths:");
    Ran ran = Ran.of("check", Files.writeString(folder.resolve("job.yaml"), graded));
    assertEquals(0, ran.code(), ran.err());
    String wider = "bib, edge bottom: its allowance of 21.0 cm is wider than the finished piece,";
    assertTrue(
        ran.out()
            .startsWith(
                "size S, %1$s which is 18.0 cm.\nsize M, %1$s which is 20.0 cm.\n"
                    .formatted(wider)),
        ran.out());
  }

  @Test
  void aSlipOfTheUnitIsAThingToLookAt() throws IOException {
    looks(
        "{width: 140}",
        "{width: 90 m}",
        "cloth main is 9000.0 cm wide: see that the unit is right.");
    looks(
        "{width: 140}",
        "{width: 140, gap: 20}",
        "the gap between pieces of cloth main is 20.0 cm: see that the unit is right.");
    assertTrue(check("{width: 140}", "{width: 500, gap: 10}").out().startsWith("Nothing wrong"));
  }

  /** The cutting line is 1 cm outside 20 by 30 cm. */
  @Test
  void anInnerLineOutsideItsPieceIsAThingToLookAt() throws IOException {
    looks("[5, 20]]", "[5, 32]]", "bib, line pocket: it runs outside the piece.");
    assertTrue(check("[5, 20]]", "[5, 31]]").out().startsWith("Nothing wrong"));
  }

  @Test
  void sizesWithoutAGradeAreAThingToLookAt() throws IOException {
    looks(
        "cloths:",
        "sizes: {names: [S, M, L]}\ncloths:",
        "sizes S, M, L are all drawn alike, as in M: write under grade: of sizes: how points move"
            + " between them.");
  }

  /** Points a and b of the bib are all that it has with a name, so that the others go with them. */
  @Test
  void aGradeThatOnlyShiftsAPieceIsAThingToLookAt() throws IOException {
    String alike =
        "bib: its grade moves every point alike, so that it is the same in sizes S, M, L: name the"
            + " points that stay or move otherwise, or take bib out of grade:.";
    String sizes = "sizes: {names: [S, M, L], grade: {bib: {a: %s, b: %s}}}\ncloths:";
    looks("cloths:", sizes.formatted("[0.1, 2]", "[0.1, 2]"), alike);
    looks("cloths:", sizes.formatted("[0, 1]", "{S: [0, -1], L: [0, 1]}"), alike);
    for (String b : List.of("[0, 1.9]", "{S: [0, -1.9], L: [0, 2]}")) {
      String out = check("cloths:", sizes.formatted("[0, 2]", b)).out();
      assertFalse(out.contains("alike"), out);
    }
    String still = check("cloths:", sizes.formatted("[0, 0]", "[0, 0]")).out();
    assertTrue(still.startsWith("Nothing wrong"), still);
    String pocket = "[0.1, 2], pocket: [0, 0]";
    assertTrue(
        check("cloths:", sizes.formatted("[0.1, 2]", pocket)).out().startsWith("Nothing wrong"));
  }

  /** With their allowances both are 32 cm wide, and the bib is named first. */
  @Test
  void aPieceWiderThanEveryWayItsClothCanLieIsRefused() throws IOException {
    Ran ran = check("{width: 140}", "{width: 30, fold: [open, lengthwise fold]}");
    assertEquals(2, ran.code());
    assertEquals("", ran.out());
    assertTrue(
        ran.err()
            .contains(
                "piece bib: in size M it lies 32.0 cm across, but cloth main has only 30.0 cm"),
        ran.err());
    assertEquals(0, check("{width: 140}", "{width: 32, fold: [open, lengthwise fold]}").code());
  }

  /** A stripe every 40 cm; the leg's corner lies 1 cm from its cutting line, 32 cm wide in all. */
  @Test
  void aPieceWithoutRoomInTheRepeatIsRefused() throws IOException {
    String place = "edges: {waist: {from: a, to: b}}\n      place: {at: waist @ 0, across: 0}";
    String cloth = "main: {width: 40, repeat: {across: 40, start: {across: START}}}";
    Ran ran =
        Ran.of(
            "check",
            Files.writeString(
                folder.resolve("job.yaml"),
                JOB.replace("edges: {waist: {from: a, to: b}}", place)
                    .replace("main: {width: 140}", cloth.replace("START", "20"))));
    assertEquals(2, ran.code(), ran.out());
    assertTrue(
        ran.err().contains("piece leg: in size M it has no room where place: and match:"),
        ran.err());
    Ran room =
        Ran.of(
            "check",
            Files.writeString(
                folder.resolve("job.yaml"),
                JOB.replace("edges: {waist: {from: a, to: b}}", place)
                    .replace("main: {width: 140}", cloth.replace("START", "5"))));
    assertEquals(0, room.code(), room.err());
  }

  @Test
  void anOrderIsReadAsOne() throws IOException {
    String order =
        """
        order:
          max-plies: 10
          max-garments: 2
          colours:
            red: {M: 4}
        """;
    assertEquals(0, check("cloths:", order + "cloths:").code());
    Ran ran = check("cloths:", order.replace("{M: 4}", "{XL: 4}") + "cloths:");
    assertEquals(2, ran.code());
    assertEquals("", ran.out());
    assertEquals(
        folder.resolve("job.yaml")
            + ":23: size XL is ordered, but nothing is known of it. Use one of M.\n",
        ran.err());
    assertEquals(0, Ran.of("check", "sample-markers/published-orders/five-sizes.yaml").code());
  }

  @Test
  void aJobIsNotHeldAgainstAnother() throws IOException {
    Path job = Files.writeString(folder.resolve("job.yaml"), JOB);
    Ran ran = Ran.of("check", job, "--job", "other.yaml");
    assertEquals(2, ran.code());
    assertTrue(ran.err().startsWith("--job goes with a marker"), ran.err());
  }
}
