package ellwand.file.job;

import ellwand.file.source.Spot;
import ellwand.pattern.Allowance;
import ellwand.pattern.Gathered;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/** What the entries of computed rectangles have in common. */
record RectangleHead(Spot piece, PieceHead head, String rule) {

  private static final List<String> ONLY_DRAWN =
      List.of("outline", "from", "alter", "fold", "lines");

  /**
   * Reports entries that only drawn pieces have, and edges that it does not have.
   *
   * @param edges that it has
   */
  void check(List<String> edges) {
    for (String key : ONLY_DRAWN) {
      piece
          .get(key)
          .holds(
              !piece.get(key).present(),
              "a " + words() + " has no " + key + ": of its own",
              "Take it out, or draw the piece without " + rule + ":");
    }
    piece
        .get("edges")
        .entries()
        .forEach(
            (name, edge) -> {
              edge.holds(
                  edges.contains(name),
                  "a " + words() + " has no edge of this name",
                  "Use " + String.join(", ", new TreeSet<>(edges)));
              edge.holds(
                  !edge.get("from").present() && !edge.get("to").present(),
                  "the edges of a " + words() + " run where they must",
                  "Take from: and to: out");
            });
  }

  private String words() {
    return rule.equals("band") ? rule : rule + " rectangle";
  }

  /** An edge's allowance, or that of the piece; nothing if it is wrong. */
  Optional<Allowance> allowance(String edge) {
    Spot own = piece.get("edges").get(edge).get("allowance");
    return own.present()
        ? head.own(own).map(a -> head.allowance().map(a::or).orElse(a))
        : head.allowance();
  }

  /** Those of a gathered or pleated one. */
  Optional<Gathered.Seams> seams() {
    check(List.of(Gathered.TOP, Gathered.HEM, Gathered.SIDE));
    Optional<Allowance> top = allowance(Gathered.TOP);
    Optional<Allowance> hem = allowance(Gathered.HEM);
    Optional<Allowance> side = allowance(Gathered.SIDE);
    boolean turnedBack = piece.get("edges").get(Gathered.HEM).get("turned-back").isTrue();
    return top.isEmpty() || hem.isEmpty() || side.isEmpty()
        ? Optional.empty()
        : Optional.of(new Gathered.Seams(top.get(), hem.get(), side.get(), turnedBack));
  }

  /** How many panels are asked for; 0 where nothing is said. */
  int panels() {
    Spot panels = piece.get(rule).get("panels");
    return panels.present() ? panels.node().asInt() : 0;
  }
}
