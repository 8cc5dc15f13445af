package ellwand.figures;

import ellwand.job.Wear;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Sentences on safety for whoever cuts and sews. They name rules; they do not replace them. */
public final class Safety {

  private static final String BLADES =
      "Close a rotary cutter whenever it is down and cut away from your body; a powered knife needs"
          + " its guard down and a chain-mail glove. Count pins and needles back.";

  private static final String CORDS =
      "Children's clothes: no cords or drawstrings at hood or neck up to 7 years, and limits"
          + " elsewhere (EN 14682; in the US 16 CFR 1120 and ASTM F1816).";

  private static final String SMALL_PARTS =
      "Children's clothes: snaps, buttons and other small parts must hold fast (in the US 16 CFR"
          + " 1501).";

  private static final String NIGHTWEAR =
      "Nightwear must be slow to burn (EN 14878; in the US 16 CFR 1615 and 1616 for children's):"
          + " ask before you choose cloth and trim.";

  private static final String LOCAL = "Local rules and licensed practice decide.";

  private Safety() {}

  /** Those on blades always; the others for what the garment is for. */
  public static List<String> of(Set<Wear> wear) {
    List<String> cautions = new ArrayList<>();
    cautions.add(BLADES);
    if (wear.contains(Wear.CHILDREN)) {
      cautions.add(CORDS + " " + LOCAL);
      cautions.add(SMALL_PARTS + " " + LOCAL);
    }
    if (wear.contains(Wear.NIGHTWEAR)) {
      cautions.add(NIGHTWEAR + " " + LOCAL);
    }
    return List.copyOf(cautions);
  }
}
