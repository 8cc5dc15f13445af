package ellwand.job;

/** What a garment is for, where rules beyond the cutting table ask after it. */
public enum Wear {
  CHILDREN,
  NIGHTWEAR
}
