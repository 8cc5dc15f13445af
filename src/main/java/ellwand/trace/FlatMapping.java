package ellwand.trace;

import ellwand.geometry.Point;

/**
 * Of a picture seen from straight above, as a scan or a straightened photo is.
 *
 * @param corner where the centre of the first pixel, at the top left, lies on the plane, mm
 * @param pixelsPerMm more than 0
 * @param errorMm the same everywhere
 */
public record FlatMapping(Point corner, double pixelsPerMm, double errorMm) implements Mapping {

  @Override
  public Point mmAt(Point pixel) {
    return new Point(corner.x() + pixel.x() / pixelsPerMm, corner.y() - pixel.y() / pixelsPerMm);
  }

  @Override
  public Point pixelAt(Point mm) {
    return new Point((mm.x() - corner.x()) * pixelsPerMm, (corner.y() - mm.y()) * pixelsPerMm);
  }

  @Override
  public double errorMm(Point mm) {
    return errorMm;
  }
}
