package ellwand.desk;

import ellwand.app.Output;
import ellwand.app.PagePictures;
import ellwand.file.source.Json;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;

/** What a page asks for to print or to keep as a file. */
final class PaperRoutes {

  /** Along the longer side of a page's picture. */
  private static final int MOST_DOTS = 2400;

  private final Function<Context, OpenJob> job;
  private final Previews previews = new Previews();

  /**
   * @param job that a page speaks of
   */
  PaperRoutes(Function<Context, OpenJob> job) {
    this.job = job;
  }

  void in(JavalinConfig config) {
    config.routes.get(
        "/job/before",
        request ->
            send(
                request, Prints.before(job.apply(request), Desk.word(request.queryParam("size")))));
    config.routes.get(
        "/job/files", request -> Desk.json(request, Prints.files(job.apply(request))));
    config.routes.get("/job/file", this::print);
    config.routes.get("/job/print", this::print);
    config.routes.get(
        "/job/pages",
        request -> Desk.json(request, Json.object().put("count", pages(request).count())));
    config.routes.get("/job/page", this::page);
  }

  private void print(Context request) {
    send(request, Prints.asked(job.apply(request), request));
  }

  private PagePictures pages(Context request) {
    OpenJob open = job.apply(request);
    Map<String, List<String>> asked = new TreeMap<>(request.queryParamMap());
    asked.keySet().removeAll(Set.of("number", "dots"));
    return previews.of(List.of(asked, open.stamp()), () -> Prints.asked(open, request).bytes());
  }

  private void page(Context request) {
    int dots = Math.max(100, Math.min(MOST_DOTS, Desk.whole(request.queryParam("dots"))));
    byte[] png = pages(request).png(Desk.whole(request.queryParam("number")), dots);
    request.contentType("image/png").result(png);
  }

  static void send(Context request, Output output) {
    request.contentType(type(output.name()));
    request.header("Content-Disposition", "inline; filename*=UTF-8''" + encoded(output.name()));
    request.result(output.bytes());
  }

  private static String encoded(String name) {
    return URLEncoder.encode(name, StandardCharsets.UTF_8).replace("+", "%20");
  }

  private static String type(String name) {
    return switch (name.substring(name.lastIndexOf('.') + 1)) {
      case "svg" -> "image/svg+xml";
      case "png" -> "image/png";
      case "pdf" -> "application/pdf";
      case "json" -> "application/json";
      default -> "text/plain";
    };
  }
}
