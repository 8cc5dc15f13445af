package ellwand.trace;

import ellwand.geometry.Box;
import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import ellwand.problem.InputException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A printed page with known distances: a chequered field whose white squares hold coded squares,
 * each code on one sheet only. The codes tell which sheet it is and which way it lies; the field's
 * inner corners, where two black squares touch, are what is measured, since neither blur nor ink
 * that spreads moves them. Its frame is the paper's: mm, from its lower left corner, y up.
 *
 * @param number 1 to {@link #MOST}
 */
public record ReferenceSheet(Paper paper, int number) {

  /** So many sheets are told apart on one paper. */
  public static final int MOST = 7;

  /** Squares of the field from left to right. */
  public static final int COLUMNS = 5;

  /** Squares of the field from bottom to top. */
  public static final int ROWS = 7;

  public static final double SQUARE_MM = 35;

  private static final double CODE_MM = 27;

  private static final int CODES = COLUMNS * ROWS / 2;

  /** A4 by ISO 216; Letter is 8 1/2 x 11 in. */
  public enum Paper {
    A4("A4", 210, 297),
    LETTER("Letter", 215.9, 279.4);

    private final String words;
    private final double widthMm;
    private final double heightMm;

    Paper(String words, double widthMm, double heightMm) {
      this.words = words;
      this.widthMm = widthMm;
      this.heightMm = heightMm;
    }

    /**
     * Reads {@code A4} or {@code Letter}.
     *
     * @throws InputException if it is neither
     */
    public static Paper parse(String text) {
      for (Paper paper : values()) {
        if (paper.words.equalsIgnoreCase(text.strip())) {
          return paper;
        }
      }
      throw InputException.of(
          "'" + text + "' is no paper for a reference sheet", "Use A4 or Letter");
    }

    public double widthMm() {
      return widthMm;
    }

    public double heightMm() {
      return heightMm;
    }

    @Override
    public String toString() {
      return words;
    }
  }

  /**
   * A coded square.
   *
   * @param id of its code in the family
   */
  public record Code(int id, Box box) {}

  public ReferenceSheet {
    if (number < 1 || number > MOST) {
      throw new IllegalArgumentException("no sheet has the number " + number);
    }
  }

  /**
   * The first sheets of a paper.
   *
   * @throws InputException if there are not so many
   */
  public static List<ReferenceSheet> first(int count, Paper paper) {
    InputException.unless(
        count >= 1 && count <= MOST,
        count + " reference sheets cannot be told apart",
        "Ask for 1 to " + MOST + " sheets");
    return IntStream.rangeClosed(1, count).mapToObj(n -> new ReferenceSheet(paper, n)).toList();
  }

  /** The sheet that a code stands on, if any. */
  static Optional<ReferenceSheet> withCode(int id) {
    int sheet = id / CODES;
    return id >= 0 && sheet < MOST * Paper.values().length
        ? Optional.of(new ReferenceSheet(Paper.values()[sheet / MOST], sheet % MOST + 1))
        : Optional.empty();
  }

  /** Of the whole chequered field. */
  public Box field() {
    double x = (paper.widthMm - COLUMNS * SQUARE_MM) / 2;
    double top = paper == Paper.A4 ? 9 : 7;
    double y = paper.heightMm - top - ROWS * SQUARE_MM;
    return new Box(x, y, x + COLUMNS * SQUARE_MM, y + ROWS * SQUARE_MM);
  }

  /** The black squares of the field. */
  public List<Box> blackSquares() {
    return squares(0);
  }

  /** The coded squares, each in the middle of a white one. */
  public List<Code> codes() {
    int first = (paper.ordinal() * MOST + number - 1) * CODES;
    List<Code> codes = new ArrayList<>();
    for (Box white : squares(1)) {
      codes.add(new Code(first + codes.size(), white.grown((CODE_MM - SQUARE_MM) / 2)));
    }
    return codes;
  }

  private List<Box> squares(int odd) {
    List<Box> squares = new ArrayList<>();
    Box field = field();
    for (int row = 0; row < ROWS; row++) {
      for (int column = 0; column < COLUMNS; column++) {
        if ((row + column) % 2 == odd) {
          double x = field.minX() + column * SQUARE_MM;
          double y = field.minY() + row * SQUARE_MM;
          squares.add(new Box(x, y, x + SQUARE_MM, y + SQUARE_MM));
        }
      }
    }
    return squares;
  }

  /** Where four squares of the field meet: row by row from below. */
  public List<Point> corners() {
    List<Point> corners = new ArrayList<>();
    Box field = field();
    for (int row = 1; row < ROWS; row++) {
      for (int column = 1; column < COLUMNS; column++) {
        corners.add(new Point(field.minX() + column * SQUARE_MM, field.minY() + row * SQUARE_MM));
      }
    }
    return corners;
  }

  /** The edge of its paper. */
  public Outline outline() {
    return Outline.of(new Box(0, 0, paper.widthMm, paper.heightMm));
  }

  @Override
  public String toString() {
    return paper + " sheet " + number;
  }
}
