package ellwand.pattern;

import static ellwand.pattern.Cut.How.FOLD;

import ellwand.problem.InputException;
import ellwand.problem.Problem;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Edges of one garment that something is sewn to, each as often as it is there: of a piece cut in
 * pairs twice for each pair, of a half piece once for each whole it opens to where the edge runs on
 * across the fold, and twice where it does not.
 */
record Joined(List<Part> parts) {

  private static final Pattern SO_OFTEN = Pattern.compile("(\\d{1,4})\\s*x\\s+(.+)");

  /**
   * One of the edges.
   *
   * @param edge as piece.edge
   * @param times how often it is there, 1 or more
   * @param lengthMm of one of them when sewn
   * @param made what makes it shorter than it is cut: {@code darts folded}
   * @param assumed whether nobody said how often, though more than one or one pair of the piece is
   *     cut, so that some might be layers that are sewn as one
   */
  record Part(String edge, int times, double lengthMm, Set<String> made, boolean assumed) {}

  Joined {
    parts = List.copyOf(parts);
  }

  /**
   * Finds edges.
   *
   * @param edges each as piece.edge, or {@code 2 x piece.edge} where it is sewn another number of
   *     times than it is cut
   * @param pieces those of the same style and size, computed ones included
   * @param cloth whose number counts, for pieces that are cut from it; else that of the first cloth
   * @throws InputException naming every edge that is not there, or there twice
   */
  static Joined of(List<String> edges, List<Piece> pieces, Optional<String> cloth) {
    List<Problem> problems = new ArrayList<>();
    List<Part> parts = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    for (String text : edges) {
      Named named = Named.of(text, pieces);
      Optional<Piece> piece = named.owner(pieces);
      if (piece.isEmpty()) {
        problems.add(Problem.of("no edge is called " + named.edge, there(named.edge, pieces)));
      } else if (!seen.add(named.edge)) {
        problems.add(
            Problem.of(
                named.edge + " stands there twice",
                "It counts as often as it is cut; say otherwise with a number, for example 2 x "
                    + named.edge));
      } else if (named.times.filter(n -> n < 1).isPresent()) {
        problems.add(Problem.of(text + " is not sewn at all", "Take it out"));
      } else {
        parts.add(part(named, piece.get(), cloth));
      }
    }
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
    return new Joined(parts);
  }

  /** An edge as somebody wrote it, with how often it is sewn if that is said. */
  private record Named(String edge, Optional<Integer> times) {

    static Named of(String text, List<Piece> pieces) {
      Named plain = new Named(text, Optional.empty());
      Matcher matcher = SO_OFTEN.matcher(text);
      return plain.owner(pieces).isEmpty() && matcher.matches()
          ? new Named(matcher.group(2), Optional.of(Integer.valueOf(matcher.group(1))))
          : plain;
    }

    Optional<Piece> owner(List<Piece> pieces) {
      return pieces.stream()
          .filter(p -> p.edges().stream().anyMatch(e -> edge.equals(p.name() + "." + e.name())))
          .findFirst();
    }
  }

  private static Part part(Named named, Piece piece, Optional<String> cloth) {
    String edge = named.edge.substring(piece.name().length() + 1);
    Optional<Cut> cut = cloth.flatMap(piece::cutFrom).or(() -> piece.cuts().stream().findFirst());
    Optional<String> fold = piece.fold().filter(f -> cut.stream().allMatch(c -> c.how() == FOLD));
    boolean acrossFold = fold.filter(f -> touch(piece, f, edge)).isPresent();
    int cutOut = cut.map(Cut::pieces).orElse(1);
    int times = fold.isPresent() && !acrossFold ? 2 * cutOut : cutOut;
    return new Part(
        named.edge,
        named.times.orElse(times),
        piece.edge(edge).sewnMm() * (acrossFold ? 2 : 1),
        made(piece.edge(edge)),
        named.times.isEmpty() && cut.filter(c -> c.count() > 1).isPresent());
  }

  private static Set<String> made(Edge edge) {
    Set<String> made = new LinkedHashSet<>();
    for (Intake intake : edge.intakes()) {
      made.add(
          switch (intake.kind()) {
            case DART -> "darts sewn";
            case PLEAT -> "pleats folded";
            case TUCK -> "tucks sewn";
          });
    }
    edge.gathers().forEach(stretch -> made.add(stretch.made()));
    return made;
  }

  private static boolean touch(Piece piece, String fold, String edge) {
    List<Edge> edges = piece.edges();
    for (int i = 0; i < edges.size(); i++) {
      String one = edges.get(i).name();
      String next = edges.get((i + 1) % edges.size()).name();
      if (one.equals(fold) && next.equals(edge) || one.equals(edge) && next.equals(fold)) {
        return true;
      }
    }
    return false;
  }

  /** The cloths that all pieces of these edges are cut from, in the order of the first piece. */
  static List<String> cloths(List<String> edges, List<Piece> pieces) {
    List<Piece> owners =
        edges.stream().flatMap(e -> Named.of(e, pieces).owner(pieces).stream()).toList();
    return owners.stream()
        .limit(1)
        .flatMap(first -> first.cuts().stream())
        .map(Cut::cloth)
        .filter(cloth -> owners.stream().allMatch(piece -> piece.cutFrom(cloth).isPresent()))
        .toList();
  }

  /** Finished length of all of them together, mm. */
  double mm() {
    return parts.stream().mapToDouble(p -> p.times * p.lengthMm).sum();
  }

  /** Whether so many things can be sewn to a whole number of each edge. */
  boolean sharedBy(int many) {
    return parts.stream().allMatch(p -> p.times % many == 0);
  }

  /** What one of so many is sewn to. */
  Joined among(int many) {
    return new Joined(
        parts.stream()
            .map(p -> new Part(p.edge, p.times / many, p.lengthMm, p.made, p.assumed))
            .toList());
  }

  /** The most things that can be sewn to the same of each edge. */
  int most() {
    return parts.stream().mapToInt(Part::times).reduce(0, Joined::commonDivisor);
  }

  static int commonDivisor(int a, int b) {
    return b == 0 ? a : commonDivisor(b, a % b);
  }

  /** What to write where an edge is not sewn as often as it is cut; nothing where that was said. */
  Optional<String> layers() {
    return parts.stream()
        .filter(Part::assumed)
        .findFirst()
        .map(p -> "where layers are sewn as one, say how often: 1 x " + p.edge);
  }

  /** What makes these edges shorter than they are cut; empty if nothing does. */
  Set<String> made() {
    Set<String> made = new LinkedHashSet<>();
    parts.forEach(p -> made.addAll(p.made));
    return made;
  }

  /** {@code front.waist + 2 x back.waist}. */
  @Override
  public String toString() {
    return parts.stream()
        .map(p -> (p.times == 1 ? "" : p.times + " x ") + p.edge)
        .collect(Collectors.joining(" + "));
  }

  /** What to write in place of an edge that is not there: those of its piece, if that is. */
  private static String there(String edge, List<Piece> pieces) {
    return pieces.stream()
        .filter(piece -> edge.startsWith(piece.name() + "."))
        .findFirst()
        .map(piece -> "Use one of " + String.join(", ", edges(piece)))
        .orElse(
            "Write piece.edge, for example "
                + (pieces.isEmpty() ? "front.waist" : edges(pieces.get(0)).get(0))
                + "; a computed piece stands above those that join it");
  }

  private static List<String> edges(Piece piece) {
    return piece.edges().stream().map(edge -> piece.name() + "." + edge.name()).toList();
  }
}
