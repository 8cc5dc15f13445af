package ellwand.nest.kernel;

import ellwand.work.Request;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How a strip with many equal copies begins: one block with a share of each kind is searched, then
 * laid again and again, and what is left over goes where there is room.
 */
final class Tiling {

  /** Fewer copies are searched all at once. */
  private static final int MANY = 300;

  /** Copies that a block has at least and at most. */
  private static final int SMALLEST = 50;

  private static final int LARGEST = 120;

  /** Share of the copies that blocks have to hold for tiling to pay. */
  private static final double HELD = 0.8;

  /** The whole strip is laid anew when the block has become shorter by this share. */
  private static final double WORTH_TELLING = 0.03;

  private final Plan plan;
  private final Plan block;

  /** For each tile the copies in it, in the order of the block's copies. */
  private final int[][] tiles;

  /** The shortest block found so far; the next search of it goes on from there. */
  private Optional<Layout> best = Optional.empty();

  private Tiling(Plan plan, List<List<Integer>> byKind, int count) {
    this.plan = plan;
    List<List<StripForm>> copies = new ArrayList<>();
    List<int[]> columns = new ArrayList<>();
    for (List<Integer> equal : byKind) {
      for (int i = 0; i + count <= equal.size(); i += count) {
        copies.add(plan.strip.copies().get(equal.get(i)));
        columns.add(equal.subList(i, i + count).stream().mapToInt(c -> c).toArray());
      }
    }
    block = new Plan(Strip.open(plan.strip.shapes(), copies), plan.outlines);
    tiles = new int[count][copies.size()];
    for (int t = 0; t < count; t++) {
      for (int i = 0; i < copies.size(); i++) {
        tiles[t][i] = columns.get(i)[t];
      }
    }
  }

  /** The tiling that holds most of the copies; empty where none pays. */
  static Optional<Tiling> of(Plan plan) {
    if (plan.copies < MANY || plan.bodies > plan.copies || !freeAlong(plan)) {
      return Optional.empty();
    }
    List<List<Integer>> byKind = new ArrayList<>();
    for (int k = 0; k < plan.kinds.length; k++) {
      byKind.add(new ArrayList<>());
    }
    for (int i = 0; i < plan.copies; i++) {
      byKind.get(plan.kind[i]).add(i);
    }
    int best = 0;
    int most = (int) (HELD * plan.copies);
    for (int count = 2; count * SMALLEST <= plan.copies; count++) {
      int n = count;
      int held = byKind.stream().mapToInt(equal -> equal.size() / n * n).sum();
      if (held > most && held <= count * LARGEST) {
        most = held;
        best = count;
      }
    }
    return best == 0 ? Optional.empty() : Optional.of(new Tiling(plan, byKind, best));
  }

  private static boolean freeAlong(Plan plan) {
    for (Kind kind : plan.kinds) {
      for (Lattice along : kind.alongX) {
        if (along.step() > 0) {
          return false;
        }
      }
    }
    return true;
  }

  /** Searches the block further; the layout is of the whole strip, however long it may be. */
  Outcome run(Request request, Listener listener) {
    ThreadMeeting told = new ThreadMeeting(plan, listener, 1);
    ThreadBudget budget = new ThreadBudget(request.effort(), request.stop(), told, 0);
    double[] toldOf = {Double.POSITIVE_INFINITY};
    Listener repeating =
        (layout, evaluations) -> {
          if (layout.length() < toldOf[0] * (1 - WORTH_TELLING)) {
            toldOf[0] = layout.length();
            budget.evaluations = evaluations;
            Snapshot whole = repeated(layout, budget);
            if (whole != null) {
              budget.found(whole);
            }
          }
        };
    Outcome outcome =
        new SearchRun(block, block, request, repeating).outcome(best.stream().toList());
    budget.evaluations = outcome.evaluations();
    best = outcome.layout().or(() -> best);
    best.map(layout -> repeated(layout, budget)).ifPresent(budget::found);
    return new Outcome(
        Optional.ofNullable(budget.best).map(b -> b.layout(plan)), outcome.evaluations());
  }

  /** The whole strip, tile after tile; null if the search is to stop before that. */
  private Snapshot repeated(Layout layout, ThreadBudget budget) {
    Snapshot tile = Snapshot.of(layout, block);
    double pitch = pitch(tile, budget);
    OpeningLayout opening = new OpeningLayout(new Arrangement(plan, budget));
    for (int t = 0; t < tiles.length; t++) {
      for (int i = 0; i < tiles[t].length; i++) {
        opening.put(tiles[t][i], tile.form[i], tile.x[i] + t * pitch, tile.y[i]);
      }
    }
    return opening.lay(budget);
  }

  /** The least shift along the strip from which on the block never meets itself. */
  private double pitch(Snapshot tile, ThreadBudget budget) {
    double pitch = 0;
    for (int i = 0; i < block.copies; i++) {
      for (int k = 0; k < block.copies; k++) {
        int still = shape(tile, i);
        int moving = shape(tile, k);
        double apart = tile.y[k] - tile.y[i];
        double reach = block.halfX[still] + block.halfX[moving];
        if (Math.abs(apart) < block.halfY[still] + block.halfY[moving]
            && tile.x[i] - tile.x[k] + reach > pitch) {
          PairTable table = plan.tables.table(still, moving, budget);
          double end = table == null ? reach : end(still, moving, table, apart);
          pitch = Math.max(pitch, tile.x[i] - tile.x[k] + end);
        }
      }
    }
    return pitch;
  }

  private int shape(Snapshot tile, int copy) {
    return block.kinds[block.kind[copy]].shape[tile.form[copy]];
  }

  /** The largest x at which the moving shape, so far across from the still one, touches it. */
  private double end(int still, int moving, PairTable table, double apart) {
    double sign = plan.tables.sign(still, moving);
    double[] edges = table.edges();
    double end = Double.NEGATIVE_INFINITY;
    for (int e = 0; e < edges.length; e += PairTable.EDGE) {
      double ay = sign * edges[e + 1] - apart;
      double dy = sign * edges[e + 3] * edges[e + 4];
      if (ay * (ay + dy) <= 0 && dy != 0) {
        end = Math.max(end, sign * (edges[e] - edges[e + 2] * edges[e + 4] * ay / dy));
      }
    }
    return end;
  }
}
