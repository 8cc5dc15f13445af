package ellwand.nest.kernel;

import java.util.ArrayList;
import java.util.List;

/** Places of all copies on a strip of a certain length; not to be changed once made. */
final class Snapshot {

  final double length;
  final int[] form;
  final double[] x;
  final double[] y;

  Snapshot(double length, int[] form, double[] x, double[] y) {
    this.length = length;
    this.form = form;
    this.x = x;
    this.y = y;
  }

  /** The same places on a strip as long as they ask for. */
  Snapshot trimmed(Plan plan) {
    double end = 0;
    for (int i = 0; i < x.length; i++) {
      end = Math.max(end, x[i] + plan.kinds[plan.kind[i]].reach[form[i]]);
    }
    return new Snapshot(end, form, x, y);
  }

  Layout layout(Plan plan) {
    List<Layout.StripPose> poses = new ArrayList<>(x.length);
    for (int i = 0; i < x.length; i++) {
      int s = plan.kinds[plan.kind[i]].shape[form[i]];
      poses.add(new Layout.StripPose(form[i], x[i] - plan.centreX[s], y[i] - plan.centreY[s]));
    }
    return new Layout(poses, length);
  }

  static Snapshot of(Layout layout, Plan plan) {
    int n = layout.poses().size();
    Snapshot s = new Snapshot(layout.length(), new int[n], new double[n], new double[n]);
    for (int i = 0; i < n; i++) {
      Layout.StripPose pose = layout.poses().get(i);
      int shape = plan.kinds[plan.kind[i]].shape[pose.form()];
      s.form[i] = pose.form();
      s.x[i] = pose.x() + plan.centreX[shape];
      s.y[i] = pose.y() + plan.centreY[shape];
    }
    return s;
  }
}
