package ellwand.file.interchange;

import ellwand.file.drawn.Drawing;
import ellwand.geometry.Point;
import ellwand.problem.InputException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What a DXF file holds.
 *
 * @param header variables by name, each with its first value
 * @param blocks by name
 * @param entities of the drawing itself
 * @param hidden names of the layers that are off or frozen
 */
record DxfFile(
    Map<String, String> header,
    Map<String, Block> blocks,
    List<DxfEntity> entities,
    Set<String> hidden) {

  /** Lines that are put somewhere together; {@code base} is what comes to lie there. */
  record Block(Point base, List<DxfEntity> entities) {}

  private static final int MOST_ENTITIES = 400_000;

  /** Of one entity: as many as all points that a drawing may have ask for. */
  private static final int MOST_PAIRS = 3 * Drawing.MOST_POINTS;

  /** Group codes whose values are numbers, by the published reference. */
  private static boolean isNumber(int code) {
    return code >= 10 && code <= 59 || code >= 210 && code <= 239;
  }

  /**
   * Reads a file to its end.
   *
   * @throws InputException if it is not whole
   */
  static DxfFile read(String file, byte[] bytes) {
    DxfPairs in = new DxfPairs(file, bytes);
    if (bytes.length > 6 && bytes[0] == 'A') {
      throw in.refused(1, "this is a DXF file in binary form");
    }
    DxfFile whole =
        new DxfFile(
            new LinkedHashMap<>(), new LinkedHashMap<>(), new ArrayList<>(), new HashSet<>());
    in.next();
    while (!in.is(0, "EOF")) {
      if (!in.is(0, "SECTION")) {
        throw in.refused(in.line(), "a section is expected");
      }
      in.next();
      String name = in.value();
      in.next();
      switch (name) {
        case "HEADER" -> whole.header(in);
        case "TABLES" -> whole.tables(in);
        case "BLOCKS" -> whole.blocks(in);
        case "ENTITIES" -> whole.entities.addAll(entities(in, "ENDSEC"));
        default -> {
          while (!in.is(0, "ENDSEC")) {
            in.next();
          }
        }
      }
      in.next();
    }
    return whole;
  }

  private void header(DxfPairs in) {
    String variable = "";
    while (!in.is(0, "ENDSEC")) {
      if (in.code() == 9) {
        variable = in.value();
      } else {
        header.putIfAbsent(variable, in.value());
      }
      in.next();
    }
  }

  /** Of all tables that of the layers: colours below 0 are off, an odd flag is frozen. */
  private void tables(DxfPairs in) {
    while (!in.is(0, "ENDSEC")) {
      boolean layer = in.is(0, "LAYER");
      in.next();
      String name = "";
      boolean unseen = false;
      while (in.code() != 0) {
        name = in.code() == 2 ? in.value() : name;
        unseen |= in.code() == 62 && in.value().startsWith("-");
        unseen |= in.code() == 70 && in.value().matches("\\d*[13579]");
        in.next();
      }
      if (layer && unseen) {
        hidden.add(name);
      }
    }
  }

  /** Whether an entity is seen where the drawing itself is looked at, and not its printed sheet. */
  boolean shows(DxfEntity entity) {
    return !hidden.contains(entity.layer())
        && entity.text(60).filter("1"::equals).isEmpty()
        && entity.text(67).filter("1"::equals).isEmpty();
  }

  private void blocks(DxfPairs in) {
    while (!in.is(0, "ENDSEC")) {
      if (!in.is(0, "BLOCK")) {
        throw in.refused(in.line(), "a block is expected");
      }
      DxfEntity head = new DxfEntity("BLOCK", in.line());
      in.next();
      while (in.code() != 0) {
        head.pairs().add(pair(in));
        in.next();
      }
      blocks.put(head.text(2).orElse(""), new Block(head.place(10), entities(in, "ENDBLK")));
      in.next();
      while (in.code() != 0) {
        in.next();
      }
    }
  }

  private static List<DxfEntity> entities(DxfPairs in, String end) {
    List<DxfEntity> entities = new ArrayList<>();
    Map<String, DxfEntity> open = new HashMap<>();
    while (!in.is(0, end)) {
      if (in.code() != 0) {
        throw in.refused(in.line(), "an entity is expected");
      }
      DxfEntity entity = new DxfEntity(in.value().toUpperCase(java.util.Locale.ROOT), in.line());
      in.next();
      while (in.code() != 0) {
        entity.pairs().add(pair(in));
        if (entity.pairs().size() > MOST_PAIRS) {
          throw in.refused(entity.line(), "an entity has more than 200,000 points");
        }
        in.next();
      }
      switch (entity.type()) {
        case "VERTEX" -> {
          if (open.containsKey("POLYLINE")) {
            open.get("POLYLINE").vertices().add(entity);
          }
        }
        case "SEQEND" -> open.clear();
        default -> {
          entities.add(entity);
          open.clear();
          open.put(entity.type(), entity);
        }
      }
      if (entities.size() > MOST_ENTITIES) {
        throw in.refused(in.line(), "it has more than 400,000 entities");
      }
    }
    return entities;
  }

  private static DxfEntity.Pair pair(DxfPairs in) {
    return new DxfEntity.Pair(
        in.code(), in.value(), isNumber(in.code()) ? in.number() : Double.NaN);
  }
}
