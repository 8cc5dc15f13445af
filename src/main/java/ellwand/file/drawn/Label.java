package ellwand.file.drawn;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a line, or a group of lines, is called in its drawing.
 *
 * @param name as its maker called it; empty where a program did
 * @param kinds further words, such as classes, lower case
 * @param words sentences or entries that stand with it
 * @param inside the group it lies in
 * @param line of the file, 0 if unknown
 */
public record Label(
    Optional<String> name,
    List<String> kinds,
    Optional<String> words,
    Optional<Label> inside,
    int line) {

  /** The class of a group that is a piece. */
  public static final String PIECE = "piece";

  /** Of a drawing as a whole. */
  public static final Label NONE =
      new Label(Optional.empty(), List.of(), Optional.empty(), Optional.empty(), 0);

  public Label {
    kinds = List.copyOf(kinds);
  }

  /** The same under a name. */
  public Label named(String other) {
    return new Label(Optional.of(other), kinds, words, inside, line);
  }

  /** Itself, then the groups that it lies in, from the inside out. */
  List<Label> chain() {
    List<Label> chain = new ArrayList<>();
    for (Optional<Label> l = Optional.of(this); l.isPresent(); l = l.get().inside) {
      chain.add(l.get());
    }
    return chain;
  }

  /** The same without the drawing as a whole. */
  List<Label> groups() {
    return chain().stream().filter(l -> l.inside.isPresent()).toList();
  }

  /** What its words say that it is; the nearest word counts. */
  Optional<Role> role() {
    return chain().stream().flatMap(l -> l.ownRole().stream()).findFirst();
  }

  /** Whether its words say what kind of line it is. */
  public boolean saysWhat() {
    return role().isPresent();
  }

  private Optional<Role> ownRole() {
    if (isPiece()) {
      return Optional.empty();
    }
    return kinds.stream()
        .flatMap(kind -> Role.of(kind).stream())
        .findFirst()
        .or(() -> name.flatMap(Role::of));
  }

  /** Whether it, or a group round it, has this name. */
  boolean isUnder(String called) {
    return chain().stream().anyMatch(l -> l.name.filter(called::equalsIgnoreCase).isPresent());
  }

  /** A name that says what piece it is, not what kind of line. */
  Optional<String> pieceName() {
    return name.filter(
        n -> isPiece() || Role.of(n).isEmpty() && !n.matches("(?i)(size|layer|page)\\b.*"));
  }

  /** Whether it says of itself that it is a piece, whatever its name. */
  boolean isPiece() {
    return kinds.contains(PIECE);
  }

  // Two groups without a word are two groups all the same, so labels are compared by themselves.

  @Override
  public boolean equals(Object other) {
    return this == other;
  }

  @Override
  public int hashCode() {
    return System.identityHashCode(this);
  }
}
