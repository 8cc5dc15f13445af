package ellwand.many;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.file.source.Json;
import ellwand.work.Progress.Ended;
import ellwand.work.Progress.Mishap;
import ellwand.work.Progress.News;
import ellwand.work.Progress.Shorter;
import java.io.PrintWriter;
import java.io.StringWriter;

/** What a search tells on the way, as bytes. */
final class SearchNews {

  /** Of a mistake of ours so much is told. */
  private static final int MOST_SIGNS = 4_000;

  private SearchNews() {}

  static byte[] bytes(News news) {
    ObjectNode root = Json.object();
    root.put("cloth", news.cloth()).put("seconds", news.seconds()).put("share", news.share());
    if (news instanceof Shorter marker) {
      root.put("fold", marker.fold()).put("clothMm", marker.clothMm());
    } else if (news instanceof Ended ended) {
      root.put("gainSeconds", ended.gainSeconds());
    } else if (news instanceof Mishap mishap) {
      root.put("part", mishap.part()).put("why", words(mishap.why()));
    } else {
      throw new IllegalArgumentException("no search for markers tells that: " + news);
    }
    return Json.bytes(root);
  }

  private static String words(Throwable why) {
    StringWriter words = new StringWriter();
    why.printStackTrace(new PrintWriter(words));
    return words.toString().substring(0, Math.min(MOST_SIGNS, words.toString().length()));
  }

  /**
   * What {@link #bytes} made.
   *
   * @throws IllegalArgumentException if it is something else
   */
  static News of(byte[] bytes) {
    JsonNode root = Json.read(bytes);
    String cloth = root.required("cloth").asText();
    double seconds = root.required("seconds").doubleValue();
    double share = root.required("share").doubleValue();
    if (root.has("clothMm")) {
      double clothMm = root.get("clothMm").doubleValue();
      return new Shorter(cloth, root.required("fold").asText(), seconds, share, clothMm);
    }
    if (root.has("gainSeconds")) {
      return new Ended(cloth, seconds, share, root.get("gainSeconds").doubleValue());
    }
    TaskFailed why = new TaskFailed(root.required("why").asText());
    return new Mishap(cloth, seconds, share, root.required("part").asText(), why);
  }
}
