package ellwand.desk;

import com.fasterxml.jackson.databind.JsonNode;
import io.javalin.http.sse.SseClient;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/** The tabs of browsers that show one job; what happens is told to all of them. */
final class Tabs {

  private final Set<SseClient> open = ConcurrentHashMap.newKeySet();

  void add(SseClient tab) {
    tab.keepAlive();
    tab.onClose(() -> open.remove(tab));
    open.add(tab);
  }

  /**
   * Tells every tab.
   *
   * @param event what kind of thing happened
   */
  void tell(String event, JsonNode what) {
    String data = what.toString();
    for (SseClient tab : open) {
      synchronized (tab) {
        tab.sendEvent(event, data);
      }
    }
  }
}
