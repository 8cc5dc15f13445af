package ellwand.order;

import java.util.Set;

/** How long markers are, in mm and without end loss: estimated, or true where they were made. */
public interface MarkerLengths {

  /** The sizes that it knows. */
  Set<String> sizes();

  /** Length of a marker; always the same for the same mix, and more than 0. */
  double lengthMm(SizeMix mix);

  /**
   * What a garment of the size adds to a marker at the very least, so that no marker is shorter
   * than the sum over its garments. Lower bounds rest on it; area over marker width always does.
   */
  double leastMm(String size);
}
