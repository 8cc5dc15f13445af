package ellwand.app;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.draw.photo.ControlPicture;
import ellwand.draw.photo.FadedPhoto;
import ellwand.file.photo.HowCut;
import ellwand.file.photo.PaperDrawing;
import ellwand.file.source.Folder;
import ellwand.file.source.Json;
import ellwand.geometry.Point;
import ellwand.geometry.Segment;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import ellwand.trace.DrawnArrow;
import ellwand.trace.NamedEdge;
import ellwand.trace.Nick;
import ellwand.trace.PaperPiece;
import ellwand.trace.Photos;
import ellwand.trace.Scans;
import ellwand.trace.Straightened;
import ellwand.trace.TracedPaper;
import ellwand.trace.Tracing;
import ellwand.units.Unit;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Collectors;

/**
 * What photos, or scans, of paper pieces show.
 *
 * @param files their names as the user gave them
 * @param pieces the largest first; at least one
 */
public record PhotoRun(List<String> files, Straightened straight, List<TracedPaper> pieces) {

  private static final int MOST_BYTES = 50_000_000;

  public PhotoRun {
    files = List.copyOf(files);
    pieces = List.copyOf(pieces);
  }

  /** Whether a file is a photo or a scan, by its content. */
  public static boolean isPhoto(String file, Folder from) {
    return Photos.looksLike(from.read(file, MOST_BYTES));
  }

  /**
   * Looks at photos of one table, or at scans of one piece, which overlap.
   *
   * @param dotsPerInch of scans; photos need none
   * @throws InputException if they cannot be straightened, or no piece is in them
   */
  public static PhotoRun of(List<String> files, Folder from, OptionalDouble dotsPerInch) {
    List<byte[]> bytes = files.stream().map(file -> from.read(file, MOST_BYTES)).toList();
    Straightened straight =
        dotsPerInch.isPresent()
            ? Scans.read(files, bytes, dotsPerInch.getAsDouble())
            : Photos.straighten(files, bytes);
    try {
      return new PhotoRun(files, straight, Tracing.of(straight));
    } catch (InputException e) {
      throw located(e, files.get(0));
    }
  }

  private static InputException located(InputException e, String file) {
    return new InputException(e.problems().stream().map(p -> p.at(file, 0)).toList());
  }

  /** The straightened picture as JPEG, from straight above. */
  public byte[] picture() {
    return FadedPhoto.jpeg(straight.picture().picture());
  }

  /** Where the centre of its first pixel, at the upper left, lies; mm, y up. */
  public Point cornerMm() {
    return straight.picture().mapping().mmAt(new Point(0, 0));
  }

  public double mmAPixel() {
    return straight.picture().mapping().mmAt(new Point(1, 0)).x() - cornerMm().x();
  }

  /**
   * A piece with its corners named by letters.
   *
   * @param number from 1
   */
  public PaperPiece piece(int number) {
    return PaperPiece.of(ConvertRun.plainName(files.get(0)), pieces.get(number - 1));
  }

  /**
   * The piece that is meant.
   *
   * @param asked its number; needed where there are several
   * @throws InputException if that is not clear, or it cannot be relied on
   */
  public int chosen(OptionalInt asked) {
    try {
      return asked.isPresent() ? numbered(asked.getAsInt()) : only();
    } catch (InputException e) {
      throw located(e, files.get(0));
    }
  }

  private int only() {
    InputException.unless(
        pieces.size() == 1,
        "%d pieces are to be seen, or things that look like one".formatted(pieces.size()),
        "Say which (--piece), 1 to %d, as numbered in the control picture"
            .formatted(pieces.size()));
    return numbered(1);
  }

  private int numbered(int number) {
    InputException.unless(
        number >= 1 && number <= pieces.size(),
        "there is no piece " + number,
        "Of the pieces to be seen, 1 to %d, name one (--piece)".formatted(pieces.size()));
    TracedPaper piece = pieces.get(number - 1);
    if (!piece.doubts().isEmpty()) {
      throw new InputException(
          piece.doubts().stream().map(d -> Problem.of(d.what(), d.remedy())).toList());
    }
    return number;
  }

  /**
   * The style of a piece, as traced or as somebody has altered it since.
   *
   * @throws InputException if it has no such edges, or cannot be used
   */
  public Converted style(PaperPiece piece, int number, HowCut how, ConvertRequest request) {
    Optional<DrawnArrow> arrow = pieces.get(number - 1).arrow().filter(DrawnArrow::sure);
    try {
      return ConvertRun.style(
          List.of(PaperDrawing.of(files.get(0), piece, how, arrow, said(piece, number, how))),
          request);
    } catch (InputException e) {
      throw located(e, files.get(0));
    }
  }

  private List<String> said(PaperPiece piece, int number, HowCut how) {
    List<String> said = new ArrayList<>(straight.notes());
    TracedPaper traced = pieces.get(number - 1);
    long lines = count(piece, Segment.Line.class);
    long curves = count(piece, Segment.Cubic.class);
    said.add(
        String.format(
            Locale.ROOT,
            "A place on the outline is true to %.1f mm or better (95 of 100)%s.",
            traced.errorMm(),
            straight.sheets().isEmpty() ? "" : ", by how well the points of the sheets fit"));
    said.add(
        "Its corners are guessed, and what is straight: %d edges of %d lines and %d curves."
            .formatted(piece.edges().size(), lines, curves));
    if (!piece.nicks().isEmpty()) {
      said.add("Nicks in its border are taken for notches: " + piece.nicks().size() + ".");
    }
    traced.arrow().filter(a -> how.grain().isEmpty()).ifPresent(a -> said.add(said(a)));
    return said;
  }

  private static String said(DrawnArrow arrow) {
    return arrow.sure()
        ? String.format(
            Locale.ROOT,
            "An arrow of %.0f cm is drawn on it, which is taken for its grain.",
            arrow.lengthMm() / 10)
        : "Arrows that run differently are drawn on it, and none is taken for its grain: name the"
            + " edge along which it runs (--grain), or say that it runs up the picture.";
  }

  private static long count(PaperPiece piece, Class<? extends Segment> kind) {
    return piece.edges().stream()
        .flatMap(e -> e.path().segments().stream())
        .filter(kind::isInstance)
        .count();
  }

  /**
   * The photo with what was traced in it.
   *
   * @param asked the number of the piece that was asked for
   */
  public Output control(String name, OptionalInt asked, Unit unit) {
    List<TracedPaper> shown =
        asked.isPresent() && asked.getAsInt() >= 1 && asked.getAsInt() <= pieces.size()
            ? List.of(pieces.get(asked.getAsInt() - 1))
            : pieces;
    String title =
        shown.size() > 1
            ? "Which piece is meant?"
            : "Traced in "
                + files.stream()
                    .map(f -> Path.of(f).getFileName().toString())
                    .collect(Collectors.joining(", "));
    return new Output(
        name, () -> ControlPicture.svg(straight, shown, unit, title, straight.notes()));
  }

  /** All of it as numbers, mm, y up. */
  public byte[] json() {
    ObjectNode root = Json.object();
    root.put("width", straight.picture().picture().getWidth());
    root.put("height", straight.picture().picture().getHeight());
    root.put("mmPerPixel", mmAPixel());
    put(root.putArray("cornerMm"), cornerMm());
    ArrayNode notes = root.putArray("notes");
    straight.notes().forEach(notes::add);
    ArrayNode list = root.putArray("pieces");
    for (TracedPaper traced : pieces) {
      PaperPiece piece = piece(traced.number());
      ObjectNode node = list.addObject();
      node.put("number", traced.number());
      node.put("errorMm", traced.errorMm());
      ArrayNode doubts = node.putArray("doubts");
      for (TracedPaper.Doubt doubt : traced.doubts()) {
        ObjectNode said = doubts.addObject();
        said.put("what", doubt.what());
        said.put("remedy", doubt.remedy());
        put(said.putArray("at"), doubt.at());
      }
      traced
          .arrow()
          .filter(DrawnArrow::sure)
          .ifPresent(
              arrow -> {
                ArrayNode ends = node.putArray("arrow");
                put(ends, arrow.from());
                put(ends, arrow.to());
              });
      ArrayNode edges = node.putArray("edges");
      for (NamedEdge edge : piece.edges()) {
        ObjectNode drawn = edges.addObject();
        drawn.put("name", edge.name());
        ArrayNode lines = drawn.putArray("lines");
        edge.path().segments().forEach(s -> put(lines.addArray(), s));
      }
      ArrayNode notches = node.putArray("notches");
      for (Nick nick : piece.nicks()) {
        ArrayNode at = notches.addArray();
        put(at, nick.mouth());
        put(at, nick.tip());
      }
    }
    return Json.bytes(root);
  }

  private static void put(ArrayNode to, Segment segment) {
    put(to, segment.start());
    if (segment instanceof Segment.Cubic curve) {
      put(to, curve.control1());
      put(to, curve.control2());
    }
    put(to, segment.end());
  }

  private static void put(ArrayNode to, Point point) {
    to.add(point.x());
    to.add(point.y());
  }
}
