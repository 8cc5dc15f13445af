package ellwand.cli;

import ellwand.units.Length;
import ellwand.units.Unit;
import ellwand.work.Effort;
import ellwand.work.Progress;
import java.io.PrintWriter;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import me.tongfei.progressbar.ProgressBarStyle;

/**
 * What the user sees on stderr while the program searches: a bar for each cloth, or plain lines,
 * the first as soon as there is a marker and more as better ones are found.
 */
final class Console implements Progress, AutoCloseable {

  private static final int BAR_STEPS = 1000;
  private static final int TICK_MILLIS = 200;

  /** A line is worth so much of a marker's length. */
  private static final double WORTH_A_LINE = 0.04;

  private final PrintWriter err;
  private final Effort effort;
  private final Unit unit;
  private final boolean terminal = System.console() != null;
  private final ScheduledExecutorService ticker =
      Executors.newSingleThreadScheduledExecutor(
          task -> {
            Thread thread = new Thread(task, "ticker");
            thread.setDaemon(true);
            return thread;
          });
  private ProgressBar bar;
  private String what = "";

  /** The length that was told last, mm. */
  private double toldMm;

  /** What was not told yet, since it is little better. */
  private String untold = "";

  private long barStartNanos;

  private Console(PrintWriter err, Effort effort, Unit unit) {
    this.err = err;
    this.effort = effort;
    this.unit = unit;
  }

  static Console open(PrintWriter err, Effort effort, Unit unit) {
    Console console = new Console(err, effort, unit);
    if (console.terminal && !effort.repeats()) {
      console.ticker.scheduleAtFixedRate(
          console::tick, TICK_MILLIS, TICK_MILLIS, TimeUnit.MILLISECONDS);
    }
    return console;
  }

  @Override
  public synchronized void hear(News news) {
    if (news instanceof Mishap mishap) {
      next("");
      err.printf(
          "%s: %s failed by a bug in Ellwand, and was left out. Please report these lines with the"
              + " job file:%n",
          mishap.cloth(), mishap.part());
      mishap.why().printStackTrace(err);
      err.flush();
      return;
    }
    if (news instanceof Ended ended) {
      next("");
      say(
          "%s: searched for %.1f s, the last gain came after %.1f s"
              .formatted(ended.cloth(), ended.seconds(), ended.gainSeconds()));
      return;
    }
    String best = best(news);
    String heard = PlainText.of(what(news));
    if (!what.equals(heard)) {
      next(heard);
      if (terminal) {
        startBar();
      } else {
        say(what + ": first " + (news instanceof Shorter ? "marker " : "plan ") + best);
      }
      toldMm = news instanceof Shorter marker ? marker.clothMm() : 0;
    } else if (!terminal && news instanceof Shorter marker && marker.clothMm() < toldMm) {
      untold = what + ": " + best;
      if (marker.clothMm() < toldMm * (1 - WORTH_A_LINE)) {
        toldMm = marker.clothMm();
        sayUntold();
      }
    }
    if (bar != null) {
      if (effort.repeats()) {
        bar.stepTo(Math.round(news.share() * BAR_STEPS));
      }
      bar.setExtraMessage("best " + best);
    }
  }

  /** Goes on to something else. */
  private void next(String other) {
    closeBar();
    sayUntold();
    what = other;
  }

  private void sayUntold() {
    if (!untold.isEmpty()) {
      say(untold);
      untold = "";
    }
  }

  private void say(String line) {
    err.println(line);
    err.flush();
  }

  /** The cloth or the stage that is worked on. */
  private static String what(News news) {
    if (news instanceof Shorter marker) {
      return marker.cloth() + marker.mix().map(mix -> ", marker of " + mix).orElse("");
    }
    return (news.cloth().isEmpty() ? "" : news.cloth() + ", ") + "cut-order plan";
  }

  private String best(News news) {
    if (news instanceof Shorter marker) {
      return new Length(marker.clothMm()).show(unit)
          + marker.cost().map(cost -> ", " + cost).orElse("");
    }
    Cheaper plan = (Cheaper) news;
    String lays = plan.lays() == 1 ? "1 lay" : plan.lays() + " lays";
    return plan.cost() > 0
        ? "%s, cost %.2f".formatted(lays, plan.cost())
        : lays + ", cloth " + new Length(plan.clothMm()).show(unit);
  }

  private void startBar() {
    barStartNanos = System.nanoTime();
    bar =
        new ProgressBarBuilder()
            .setTaskName(what)
            .setInitialMax(BAR_STEPS)
            .setStyle(ProgressBarStyle.ASCII)
            .setUpdateIntervalMillis(TICK_MILLIS)
            .build();
  }

  private synchronized void tick() {
    if (bar != null) {
      double seconds = (System.nanoTime() - barStartNanos) / 1e9;
      bar.stepTo(Math.round(Math.min(1, seconds / effort.seconds()) * BAR_STEPS));
    }
  }

  private void closeBar() {
    if (bar != null) {
      bar.close();
      bar = null;
    }
  }

  @Override
  public synchronized void close() {
    ticker.shutdownNow();
    next("");
  }
}
