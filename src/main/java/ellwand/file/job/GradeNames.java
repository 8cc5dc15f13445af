package ellwand.file.job;

import ellwand.file.source.Names;
import ellwand.file.source.Spelling;
import ellwand.file.source.Spot;
import ellwand.pattern.Draft;
import ellwand.pattern.Sizes;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Tells of grade rules for pieces that are not drawn, and for points that they do not have. */
final class GradeNames {

  private GradeNames() {}

  /**
   * Checks all rules.
   *
   * @param drafts that could be read
   * @param drawn names of all pieces with an outline
   * @param pieces names of all pieces
   */
  static void check(
      Spot grade,
      Sizes sizes,
      List<Draft> drafts,
      Collection<String> drawn,
      Collection<String> pieces) {
    for (String piece : sizes.rules().keySet()) {
      Optional<Draft> draft = drafts.stream().filter(d -> d.name().equals(piece)).findFirst();
      if (draft.isPresent()) {
        checkPoints(grade.get(piece), sizes.rules().get(piece).keySet(), draft.get());
      } else {
        grade
            .get(piece)
            .holds(
                drawn.contains(piece),
                "no piece called " + Names.shown(piece) + " is drawn",
                Spelling.nearest(piece, pieces)
                    .filter(p -> !p.equals(piece))
                    .map(p -> "Perhaps " + p + " is meant")
                    .orElse("Take it out: only pieces with an outline are graded"));
      }
    }
  }

  private static void checkPoints(Spot grade, Collection<String> points, Draft draft) {
    List<String> known =
        Stream.concat(
                draft.nodes().stream().flatMap(n -> n.name().stream()),
                draft.innerLines().stream().map(l -> l.name()))
            .toList();
    for (String point : points) {
      grade
          .get(point)
          .holds(
              known.contains(point),
              "no point or line of it is called " + Names.shown(point),
              known.isEmpty()
                  ? "Name its points with {point: name, at: [x, y]}"
                  : "Use one of " + String.join(", ", known));
    }
  }
}
