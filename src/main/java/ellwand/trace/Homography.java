package ellwand.trace;

import boofcv.factory.geo.FactoryMultiView;
import boofcv.struct.geo.AssociatedPair;
import ellwand.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import org.ejml.data.DMatrixRMaj;

/** The straight-line picture of one plane on another, nine numbers row by row. */
record Homography(DMatrixRMaj matrix) {

  /** Brings the first points onto the second as well as can be; four pairs or more. */
  static Homography between(List<Point> from, List<Point> to) {
    List<AssociatedPair> pairs = new ArrayList<>();
    for (int i = 0; i < from.size(); i++) {
      pairs.add(new AssociatedPair(from.get(i).x(), from.get(i).y(), to.get(i).x(), to.get(i).y()));
    }
    DMatrixRMaj matrix = new DMatrixRMaj(3, 3);
    if (!FactoryMultiView.homographyDLT(true).process(pairs, matrix)) {
      throw new IllegalArgumentException("points on one line");
    }
    return new Homography(matrix);
  }

  Point apply(Point p) {
    double[] h = matrix.data;
    double w = h[6] * p.x() + h[7] * p.y() + h[8];
    return new Point(
        (h[0] * p.x() + h[1] * p.y() + h[2]) / w, (h[3] * p.x() + h[4] * p.y() + h[5]) / w);
  }
}
