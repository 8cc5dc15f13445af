package ellwand;

/** The plainest job: squares of 20 cm, cut once for each garment from open cloth 90 cm wide. */
public final class Scarf {

  private Scarf() {}

  /** As YAML. */
  public static String job(int garments) {
    return """
    ellwand: 1
    unit: cm
    style:
      name: Scarf
      allowance: 0
      pieces:
        square:
          cut: {main: 1}
          outline: [[0, 0], [20, 0], [20, 20], [0, 20]]
    cloths:
      main: {width: 90, fold: open}
    order: {garments: %d}
    """
        .formatted(garments);
  }
}
