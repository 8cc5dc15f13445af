package ellwand.file.interchange;

import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.file.drawn.DrawnLine;
import ellwand.file.drawn.PieceWords;
import ellwand.file.drawn.SafeName;
import ellwand.geometry.Point;
import ellwand.geometry.Segment;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a piece's annotation says of places on it, in words of our own: {@code Edge: hem} where an
 * edge starts, {@code Point: underarm}, {@code Line: pocket} where an inner line starts, {@code
 * Notch: double} in the middle of a double notch. Other programs show them as annotation.
 */
final class PieceNotes {

  static final String EDGE = "Edge";
  static final String POINT = "Point";
  static final String LINE = "Line";
  static final String NOTCH = "Notch";
  static final String DOUBLE = "double";

  /** How far a note may lie from what it speaks of, mm: what rounding does. */
  private static final double AT_MM = 0.01;

  /**
   * A note.
   *
   * @param value what it says, without the entries that may follow it in braces
   * @param degrees how it is turned, counter-clockwise
   */
  record Note(String key, String value, Optional<ObjectNode> entries, Point at, double degrees) {

    boolean near(Point other) {
      return at.distance(other) <= AT_MM;
    }
  }

  private final List<Note> notes = new ArrayList<>();

  /**
   * Takes a note in; what is none is passed over.
   *
   * @param at mm
   */
  void add(String key, String value, Point at, double degrees) {
    for (String known : List.of(EDGE, POINT, LINE, NOTCH)) {
      if (known.equalsIgnoreCase(key)) {
        int brace = value.indexOf('{');
        String name = brace < 0 ? value : value.substring(0, brace);
        notes.add(
            new Note(
                known,
                SafeName.of(name),
                brace < 0 ? Optional.empty() : PieceWords.entries(value.substring(brace)),
                at,
                degrees));
      }
    }
  }

  /** Whether a text speaks of a place on the outline. */
  static boolean ofOutline(String text) {
    return text.startsWith(EDGE + ":") || text.startsWith(POINT + ":");
  }

  static boolean knows(String key) {
    return List.of(EDGE, POINT, LINE, NOTCH).stream().anyMatch(key::equalsIgnoreCase);
  }

  List<Note> of(String key) {
    return notes.stream().filter(n -> n.key.equals(key)).toList();
  }

  /** The name of the inner line that starts at a place. */
  Optional<String> lineAt(Point start) {
    return of(LINE).stream().filter(n -> n.near(start)).map(Note::value).findFirst();
  }

  /** An outline in the edges whose starts are noted. */
  DrawnLine inEdges(DrawnLine outline) {
    List<Optional<String>> starting = new ArrayList<>();
    Optional<String> edge = Optional.empty();
    for (Segment segment : outline.path().segments()) {
      Optional<String> starts =
          of(EDGE).stream().filter(n -> n.near(segment.start())).map(Note::value).findFirst();
      starting.add(starts);
      edge = starts.isPresent() ? starts : edge;
    }
    List<Optional<String>> parts = new ArrayList<>();
    for (Optional<String> starts : starting) {
      edge = starts.isPresent() ? starts : edge;
      parts.add(edge);
    }
    return new DrawnLine(outline.path(), true, outline.label(), parts);
  }
}
