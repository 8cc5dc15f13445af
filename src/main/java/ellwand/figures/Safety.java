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
      "Children's clothes, EU and UK (EN 14682): up to 7 years or 134 cm no cords or drawstrings in"
          + " the hood, head or neck area, and none tied behind the neck; from 7 to 14 years no"
          + " drawstrings with free ends there.";

  private static final String CORDS_US =
      "Children's upper outerwear, US (16 CFR 1120 with ASTM F1816): no drawstrings at hood or neck"
          + " in sizes 2T to 12; at waist and bottom in sizes 2T to 16 at most 75 mm (3 in) outside"
          + " the channel at full width, without toggles or knots, sewn fast at the middle of the"
          + " back.";

  private static final String ATTACHED =
      "Children's clothes: buttons, press fasteners and other attached parts must hold fast (CEN/TS"
          + " 17394-1; buttons EN 17394-2, metal press fasteners CEN/TS 17394-3).";

  private static final String NIGHTWEAR =
      "Children's nightwear: ask how cloth and trim burn before you choose them (EN 14878; in the"
          + " US 16 CFR 1615 and 1616).";

  private static final String LAW = "The law where you sell and licensed practice decide.";

  private Safety() {}

  /** Those that concern what is bought besides cloth. */
  public static List<String> onTrims(Set<Wear> wear) {
    List<String> all = of(wear);
    return all.subList(1, all.size());
  }

  /** Those on blades always; the others on children's clothes, and on nightwear among them. */
  public static List<String> of(Set<Wear> wear) {
    List<String> cautions = new ArrayList<>();
    cautions.add(BLADES);
    if (wear.contains(Wear.CHILDREN)) {
      cautions.add(CORDS);
      cautions.add(CORDS_US);
      cautions.add(ATTACHED);
      if (wear.contains(Wear.NIGHTWEAR)) {
        cautions.add(NIGHTWEAR);
      }
      cautions.add(LAW);
    }
    return List.copyOf(cautions);
  }
}
