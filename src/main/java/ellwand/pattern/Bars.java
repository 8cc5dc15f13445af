package ellwand.pattern;

/** Which bars of a repeat are meant. */
public enum Bars {
  /** Those that lie across the cloth, one after another along it. */
  ACROSS,
  /** Those that lie along the cloth, side by side. */
  ALONG,
  BOTH
}
