package ellwand.file;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.units.Unit;
import java.util.List;
import java.util.Map;

/**
 * A job as written, with the sections that it names from other files put in their places.
 *
 * @param places where each entry was written, by JSON pointer into the root
 * @param units what bare numbers in each section stand for
 * @param sources every file read, the job itself first
 */
record Sheet(
    ObjectNode root,
    Map<JsonPointer, Place> places,
    Map<String, Unit> units,
    List<Source> sources) {

  /** Where an entry was written, or else the nearest entry round it. */
  Place place(JsonPointer at) {
    for (JsonPointer p = at; p != null; p = p.head()) {
      Place place = places.get(p);
      if (place != null) {
        return place;
      }
    }
    return new Place(sources.get(0).path().toString(), 0);
  }
}
