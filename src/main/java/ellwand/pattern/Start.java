package ellwand.pattern;

import java.util.Optional;
import java.util.Set;

/** What a piece is before it is altered: drawn, traced from another, or drafted. */
public interface Start {

  /**
   * The piece in a size.
   *
   * @param name that it gets
   * @param sizes of the style
   * @param others the other pieces of that size, of those that {@link #needs} names
   * @throws ellwand.problem.InputException if there is none
   */
  Workpiece in(String name, String size, Sizes sizes, Others others);

  /** Names of other pieces of the style that it takes. */
  default Set<String> needs() {
    return Set.of();
  }

  /** Whether it is drafted from body measures, which a toile has to prove. */
  default boolean drafted() {
    return false;
  }

  /** Whether it has sizes of its own, besides grading. */
  default boolean sized() {
    return drafted();
  }

  /** The outline that somebody drew, if it is that. */
  default Optional<Draft> draft() {
    return Optional.empty();
  }

  /** Drawn point by point, and graded. */
  record Drawn(Draft outline) implements Start {

    @Override
    public Workpiece in(String name, String size, Sizes sizes, Others others) {
      return Workpiece.of(sizes.graded(outline, size));
    }

    @Override
    public Optional<Draft> draft() {
      return Optional.of(outline);
    }
  }

  /**
   * A copy of another piece of the style as it comes out.
   *
   * @param part which one, if that piece was cut apart
   */
  record Copy(String piece, Optional<String> part) implements Start {

    @Override
    public Workpiece in(String name, String size, Sizes sizes, Others others) {
      return others.piece(piece).part(part).named(name);
    }

    @Override
    public Set<String> needs() {
      return Set.of(piece);
    }
  }

  /**
   * A copy of a piece of another style.
   *
   * @param file as it is named
   * @param block the style that stands in it
   * @param part which one, if the piece was cut apart
   */
  record OfBlock(String file, Design block, String piece, Optional<String> part) implements Start {

    @Override
    public boolean drafted() {
      return block.outlined().stream().anyMatch(p -> p.name().equals(piece) && p.start().drafted());
    }

    @Override
    public boolean sized() {
      return block.sized();
    }

    @Override
    public Workpiece in(String name, String size, Sizes sizes, Others others) {
      return block
          .making(block.sizes().names().size() == 1 ? block.sizes().base() : size)
          .piece(piece)
          .part(part)
          .named(name);
    }
  }
}
