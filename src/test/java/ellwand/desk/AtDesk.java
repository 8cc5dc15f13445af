package ellwand.desk;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** A desk on a folder with a jacket in it, asked as a page asks it. */
abstract class AtDesk {

  static final String JOB = "name=weir-jacket.yaml";

  static final String SIDE =
      "[\"style\",\"pieces\",\"back\",\"edges\",\"side seam\",\"allowance\"]";

  @TempDir Path folder;
  Desk desk;
  Visitor maker;

  @BeforeEach
  void open() {
    desk = Desk.start(folder, "127.0.0.1", 0);
    maker = Visitor.of(desk);
    if (maker.get("/jobs").json().path("jobs").isEmpty()) {
      maker.post("/jobs", "{\"sample\":\"weir-jacket\"}");
    }
  }

  @AfterEach
  void close() {
    desk.close();
  }

  /** As after a kill: nothing is handed over but the folder. */
  void again() {
    desk.close();
    open();
  }

  String file() throws IOException {
    return Files.readString(folder.resolve("weir-jacket.yaml"));
  }

  Visitor.Reply edit(String at, String was, String value) {
    return maker.post(
        "/job/edit?" + JOB, "{\"at\":%s,\"was\":%s,\"value\":%s}".formatted(at, was, value));
  }

  String files() {
    return maker.get("/job/files?" + JOB).json().path("files").toString();
  }

  static JsonNode at(JsonNode entries) {
    return entries.at("/style/pieces/back/edges/side seam/allowance");
  }
}
