package ellwand.file.alter;

import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.file.source.Measures;
import ellwand.file.source.Names;
import ellwand.file.source.Spot;
import ellwand.pattern.Alteration;
import ellwand.pattern.alter.CutApart;
import ellwand.pattern.alter.DrawnLine;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** {@code {cut apart: [yoke, lower back], from: yoke centre, to: yoke side, seam: yoke seam}}. */
final class CutApartForm implements StepForm {

  @Override
  public List<String> verbs() {
    return List.of("cut apart");
  }

  @Override
  public List<String> details() {
    List<String> keys = new ArrayList<>(LineDetails.KEYS);
    keys.add("seam");
    return keys;
  }

  @Override
  public Optional<Alteration> read(Spot step, String verb) {
    int before = step.problems().size();
    List<String> parts = Details.texts(step.get(verb));
    step.get(verb)
        .holds(
            parts.size() == 2 && !parts.get(0).equals(parts.get(1)),
            "the two parts need a name each",
            "Write for example cut apart: [yoke, lower back]");
    parts.forEach(name -> Names.check(step.get(verb), name));
    Optional<DrawnLine> line = LineDetails.line(step);
    Spot seam = step.get("seam");
    seam.text().ifPresent(name -> Names.check(seam, name));
    return step.problems().size() > before
        ? Optional.empty()
        : line.map(
            l ->
                new CutApart(
                    parts.get(0), parts.get(1), seam.text().orElse(l.from() + " to " + l.to()), l));
  }

  @Override
  public boolean write(Alteration alteration, ObjectNode into, Measures measures) {
    if (!(alteration instanceof CutApart cut)) {
      return false;
    }
    into.putArray("cut apart").add(cut.upper()).add(cut.lower());
    LineDetails.write(cut.line(), into);
    into.put("seam", cut.seam());
    return true;
  }
}
