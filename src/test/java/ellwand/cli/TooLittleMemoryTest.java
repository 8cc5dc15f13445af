package ellwand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import ellwand.work.TooLittleMemory;
import org.junit.jupiter.api.Test;

/** What is said where memory runs out. */
class TooLittleMemoryTest {

  private static final OutOfMemoryError SPENT = new OutOfMemoryError("Java heap space");

  @Test
  void saysHowMuchIsNeededWhereThatIsKnown() {
    assertEquals(
        "There is not enough memory: all 64 MB that Java may use are taken; the 3 different shapes"
            + " to be laid, which meet in 6 pairs, take about 400 MB. Lay fewer garments at once,"
            + " or give it more: java -Xmx464m -jar ellwand.jar ... Nothing was written.",
        Main.tooLittle(
            new TooLittleMemory(
                "the 3 different shapes to be laid, which meet in 6 pairs,", 400L << 20, SPENT),
            64L << 20));
  }

  @Test
  void asksForTwiceAsMuchWhereItIsNot() {
    assertEquals(
        "There is not enough memory: all 64 MB that Java may use are taken. Lay fewer garments at"
            + " once, or give it more: java -Xmx128m -jar ellwand.jar ... Nothing was written.",
        Main.tooLittle(SPENT, 64L << 20));
  }
}
