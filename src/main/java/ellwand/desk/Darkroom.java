package ellwand.desk;

import com.fasterxml.jackson.databind.JsonNode;
import ellwand.app.Converted;
import ellwand.app.PhotoRun;
import ellwand.file.photo.HowCut;
import ellwand.file.source.Folder;
import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.geometry.Segment;
import ellwand.problem.InputException;
import ellwand.trace.NamedEdge;
import ellwand.trace.Nick;
import ellwand.trace.PaperPiece;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Where photos of paper pieces are straightened and traced, one lot at a time: whoever brings
 * another takes the place of the last.
 */
final class Darkroom {

  private static final int MOST_BYTES = 40_000_000;
  private static final int MOST_PHOTOS = 8;
  private static final double FARTHEST_MM = 20_000;

  private int lot;
  private final Map<String, byte[]> photos = new LinkedHashMap<>();
  private Optional<PhotoRun> seen = Optional.empty();

  /**
   * Begins a lot.
   *
   * @return its number
   */
  synchronized int begin() {
    photos.clear();
    seen = Optional.empty();
    return ++lot;
  }

  /**
   * One more photo of it.
   *
   * @throws InputException if it is too large, or the last of too many
   */
  synchronized void add(int to, String file, byte[] photo) {
    check(to);
    InputException.unless(
        photo.length <= MOST_BYTES,
        file + " is larger than " + MOST_BYTES / 1_000_000 + " MB",
        "Take the photo with the camera's usual size");
    InputException.unless(
        photos.size() < MOST_PHOTOS,
        "that is more than " + MOST_PHOTOS + " photos",
        "Leave out those that show nothing new");
    photos.put((photos.size() + 1) + " " + file, photo);
  }

  /**
   * Straightens the lot and traces the pieces in it.
   *
   * @param dotsPerInch of scans; photos need none
   * @throws InputException if that cannot be
   */
  synchronized PhotoRun look(int at, OptionalDouble dotsPerInch) {
    check(at);
    Folder folder = Folder.EMPTY;
    for (Map.Entry<String, byte[]> photo : photos.entrySet()) {
      folder = folder.with(photo.getKey(), photo.getValue());
    }
    seen = Optional.of(PhotoRun.of(List.copyOf(photos.keySet()), folder, dotsPerInch));
    return seen.get();
  }

  /** What was seen in a lot. */
  synchronized PhotoRun seen(int at) {
    check(at);
    return seen.orElseThrow(Darkroom::gone);
  }

  private void check(int asked) {
    if (asked != lot) {
      throw gone();
    }
  }

  private static InputException gone() {
    return InputException.of(
        "other photos have been taken up since", "Choose the photos once more");
  }

  /**
   * The style of a piece as somebody has drawn it over the photo.
   *
   * @param drawn its number, name, edges with their lines, the notches to be kept, how it is cut
   * @throws InputException if it cannot be used
   */
  Newcomer style(int at, JsonNode drawn, String allowance, String included) {
    PhotoRun run = seen(at);
    int number = drawn.path("number").asInt();
    InputException.unless(
        number >= 1 && number <= run.pieces().size(),
        "there is no piece " + number,
        "Choose one of those that are to be seen");
    List<Nick> nicks = new ArrayList<>();
    List<Nick> all = run.piece(number).nicks();
    for (JsonNode kept : drawn.path("notches")) {
      nicks.add(all.get(Math.floorMod(kept.asInt(), all.size())));
    }
    String name = drawn.path("name").asText();
    PaperPiece piece = new PaperPiece(name, edges(drawn.path("edges")), nicks);
    HowCut how = new HowCut(edge(drawn, "onFold"), edge(drawn, "half"), edge(drawn, "grain"));
    Converted made = run.style(piece, number, how, Newcomer.request(name, allowance, included));
    return Newcomer.of(name, made);
  }

  private static Optional<String> edge(JsonNode drawn, String key) {
    return Optional.of(drawn.path(key).asText()).filter(name -> !name.isBlank());
  }

  /** Each begins where the one before ends, the first where the last does. */
  private static List<NamedEdge> edges(JsonNode drawn) {
    List<List<double[]>> lines = new ArrayList<>();
    Point at = new Point(0, 0);
    for (JsonNode edge : drawn) {
      List<double[]> ofEdge = new ArrayList<>();
      edge.path("lines").forEach(line -> ofEdge.add(numbers(line)));
      InputException.unless(!ofEdge.isEmpty(), "an edge has no line", "Load the page again");
      lines.add(ofEdge);
      double[] last = ofEdge.get(ofEdge.size() - 1);
      at = new Point(last[last.length - 2], last[last.length - 1]);
    }
    InputException.unless(!lines.isEmpty(), "the piece has no edges", "Load the page again");
    List<NamedEdge> edges = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      List<Segment> segments = new ArrayList<>();
      for (double[] line : lines.get(i)) {
        Point end = new Point(line[line.length - 2], line[line.length - 1]);
        segments.add(
            line.length == 4
                ? new Segment.Line(at, end)
                : new Segment.Cubic(
                    at, new Point(line[2], line[3]), new Point(line[4], line[5]), end));
        at = end;
      }
      edges.add(new NamedEdge(drawn.get(i).path("name").asText(), new Path(segments)));
    }
    return edges;
  }

  private static double[] numbers(JsonNode line) {
    double[] numbers = new double[line.size()];
    boolean right = numbers.length == 4 || numbers.length == 8;
    for (int i = 0; i < numbers.length; i++) {
      numbers[i] = line.get(i).asDouble(Double.NaN);
      right &= Math.abs(numbers[i]) <= FARTHEST_MM;
    }
    InputException.unless(right, "a line of the piece cannot be read", "Load the page again");
    return numbers;
  }
}
