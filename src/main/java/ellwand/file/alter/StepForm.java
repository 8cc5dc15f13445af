package ellwand.file.alter;

import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.file.source.Measures;
import ellwand.file.source.Spot;
import ellwand.pattern.Alteration;
import java.util.List;
import java.util.Optional;

/** How one kind of step is written: an entry whose first key says what is done. */
interface StepForm {

  /** The keys of which one says what is done: {@code mark}. */
  List<String> verbs();

  /** The other keys that it may have. */
  List<String> details();

  /**
   * The alteration, or nothing if it is wrong, which is reported.
   *
   * @param verb which of the verbs stands there
   */
  Optional<Alteration> read(Spot step, String verb);

  /** Writes an alteration, if it is of this kind. */
  boolean write(Alteration alteration, ObjectNode into, Measures measures);
}
