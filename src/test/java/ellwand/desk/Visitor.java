package ellwand.desk;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;

/** Asks a desk as a browser would, or as nobody should: every header is the test's to say. */
final class Visitor {

  private static final JsonMapper JSON = new JsonMapper();

  private final URI address;
  private final Map<String, String> headers = new LinkedHashMap<>();

  /** What came back. */
  record Reply(int status, String head, byte[] body) {

    String text() {
      return new String(body, StandardCharsets.UTF_8);
    }

    JsonNode json() {
      try {
        return JSON.readTree(body);
      } catch (IOException e) {
        throw new AssertionError(head + text(), e);
      }
    }

    String header(String name) {
      return head.lines()
          .filter(l -> l.toLowerCase().startsWith(name.toLowerCase() + ":"))
          .map(l -> l.substring(name.length() + 1).strip())
          .findFirst()
          .orElse("");
    }
  }

  /** With the key that the address holds. */
  static Visitor of(Desk desk) {
    Visitor visitor = new Visitor(URI.create(desk.address()));
    String cookie = visitor.get("/?" + visitor.address.getQuery()).header("Set-Cookie");
    return visitor.with("Cookie", cookie.split(";")[0]);
  }

  Visitor(URI address) {
    this.address = address;
    headers.put("Host", address.getAuthority());
  }

  Visitor with(String header, String value) {
    Visitor other = new Visitor(address);
    other.headers.putAll(headers);
    other.headers.put(header, value);
    return other;
  }

  Reply get(String path) {
    return ask("GET", path, new byte[0]);
  }

  Reply post(String path, String json) {
    return with("Content-Type", "application/json")
        .ask("POST", path, json.getBytes(StandardCharsets.UTF_8));
  }

  Reply ask(String method, String path, byte[] body) {
    StringBuilder head = new StringBuilder(method + " " + path + " HTTP/1.1\r\n");
    headers.forEach((name, value) -> head.append(name).append(": ").append(value).append("\r\n"));
    head.append("Connection: close\r\nContent-Length: ").append(body.length).append("\r\n\r\n");
    try (Socket socket = new Socket(address.getHost(), address.getPort())) {
      socket.setSoTimeout(60_000);
      ByteArrayOutputStream all = new ByteArrayOutputStream();
      all.writeBytes(head.toString().getBytes(StandardCharsets.UTF_8));
      all.writeBytes(body);
      try {
        all.writeTo(socket.getOutputStream());
      } catch (IOException e) {
        // It would not hear the end; what it answered counts.
      }
      return reply(socket.getInputStream().readAllBytes());
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  private static Reply reply(byte[] all) {
    int end = 0;
    while (end + 3 < all.length
        && !(all[end] == '\r' && all[end + 1] == '\n' && all[end + 2] == '\r')) {
      end++;
    }
    String head = new String(all, 0, end, StandardCharsets.UTF_8);
    byte[] body = Arrays.copyOfRange(all, Math.min(all.length, end + 4), all.length);
    if (head.toLowerCase().contains("transfer-encoding: chunked")) {
      body = dechunked(body);
    }
    return new Reply(Integer.parseInt(head.split(" ")[1]), head, body);
  }

  private static byte[] dechunked(byte[] body) {
    ByteArrayOutputStream whole = new ByteArrayOutputStream();
    int at = 0;
    while (at < body.length) {
      int line = at;
      while (body[line] != '\r') {
        line++;
      }
      int size = Integer.parseInt(new String(body, at, line - at, StandardCharsets.US_ASCII), 16);
      whole.write(body, line + 2, size);
      at = line + 2 + size + 2;
    }
    return whole.toByteArray();
  }
}
