package ellwand.pattern;

/** The other pieces of a style in the same size. */
@FunctionalInterface
public interface Others {

  /**
   * A piece as it comes out, with its marks.
   *
   * @throws ellwand.problem.InputException if there is none of that name, or it cannot be made
   */
  Workpiece piece(String name);
}
