package ellwand.draw.sheet;

import java.util.Locale;

/**
 * A colour on screen and paper.
 *
 * @param rgb red, green and blue as 0xRRGGBB, sRGB
 */
public record Colour(int rgb) {

  public static final Colour WHITE = new Colour(0xFFFFFF);
  public static final Colour INK = new Colour(0x1B1B1B);
  public static final Colour GREY = new Colour(0x595959);
  public static final Colour PALE = new Colour(0xBDBDBD);

  int red() {
    return rgb >> 16 & 255;
  }

  int green() {
    return rgb >> 8 & 255;
  }

  int blue() {
    return rgb & 255;
  }

  /** As in SVG: {@code #1b1b1b}. */
  String hex() {
    return String.format(Locale.ROOT, "#%06x", rgb);
  }

  /** Mixed with white; 1 leaves the colour, 0 leaves white. */
  public Colour tint(double share) {
    return new Colour(
        mixed(red(), share) << 16 | mixed(green(), share) << 8 | mixed(blue(), share));
  }

  /** Mixed with black; 1 leaves the colour, 0 leaves black. */
  Colour shade(double share) {
    return new Colour(
        (int) Math.round(red() * share) << 16
            | (int) Math.round(green() * share) << 8
            | (int) Math.round(blue() * share));
  }

  private static int mixed(int channel, double share) {
    return (int) Math.round(255 + (channel - 255) * share);
  }

  /**
   * Contrast ratio, 1 to 21, by the formula of WCAG 2.2 ("contrast ratio", "relative luminance").
   */
  double contrast(Colour other) {
    double a = luminance() + 0.05;
    double b = other.luminance() + 0.05;
    return Math.max(a, b) / Math.min(a, b);
  }

  private double luminance() {
    return 0.2126 * linear(red()) + 0.7152 * linear(green()) + 0.0722 * linear(blue());
  }

  private static double linear(int channel) {
    double c = channel / 255.0;
    return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
  }
}
