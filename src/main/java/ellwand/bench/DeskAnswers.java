package ellwand.bench;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.BufferedReader;
import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How soon the desk answers: started as a program of its own and asked over HTTP as its page asks.
 * What a browser takes to draw comes on top.
 */
public final class DeskAnswers implements AutoCloseable {

  private static final JsonMapper JSON = new JsonMapper();
  private static final Pattern NAMED =
      Pattern.compile("(?:from |src=|href=)[\"']([./\\w-]+[.](?:js|css|svg))[\"']");
  private static final int DRAGS = 200;
  private static final long PATIENCE_SECONDS = 300;
  private static final int PIECES = 10;

  private final HttpClient client = HttpClient.newHttpClient();
  private final BlockingQueue<String> heard = new LinkedBlockingQueue<>();
  private final Path folder = Files.createTempDirectory("desk");
  private final Process process;
  private final URI address;
  private final String cookie;

  private DeskAnswers(List<String> program) throws IOException, InterruptedException {
    List<String> line = new ArrayList<>(program);
    line.addAll(List.of("desk", folder.toString(), "--no-browser"));
    long start = System.nanoTime();
    process = new ProcessBuilder(line).redirectError(ProcessBuilder.Redirect.INHERIT).start();
    BufferedReader out = process.inputReader();
    String said = out.readLine();
    address = URI.create(said.substring(said.indexOf("http")));
    row("start of the program until it is at its address", System.nanoTime() - start, "2 s");
    HttpResponse<String> first = send(HttpRequest.newBuilder(address));
    cookie = first.headers().firstValue("Set-Cookie").orElseThrow().split(";")[0];
  }

  /**
   * Prints a table of what was measured.
   *
   * @param program the command line that starts Ellwand, for example {@code java -jar ellwand.jar}
   */
  public static void main(String[] program) throws IOException, InterruptedException {
    System.out.println("|what|measured|wanted|");
    System.out.println("|---|---|---|");
    try (DeskAnswers desk = new DeskAnswers(List.of(program))) {
      desk.open();
      desk.drags(100, "50 ms");
      desk.drags(1000, "150 ms");
    }
  }

  private void open() throws IOException, InterruptedException {
    String name = post("/jobs", "", "{\"sample\":\"weir-jacket\"}").path("name").asText();
    long start = System.nanoTime();
    follow("/", new HashSet<>());
    get("/jobs");
    String size = JSON.readTree(get("/job" + of(name))).path("sizes").path(0).path("name").asText();
    get("/job/tables" + of(name));
    get("/job/pieces" + of(name) + "&size=" + encoded(size));
    row(
        "page's files and the pieces to draw, the first time",
        System.nanoTime() - start,
        "1 s, drawn");
    memory("memory of the server, page open");
    row("Lay of the sample until its first marker", firstMarker(name), "2 s");
    memory("memory after a lay");
  }

  /** Gets a file of the page, and all that it names. */
  private void follow(String file, Set<String> got) throws IOException, InterruptedException {
    if (got.add(file)) {
      Matcher names = NAMED.matcher(get(file));
      while (names.find()) {
        follow(URI.create(file).resolve(names.group(1)).toString(), got);
      }
    }
  }

  /** One after another, each a slide of up to 400 mm each way, as it is answered. */
  private void drags(int copies, String wanted) throws IOException, InterruptedException {
    String name = copies + ".yaml";
    Files.writeString(folder.resolve(name), job(copies / PIECES));
    row("Lay of " + copies + " copies until the first marker", firstMarker(name), "");
    SplittableRandom random = new SplittableRandom(1);
    List<Double> millis = new ArrayList<>();
    double before = cpuMillis();
    for (int i = 0; i < DRAGS; i++) {
      String step =
          "{\"do\":\"slide\",\"copies\":[%d],\"along\":%d,\"across\":%d}"
              .formatted(
                  random.nextInt(copies), random.nextInt(-400, 400), random.nextInt(-400, 400));
      long start = System.nanoTime();
      post("/job/table/step", of(name) + "&cloth=main", step);
      millis.add((System.nanoTime() - start) / 1e6);
    }
    double cpu = (cpuMillis() - before) / DRAGS;
    Collections.sort(millis);
    System.out.printf(Locale.ROOT, "|CPU of a drag at %d copies, mean|%.1f ms||%n", copies, cpu);
    System.out.printf(
        Locale.ROOT,
        "|drags at %d copies: median, 95th percentile|%.0f ms, %.0f ms|%s|%n",
        copies,
        millis.get(DRAGS / 2),
        millis.get(DRAGS * 95 / 100),
        wanted);
    memory("memory with " + copies + " copies");
  }

  /** Nanoseconds until the first marker; the search has stopped when this returns. */
  private long firstMarker(String name) throws IOException, InterruptedException {
    listen(name);
    get("/job/tables" + of(name));
    heard.clear();
    long start = System.nanoTime();
    post("/job/table/lay", of(name) + "&cloth=main", "{\"seconds\":120}");
    String event;
    do {
      event = heard.poll(PATIENCE_SECONDS, TimeUnit.SECONDS);
    } while (event != null && !event.equals("event: marker"));
    if (event == null) {
      throw new IllegalStateException("no marker of " + name);
    }
    long taken = System.nanoTime() - start;
    post("/job/table/keep", of(name) + "&cloth=main", "{}");
    while (!"event: searched".equals(heard.poll(PATIENCE_SECONDS, TimeUnit.SECONDS))) {
      // The search's last words.
    }
    return taken;
  }

  private void listen(String name) throws InterruptedException {
    client
        .sendAsync(
            request("/job/news" + of(name)).header("Accept", "text/event-stream").build(),
            HttpResponse.BodyHandlers.ofLines())
        .thenAcceptAsync(lines -> lines.body().forEach(heard::add));
    TimeUnit.SECONDS.sleep(1);
  }

  /** Ten bowed pieces of 40 corners for each garment. */
  private static String job(int garments) {
    StringBuilder job =
        new StringBuilder(
            "ellwand: 1\nunit: mm\ntitle: bench\nstyle:\n  name: bench\n  size: one\n"
                + "  allowance: 0\n  pieces:\n");
    SplittableRandom random = new SplittableRandom(1);
    for (int i = 0; i < PIECES; i++) {
      double radius = 50 + random.nextInt(100);
      job.append("    p").append(i).append(": {cut: {main: 1}, outline: [");
      for (int k = 0; k < 40; k++) {
        double at = 2 * Math.PI * k / 40;
        double far = radius * (1 + 0.2 * Math.sin(3 * at + i));
        job.append(
            String.format(
                Locale.ROOT, "[%.1f, %.1f],", far * Math.cos(at), 1.4 * far * Math.sin(at)));
      }
      job.setLength(job.length() - 1);
      job.append("]}\n");
    }
    return job.append("cloths:\n  main: {width: 1500, gap: 2, fold: open}\norder: {garments: ")
        .append(garments)
        .append("}\n")
        .toString();
  }

  private static String of(String name) {
    return "?name=" + encoded(name);
  }

  private static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }

  private String get(String path) throws IOException, InterruptedException {
    return send(request(path)).body();
  }

  private JsonNode post(String path, String query, String body)
      throws IOException, InterruptedException {
    HttpRequest.Builder request =
        request(path + query)
            .header("Content-Type", "application/json")
            .POST(HttpRequest.BodyPublishers.ofString(body));
    return JSON.readTree(send(request).body());
  }

  private HttpRequest.Builder request(String path) {
    return HttpRequest.newBuilder(address.resolve(path)).header("Cookie", cookie);
  }

  private HttpResponse<String> send(HttpRequest.Builder request)
      throws IOException, InterruptedException {
    HttpResponse<String> answer =
        client.send(request.build(), HttpResponse.BodyHandlers.ofString());
    if (answer.statusCode() >= 400) {
      throw new IllegalStateException(answer + " " + answer.body());
    }
    return answer;
  }

  private static void row(String what, long nanos, String wanted) {
    System.out.printf(Locale.ROOT, "|%s|%.2f s|%s|%n", what, nanos / 1e9, wanted);
  }

  /** That the server has used so far, compiling and all. */
  private double cpuMillis() {
    return process.info().totalCpuDuration().map(d -> d.toNanos() / 1e6).orElse(Double.NaN);
  }

  /** As Linux tells it. */
  private void memory(String what) throws IOException {
    Path status = Path.of("/proc/" + process.pid() + "/status");
    if (Files.exists(status)) {
      for (String line : Files.readAllLines(status)) {
        if (line.startsWith("VmRSS:")) {
          long kb = Long.parseLong(line.replaceAll("\\D", ""));
          System.out.printf("|%s|%d MB||%n", what, kb / 1024);
        }
      }
    }
  }

  @Override
  public void close() {
    process.destroy();
  }
}
