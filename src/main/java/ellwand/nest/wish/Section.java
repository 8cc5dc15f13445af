package ellwand.nest.wish;

import ellwand.cloth.Band;
import ellwand.geometry.Box;
import ellwand.nest.kernel.Layout;
import ellwand.nest.kernel.Strip;
import ellwand.nest.kernel.StripForm;
import ellwand.nest.kernel.StripSearch;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Copies that lie together on a part of a stretch, from side to side, so that a straight cut parts
 * them from the rest.
 *
 * @param seats indices into the stretch's seats
 * @param poses one for each, from the section's own beginning
 * @param lengthMm to the farthest end of a copy
 * @param spared a rectangle that was kept free among them
 */
record Section(
    List<Integer> seats, List<Layout.StripPose> poses, double lengthMm, Optional<Spared> spared) {

  /**
   * A rectangle to be kept free.
   *
   * @param lowY of the band it may lie in, mm
   * @param highY of that band
   * @param lengthMm along the cloth
   * @param widthMm across it, no more than the band is wide
   * @param x where the search for its place begins
   * @param y where the search for its place begins
   */
  record Spared(double lowY, double highY, double lengthMm, double widthMm, double x, double y) {

    /** A free rectangle made larger about its middle, as far as its band and section have room. */
    static Spared grown(
        Box free, Band band, double gapMm, double longer, double wider, double sectionMm) {
      // Copies carry half the gap about them.
      double length = Math.min(sectionMm, Math.max(1, free.length() - gapMm) * longer);
      double width = Math.min(band.widthMm(), Math.max(1, free.width() - gapMm) * wider);
      double x = free.centre().x() - length / 2;
      double y = free.centre().y() - width / 2;
      return new Spared(
          band.lowY(),
          band.highY(),
          length,
          width,
          Math.max(0, Math.min(sectionMm - length, x)),
          Math.max(band.lowY(), Math.min(band.highY() - width, y)));
    }
  }

  Section {
    seats = List.copyOf(seats);
    poses = List.copyOf(poses);
  }

  /** All of a stretch. */
  static Section whole(Layout layout) {
    List<Integer> seats = new ArrayList<>();
    for (int i = 0; i < layout.poses().size(); i++) {
      seats.add(i);
    }
    return new Section(seats, layout.poses(), layout.length(), Optional.empty());
  }

  /** The same places for other copies of the same kinds, in the order of their kinds. */
  Section with(List<Integer> others) {
    return new Section(others, poses, lengthMm, spared);
  }

  /** Sections one after another as a layout of the stretch. */
  static Layout joined(List<Section> sections, double gapMm) {
    TreeMap<Integer, Layout.StripPose> bySeat = new TreeMap<>();
    double from = 0;
    double end = 0;
    for (Section section : sections) {
      for (int i = 0; i < section.seats.size(); i++) {
        Layout.StripPose pose = section.poses.get(i);
        bySeat.put(
            section.seats.get(i), new Layout.StripPose(pose.form(), from + pose.x(), pose.y()));
      }
      end = from + section.lengthMm;
      from = end + gapMm;
    }
    return new Layout(List.copyOf(bySeat.values()), end);
  }

  /** The copies by the middle of their places along the cloth. */
  List<Integer> byX(Strip strip) {
    List<Integer> order = new ArrayList<>();
    for (int i = 0; i < seats.size(); i++) {
      order.add(i);
    }
    order.sort(Comparator.comparingDouble(i -> middleMm(strip, i)));
    return order;
  }

  private double middleMm(Strip strip, int i) {
    return (beginMm(strip, i) + endMm(strip, i)) / 2;
  }

  /** Where the i-th copy begins along the section, mm. */
  double beginMm(Strip strip, int i) {
    return poses.get(i).x() - form(strip, i).left();
  }

  /** Where the i-th copy ends along the section, mm. */
  double endMm(Strip strip, int i) {
    return poses.get(i).x() + form(strip, i).right();
  }

  /** Seats of the copies with these numbers. */
  List<Integer> seats(List<Integer> numbers) {
    return numbers.stream().map(seats::get).toList();
  }

  /** What is asked of a section of these copies alone, which begins as they lie. */
  SectionLayer.Asked part(StripSearch whole, List<Integer> numbers) {
    double from = numbers.stream().mapToDouble(i -> beginMm(whole.strip(), i)).min().orElseThrow();
    List<Layout.StripPose> moved =
        numbers.stream()
            .map(poses::get)
            .map(p -> new Layout.StripPose(p.form(), p.x() - from, p.y()))
            .toList();
    return SectionLayer.Asked.plain(whole, seats(numbers), moved);
  }

  private StripForm form(Strip strip, int i) {
    return strip.copies().get(seats.get(i)).get(poses.get(i).form());
  }
}
