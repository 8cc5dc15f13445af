package ellwand.draw.sheet;

import ellwand.geometry.Box;
import java.util.List;

/**
 * What one file or page shows, true to size in mm, y up.
 *
 * @param frame all of it lies within
 */
public record Drawing(String title, Box frame, List<Item> items) {

  public Drawing {
    title = Lettering.clean(title);
    items = List.copyOf(items);
  }

  /** With white all round. */
  public Drawing withMargin(double mm) {
    return new Drawing(title, frame.grown(mm), items);
  }
}
