package ellwand.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import ellwand.problem.InputException;
import java.io.IOException;
import java.net.Inet4Address;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.Socket;
import java.net.URI;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Each way in that is no way in. */
class GuardTest {

  @TempDir static Path folder;
  private static Desk desk;
  private static Visitor maker;
  private static Visitor stranger;

  @BeforeAll
  static void open() {
    desk = Desk.start(folder, "127.0.0.1", 0);
    maker = Visitor.of(desk);
    stranger = new Visitor(URI.create(desk.address()));
    maker.post("/jobs", "{\"sample\":\"weir-jacket\"}");
  }

  @AfterAll
  static void close() {
    desk.close();
  }

  @Test
  void whoHasTheKeyIsLetIn() {
    assertEquals(200, maker.get("/").status());
    assertEquals(200, maker.get("/jobs").status());
  }

  @Test
  void withoutTheKeyNothingIsTold() {
    for (String path :
        List.of("/", "/desk.js", "/jobs", "/job?name=weir-jacket.yaml", "/job/news", "/no")) {
      Visitor.Reply reply = stranger.get(path);
      assertEquals(403, reply.status(), path);
      assertFalse(reply.text().contains("weir"), path);
    }
    assertEquals(403, stranger.post("/jobs", "{\"sample\":\"weir-jacket\"}").status());
    assertEquals(403, stranger.get("/?key=0123456789abcdef0123456789abcdef").status());
    assertEquals(403, stranger.with("Cookie", "ellwand=").get("/jobs").status());
  }

  @Test
  void healthTellsNothingElse() {
    Visitor.Reply reply = stranger.get("/health");
    assertEquals(200, reply.status());
    assertEquals("ok", reply.text());
  }

  @Test
  void theKeyLeavesTheAddressAndStaysOutOfScripts() {
    Visitor.Reply reply = stranger.get("/?" + URI.create(desk.address()).getQuery());
    assertEquals(302, reply.status());
    assertEquals("/", reply.header("Location"));
    assertTrue(reply.header("Set-Cookie").contains("SameSite=Strict"));
    assertTrue(reply.header("Set-Cookie").contains("HttpOnly"));
  }

  /** A page elsewhere whose name was made to point here still sends its own name. */
  @Test
  void aPageOfAnotherNameIsRefused() {
    assertEquals(403, maker.with("Host", "evil.example").get("/jobs").status());
    assertEquals(403, maker.with("Host", "evil.example:8080").get("/").status());
    assertEquals(403, maker.with("Host", "127.0.0.1:1").get("/jobs").status());
  }

  @Test
  void anotherSitesPageIsRefused() {
    String job = "{\"sample\":\"weir-jacket\"}";
    assertEquals(403, maker.with("Origin", "http://evil.example").post("/jobs", job).status());
    assertEquals(403, maker.with("Origin", "null").post("/jobs", job).status());
    assertEquals(403, maker.with("Sec-Fetch-Site", "cross-site").get("/jobs").status());
    assertEquals(403, maker.with("Sec-Fetch-Site", "same-site").get("/jobs").status());
    assertEquals(200, maker.with("Sec-Fetch-Site", "same-origin").get("/jobs").status());
  }

  @Test
  void nobodyElseIsInvited() {
    Visitor.Reply asked =
        maker.with("Origin", "http://evil.example").ask("OPTIONS", "/jobs", new byte[0]);
    assertEquals("", asked.header("Access-Control-Allow-Origin"));
    assertEquals("", maker.get("/jobs").header("Access-Control-Allow-Origin"));
  }

  @Test
  void pagesRunNoScriptButTheirOwn() {
    for (String path : List.of("/", "/desk.js", "/jobs", "/no-such-page")) {
      String policy = maker.get(path).header("Content-Security-Policy");
      assertTrue(policy.contains("default-src 'self'"), path);
      assertFalse(policy.contains("unsafe"), path);
      assertTrue(policy.contains("frame-ancestors 'none'"), path);
    }
    assertEquals("nosniff", maker.get("/").header("X-Content-Type-Options"));
    String page = maker.get("/").text();
    assertFalse(page.contains("<script>") || page.contains(" onclick") || page.contains("style="));
  }

  @Test
  void namesNeverBecomePaths() {
    for (String name :
        List.of("../outside.yaml", "%2e%2e/outside.yaml", "/etc/passwd", "..%5Cx.yaml", "%00")) {
      Visitor.Reply reply = maker.get("/job?name=" + name);
      assertTrue(reply.status() == 404 || reply.status() == 400, name + " " + reply.status());
      assertFalse(reply.text().contains("root:"));
    }
    assertEquals(422, maker.post("/jobs", "{\"sample\":\"../../secret\"}").status());
    assertTrue(maker.get("/../../../etc/passwd").status() >= 400);
    assertTrue(maker.get("/%2e%2e/job.schema.json").status() >= 400);
  }

  @Test
  void whatIsTooLargeIsRefused() {
    byte[] large = new byte[42_000_000];
    assertEquals(413, maker.ask("POST", "/jobs", large).status());
    assertEquals(200, maker.get("/jobs").status(), "and the desk goes on");
  }

  @Test
  void nonsenseIsRefused() {
    assertEquals(422, maker.post("/jobs", "{").status());
    assertEquals(422, maker.post("/jobs", "[]").status());
    assertEquals(422, maker.post("/jobs", "[".repeat(100_000)).status());
    assertEquals(422, maker.post("/job/edit?name=weir-jacket.yaml", "{\"at\":[]}").status());
    assertEquals(422, maker.get("/job").status());
  }

  @Test
  void onlyThisMachineReachesIt() throws IOException {
    Path other = folder.resolve("other");
    assertThrows(InputException.class, () -> Desk.start(other, "0.0.0.0", 0));
    Optional<InetAddress> outward =
        NetworkInterface.networkInterfaces()
            .flatMap(NetworkInterface::inetAddresses)
            .filter(a -> a instanceof Inet4Address && !a.isLoopbackAddress())
            .findFirst();
    assumeTrue(outward.isPresent(), "this machine has no address but its own");
    int port = URI.create(desk.address()).getPort();
    assertThrows(IOException.class, () -> new Socket(outward.get(), port).close());
  }
}
