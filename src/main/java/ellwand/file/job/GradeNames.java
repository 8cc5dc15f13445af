package ellwand.file.job;

import ellwand.file.source.Names;
import ellwand.file.source.Spelling;
import ellwand.file.source.Spot;
import ellwand.pattern.Draft;
import ellwand.pattern.GradeRule;
import ellwand.pattern.Outlined;
import ellwand.pattern.Sizes;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Tells of grade rules for pieces that are not drawn, and for points that they do not have. */
final class GradeNames {

  private GradeNames() {}

  /**
   * Checks all rules.
   *
   * @param read the pieces with an outline that could be read
   * @param drawn names of all pieces with an outline
   * @param pieces names of all pieces
   */
  static void check(
      Spot grade,
      Sizes sizes,
      List<Outlined> read,
      Collection<String> drawn,
      Collection<String> pieces) {
    Set<String> blocks =
        grade.sheet().blocks().values().stream()
            .map(block -> block.origin().path())
            .collect(Collectors.toSet());
    for (String piece : sizes.rules().keySet()) {
      // Where the sizes are those of a block, so are the rules.
      if (blocks.contains(grade.sheet().place(grade.get(piece).at()).file())) {
        continue;
      }
      Optional<Outlined> outlined = read.stream().filter(p -> p.name().equals(piece)).findFirst();
      if (outlined.isPresent()) {
        Optional<Draft> draft = outlined.get().start().draft();
        if (grade
            .get(piece)
            .holds(
                draft.isPresent(),
                "it is not drawn here, so no points of it move by rules",
                "Take it out: a copy has the sizes of its piece, a block is drafted anew in"
                    + " each")) {
          checkPoints(grade.get(piece), sizes.rules().get(piece).keySet(), draft.orElseThrow());
        }
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
    List<String> handles = handles(draft);
    for (String point : points) {
      grade
          .get(point)
          .holds(
              known.contains(point) || handles.contains(point),
              "no point or line of it is called " + Names.shown(point),
              known.isEmpty()
                  ? "Name its points with {point: name, at: [x, y]}"
                  : "Use one of " + String.join(", ", known));
    }
  }

  private static List<String> handles(Draft draft) {
    List<String> handles = new ArrayList<>();
    for (int i = 0; i < draft.nodes().size(); i++) {
      Draft.Node from = draft.nodes().get(i);
      Draft.Node to = draft.nodes().get((i + 1) % draft.nodes().size());
      if (to.arriving().isPresent()) {
        from.name().map(GradeRule::curveFrom).ifPresent(handles::add);
        to.name().map(GradeRule::curveTo).ifPresent(handles::add);
      }
    }
    return handles;
  }
}
