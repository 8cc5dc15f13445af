package ellwand.file.job;

import ellwand.pattern.Design;
import java.util.Random;

/** Designs made at random, for tests of what writes them. */
public final class AnyDesign {

  private AnyDesign() {}

  public static Design of(Random random) {
    return StyleWriterTest.design(random);
  }
}
