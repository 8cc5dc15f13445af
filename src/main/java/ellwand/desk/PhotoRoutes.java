package ellwand.desk;

import ellwand.app.Output;
import ellwand.app.ReferenceRun;
import ellwand.file.source.Json;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import java.util.OptionalDouble;

/** What a page asks of photos of paper pieces. */
final class PhotoRoutes {

  /** As many as lie beside a large piece. */
  private static final int REFERENCE_SHEETS = 4;

  private final Darkroom room = new Darkroom();

  void in(JavalinConfig config) {
    config.routes.get("/reference", PhotoRoutes::sheets);
    config.routes.post(
        "/jobs/photos", request -> Desk.json(request, Json.object().put("lot", room.begin())));
    config.routes.post("/jobs/photo", this::add);
    config.routes.post("/jobs/photos/look", this::look);
    config.routes.get(
        "/jobs/photos/picture",
        request -> request.contentType("image/jpeg").result(room.seen(lot(request)).picture()));
    config.routes.post("/jobs/photos/style", this::style);
  }

  private static int lot(Context request) {
    return Desk.whole(request.queryParam("lot"));
  }

  private static void sheets(Context request) {
    String paper = Desk.word(request.queryParam("paper"));
    PaperRoutes.send(
        request,
        new Output("reference sheets.pdf", () -> ReferenceRun.pdf(paper, REFERENCE_SHEETS)));
  }

  private void add(Context request) {
    room.add(lot(request), Desk.word(request.queryParam("file")), request.bodyAsBytes());
    Desk.json(request, Json.object());
  }

  private void look(Context request) {
    String dots = request.queryParam("dots");
    OptionalDouble scanned =
        dots == null || dots.isBlank()
            ? OptionalDouble.empty()
            : OptionalDouble.of(Desk.whole(dots.strip()));
    request.contentType("application/json").result(room.look(lot(request), scanned).json());
  }

  private void style(Context request) {
    Newcomer made =
        room.style(
            lot(request),
            Desk.body(request),
            request.queryParam("allowance"),
            request.queryParam("included"));
    Desk.json(request, made.json());
  }
}
