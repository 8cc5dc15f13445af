package ellwand.desk;

import com.fasterxml.jackson.databind.JsonNode;
import ellwand.work.Effort;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import java.util.function.Function;

/**
 * What a page asks of a job's order.
 *
 * @param order of the job that a page speaks of
 */
record OrderRoutes(Function<Context, OrderBook> order) {

  void in(JavalinConfig config) {
    config.routes.get("/job/order", request -> Desk.json(request, order.apply(request).json()));
    config.routes.post(
        "/job/order",
        request -> Desk.changed(request, () -> order.apply(request).begin(Desk.body(request))));
    config.routes.post("/job/order/edit", this::edit);
    config.routes.post("/job/order/undo", request -> step(request, true));
    config.routes.post("/job/order/redo", request -> step(request, false));
    config.routes.post("/job/order/plan", this::plan);
    config.routes.post(
        "/job/order/keep", request -> Desk.changed(request, order.apply(request)::close));
  }

  private void edit(Context request) {
    JsonNode body = Desk.body(request);
    OrderBook book = order.apply(request);
    book.edit(Desk.place(body), Desk.value(body.get("was")), Desk.value(body.get("value")));
    Desk.json(request, book.json());
  }

  private void step(Context request, boolean back) {
    OrderBook book = order.apply(request);
    book.step(back);
    Desk.json(request, book.json());
  }

  private void plan(Context request) {
    Effort effort = Desk.effort(request);
    Desk.changed(request, () -> order.apply(request).plan(effort));
  }
}
