package ellwand.file.source;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.job.Origin;
import ellwand.units.Unit;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;

/**
 * A job as written, with the sections that it names from other files put in their places.
 *
 * @param places where each entry was written, by JSON pointer into the root
 * @param units what bare numbers in each section stand for
 * @param sources every file read, the job itself first
 * @param blocks files of which pieces are taken, by the entry that names them
 */
public record Sheet(
    ObjectNode root,
    Map<JsonPointer, FileLine> places,
    Map<String, Unit> units,
    List<Source> sources,
    Map<JsonPointer, Sheet> blocks) {

  /** Where all of it was read from. */
  public Origin origin() {
    return new Origin(sources.get(0).name(), sha256());
  }

  private String sha256() {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      sources.forEach(s -> digest.update(s.bytes()));
      return HexFormat.of().formatHex(digest.digest());
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  /** Where an entry was written, or else the nearest entry round it. */
  public FileLine place(JsonPointer at) {
    for (JsonPointer p = at; p != null; p = p.head()) {
      FileLine place = places.get(p);
      if (place != null) {
        return place;
      }
    }
    return new FileLine(sources.get(0).name(), 0);
  }
}
