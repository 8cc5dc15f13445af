package ellwand.nest.kernel;

import java.util.List;

/**
 * Where every copy lies, in the strip's order of copies.
 *
 * @param poses one for each copy
 * @param length the furthest end of a copy
 */
public record Layout(List<StripPose> poses, double length) {

  public Layout {
    poses = List.copyOf(poses);
    if (poses.isEmpty() || !(length > 0)) {
      throw new IllegalArgumentException("a layout needs a copy and a length");
    }
  }

  /**
   * @param form index into the copy's own list of forms
   * @param x place of the shape's origin
   * @param y place of the shape's origin
   */
  public record StripPose(int form, double x, double y) {}

  /** The same farther along. */
  public Layout shifted(double mm) {
    return mm == 0
        ? this
        : new Layout(
            poses.stream().map(p -> new StripPose(p.form(), p.x() + mm, p.y())).toList(),
            length + mm);
  }
}
