package ellwand.file.drawn;

import ellwand.geometry.Path;
import ellwand.geometry.Segment;
import java.util.List;
import java.util.Optional;

/**
 * The lines and words of one piece, on the page.
 *
 * @param outline closed
 * @param cutting the cutting line round it, where it is drawn
 * @param inner all others
 * @param texts written in it
 * @param name as its maker called it
 * @param labels its own and those of its groups that hold nothing else, from the inside out
 * @param said what was guessed about it so far
 */
record Parts(
    DrawnLine outline,
    Optional<DrawnLine> cutting,
    List<DrawnLine> inner,
    List<DrawnText> texts,
    Optional<String> name,
    List<Label> labels,
    List<String> said) {

  /** The same where the outline proves to be the cutting line round these edges. */
  Parts within(List<Stretch> edges) {
    List<Segment> segments = edges.stream().flatMap(e -> e.path().segments().stream()).toList();
    DrawnLine sewing = new DrawnLine(new Path(segments), true, outline.label());
    return new Parts(sewing, Optional.of(outline), inner, texts, name, labels, said);
  }

  List<DrawnLine> inner(Role role) {
    return inner.stream().filter(l -> l.label().role().filter(role::equals).isPresent()).toList();
  }

  Optional<DrawnLine> first(Role role) {
    return inner(role).stream().findFirst();
  }
}
