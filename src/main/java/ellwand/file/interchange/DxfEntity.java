package ellwand.file.interchange;

import ellwand.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * An entity: a line, a curve, a point, words, or a block put somewhere.
 *
 * @param type LINE, POLYLINE and so on
 * @param line of the file
 * @param pairs in the order of the file
 * @param vertices of a POLYLINE of the old form
 */
record DxfEntity(String type, int line, List<Pair> pairs, List<DxfEntity> vertices) {

  record Pair(int code, String value, double number) {}

  DxfEntity(String type, int line) {
    this(type, line, new ArrayList<>(), new ArrayList<>());
  }

  Optional<String> text(int code) {
    return pairs.stream().filter(p -> p.code == code).map(Pair::value).findFirst();
  }

  double number(int code, double otherwise) {
    return pairs.stream()
        .filter(p -> p.code == code)
        .map(Pair::number)
        .findFirst()
        .orElse(otherwise);
  }

  List<Double> numbers(int code) {
    return pairs.stream().filter(p -> p.code == code).map(Pair::number).toList();
  }

  /** The place under the codes {@code code} and {@code code + 10}. */
  Point place(int code) {
    return new Point(number(code, 0), number(code + 10, 0));
  }

  String layer() {
    return text(8).orElse("0");
  }
}
