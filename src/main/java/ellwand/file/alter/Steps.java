package ellwand.file.alter;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.file.source.FileLine;
import ellwand.file.source.Measures;
import ellwand.file.source.Spelling;
import ellwand.file.source.Spot;
import ellwand.pattern.Alteration;
import ellwand.pattern.Step;
import ellwand.pattern.Written;
import ellwand.problem.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads and writes {@code alter:}, the steps in which a piece is altered. */
public final class Steps {

  private static final List<StepForm> FORMS =
      List.of(
          new MarkForm(),
          new RedrawForm(),
          new LengthenForm(),
          new ExtendForm(),
          new CutApartForm(),
          new TapeForm(),
          new UnfoldForm(),
          new FacingForm(),
          new TrueForm(),
          new SpreadForm(),
          new DartForm(),
          new MoveDartForm(),
          new CloseDartForm(),
          new PleatsForm());

  private Steps() {}

  /** All steps that can be read; the others are reported. */
  public static List<Step> read(Spot alter) {
    List<Step> steps = new ArrayList<>();
    for (Spot spot : alter.items()) {
      step(spot)
          .ifPresent(
              alteration -> {
                FileLine place = spot.sheet().place(spot.at());
                steps.add(
                    new Step(alteration, Optional.of(new Written(place.file(), place.line()))));
              });
    }
    return steps;
  }

  private static Optional<Alteration> step(Spot spot) {
    List<String> keys = List.copyOf(spot.entries().keySet());
    for (StepForm form : FORMS) {
      Optional<String> verb = form.verbs().stream().filter(keys::contains).findFirst();
      if (verb.isPresent()) {
        List<String> known = new ArrayList<>(List.of(verb.get()));
        known.addAll(form.details());
        boolean knows = true;
        for (String key : keys) {
          knows &=
              spot.get(key)
                  .holds(
                      known.contains(key),
                      "the step " + verb.get() + ": has no " + key + ":",
                      Spelling.nearest(key, form.details())
                          .map(k -> "Perhaps " + k + ": is meant")
                          .orElse(
                              form.details().isEmpty()
                                  ? "Take it out"
                                  : "It takes " + String.join(", ", form.details())));
        }
        return knows ? form.read(spot, verb.get()) : Optional.empty();
      }
    }
    spot.report(
        Problem.of(
            "it is not said what is done in this step",
            "Begin it with one of "
                + String.join(", ", FORMS.stream().flatMap(f -> f.verbs().stream()).toList())));
    return Optional.empty();
  }

  /** Writes steps in order. */
  public static void write(List<Step> steps, ArrayNode into, Measures measures) {
    for (Step step : steps) {
      ObjectNode node = into.addObject();
      if (FORMS.stream().noneMatch(f -> f.write(step.alteration(), node, measures))) {
        throw new IllegalStateException(step.alteration() + " has no form");
      }
    }
  }
}
