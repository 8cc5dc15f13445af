package ellwand.nest.wish;

import ellwand.nest.kernel.Layout;
import ellwand.nest.kernel.Listener;
import ellwand.nest.kernel.NoFit;
import ellwand.nest.kernel.Outcome;
import ellwand.nest.kernel.Shape;
import ellwand.nest.kernel.Strip;
import ellwand.nest.kernel.StripForm;
import ellwand.nest.kernel.StripSearch;
import ellwand.nest.wish.Section.Spared;
import ellwand.work.Request;
import ellwand.work.Spending;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Lays some copies of a stretch on a part of it that is their own, with the kernel, and keeps
 * account of the effort for all of that.
 */
public final class SectionLayer {

  private final NoFit noFit;
  private final Request request;
  private final Spending spending;
  private int searches;

  /**
   * Ready to begin; time runs from here.
   *
   * @param request with the effort for everything that is laid; sections are laid on one thread
   */
  public SectionLayer(NoFit noFit, Request request) {
    this.noFit = noFit;
    this.request = request.onThreads(1);
    this.spending = new Spending(request.effort());
  }

  /** Whether less than so much of the effort is used up, 0 to 1, and nobody wants a stop. */
  boolean goesOn(double until) {
    return !request.stop().wanted() && spending.spent() < until;
  }

  /** Until when the next of several equal parts goes on that end then, 0 to 1. */
  double part(double until, int parts) {
    double spent = spending.spent();
    return spent + (until - spent) / parts;
  }

  /**
   * What is asked of a section.
   *
   * @param whole the search on the whole stretch
   * @param seats the copies to lay
   * @param poses where to begin, one for each; empty to begin anew
   * @param spared a rectangle to keep free
   * @param offEnd how far small copies keep off its ends
   */
  record Asked(
      StripSearch whole,
      List<Integer> seats,
      List<Layout.StripPose> poses,
      Optional<Spared> spared,
      OffEnd offEnd) {

    static Asked plain(StripSearch whole, List<Integer> seats, List<Layout.StripPose> poses) {
      return new Asked(whole, seats, poses, Optional.empty(), OffEnd.NONE);
    }

    private Strip strip() {
      return whole.strip();
    }
  }

  /**
   * How far small copies keep off the ends.
   *
   * @param small which copies of the strip are small
   * @param lowMm off the section's beginning
   * @param highMm off its end
   */
  record OffEnd(List<Boolean> small, double lowMm, double highMm) {
    static final OffEnd NONE = new OffEnd(List.of(), 0, 0);

    boolean concerns(int seat) {
      return lowMm + highMm > 0 && small.get(seat);
    }
  }

  /** A length that no section of these copies can go below, mm. */
  static double leastMm(StripSearch whole, List<Integer> seats) {
    return part(Asked.plain(whole, seats, List.of())).leastLength();
  }

  /**
   * Searches for a short section; none if a stop comes before there is any.
   *
   * @param until how much of the effort may be used up then, 0 to 1
   */
  Optional<Section> lay(Asked asked, double until) {
    Strip part = part(asked);
    Optional<Layout> start =
        asked.poses().isEmpty() ? Optional.empty() : Optional.of(start(asked, part));
    StripSearch search =
        asked.spared().isPresent()
            ? new StripSearch(part, noFit)
            : new StripSearch(part, asked.whole());
    Outcome outcome =
        search.run(
            start,
            request.with(spending.until(until)).with(request.seed().child(searches++)),
            Listener.NONE);
    spending.use(outcome.evaluations() / (double) StripSearch.STEP);
    return outcome.layout().map(layout -> section(asked, layout));
  }

  private static Section section(Asked asked, Layout layout) {
    List<Layout.StripPose> poses = layout.poses().subList(0, asked.seats().size());
    double length = 0;
    for (int i = 0; i < poses.size(); i++) {
      List<StripForm> forms = asked.strip().copies().get(asked.seats().get(i));
      length = Math.max(length, poses.get(i).x() + forms.get(poses.get(i).form()).right());
    }
    return new Section(asked.seats(), poses, length, asked.spared());
  }

  private static Strip part(Asked asked) {
    // Copies that may be exchanged share one list of forms, here as there.
    Map<List<StripForm>, List<StripForm>> known = new IdentityHashMap<>();
    List<List<StripForm>> copies = new ArrayList<>();
    for (int seat : asked.seats()) {
      List<StripForm> forms = asked.strip().copies().get(seat);
      copies.add(
          asked.offEnd().concerns(seat)
              ? known.computeIfAbsent(
                  forms, fs -> fs.stream().map(f -> offEnd(f, asked.offEnd())).toList())
              : forms);
    }
    List<Shape> shapes = new ArrayList<>(asked.strip().shapes());
    asked
        .spared()
        .ifPresent(
            s -> {
              Shape free =
                  new Shape(0, 0, s.lengthMm(), 0, s.lengthMm(), s.widthMm(), 0, s.widthMm());
              // One as wide as its band may be wider by rounding.
              double highY = Math.max(s.lowY(), s.highY() - s.widthMm());
              copies.add(List.of(StripForm.free(shapes.size(), s.lowY(), highY, 0, s.lengthMm())));
              shapes.add(free);
            });
    return new Strip(shapes, copies, asked.strip().obstacles(), Double.POSITIVE_INFINITY);
  }

  private static StripForm offEnd(StripForm form, OffEnd off) {
    return new StripForm(
        form.shape(),
        form.yLo(),
        form.yHi(),
        form.left() + off.lowMm(),
        form.right() + off.highMm(),
        form.alongX(),
        form.alongY());
  }

  /** Where to begin: no copy before the section, though some may overlap. */
  private static Layout start(Asked asked, Strip part) {
    List<Layout.StripPose> poses = new ArrayList<>();
    double end = 0;
    for (int i = 0; i < asked.poses().size(); i++) {
      Layout.StripPose pose = asked.poses().get(i);
      StripForm form = part.copies().get(i).get(pose.form());
      double x = form.alongX().step() == 0 ? Math.max(form.left(), pose.x()) : pose.x();
      poses.add(new Layout.StripPose(pose.form(), x, pose.y()));
      end = Math.max(end, x + form.right());
    }
    if (asked.spared().isPresent()) {
      Spared spared = asked.spared().get();
      poses.add(new Layout.StripPose(0, spared.x(), spared.y()));
      end = Math.max(end, spared.x() + spared.lengthMm());
    }
    return new Layout(poses, end);
  }
}
