package ellwand.cloth;

import java.util.List;

/** How the cloth lies. Folded cloth lies right sides together, a tube right side out. */
public enum Fold {
  /** One ply, right side up. */
  OPEN("open"),
  /** Two plies, the fold edge along one side and both selvedges on the other. */
  LENGTHWISE("lengthwise fold"),
  /** One edge folded over so far as is wanted; a double zone beside a single one. */
  PART("part fold"),
  /** Both selvedges folded to a line between two fold edges. */
  DOUBLE("double fold"),
  /** Folded across, so that the plies head opposite ways; the fold edge lies across at one end. */
  CROSSWISE("crosswise fold"),
  /** Cut across and the upper length turned round, so that both plies head the same. */
  TURNED("crosswise turned"),
  /** Cut across, two lengths as the plies of an order lie; nothing is cut from one ply alone. */
  FACE_TO_FACE("two plies face to face"),
  /** One folded ply of the many of an order, along all its length: nothing can be opened. */
  STACKED("plies folded lengthwise"),
  /** A knitted tube as it comes: a fold edge on each side, no selvedge. */
  TUBULAR("tubular knit");

  private final String words;

  Fold(String words) {
    this.words = words;
  }

  /** As in a job file. */
  public String words() {
    return words;
  }

  /** Whether two plies take twice their length of cloth, since they lie end over end. */
  public boolean doublesLength() {
    return this == CROSSWISE || this == TURNED || this == FACE_TO_FACE;
  }

  /** Whether it lies in one fold along the warp, near its middle. */
  public boolean alongMiddle() {
    return this == LENGTHWISE || this == STACKED;
  }

  /** The way a cloth must be allowed to lie so that plies of an order may lie so. */
  public Fold asOnePly() {
    return switch (this) {
      case FACE_TO_FACE -> OPEN;
      case STACKED -> LENGTHWISE;
      default -> this;
    };
  }

  /** Whether it is to be chosen how far the cloth is folded over. */
  public boolean hasBorder() {
    return this == PART || this == DOUBLE;
  }

  /** Those worth a trial on a cloth when any will do. */
  static List<Fold> any(boolean tubular, Direction direction) {
    if (tubular) {
      return List.of(TUBULAR, OPEN);
    }
    return direction == Direction.ANY_WAY
        ? List.of(OPEN, LENGTHWISE, PART, DOUBLE, CROSSWISE)
        : List.of(OPEN, LENGTHWISE, PART, DOUBLE, CROSSWISE, TURNED);
  }
}
