package ellwand.app;

import ellwand.cloth.Cloth;
import ellwand.cloth.Remnant;
import ellwand.job.Job;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import ellwand.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Finds the piece of cloth that a user names or measures. */
final class Shelf {

  private static final Pattern SIZE = Pattern.compile("(.*\\S)\\s*[xX×]\\s*(\\S.*)");

  private Shelf() {}

  /**
   * A remnant of the job by its name, or one of a size: width x length.
   *
   * @param cloth which cloth a size is a piece of; the first of the job unless said
   * @throws InputException if it is neither
   */
  static Remnant remnant(Job job, String on, Optional<String> cloth) {
    Optional<Remnant> named = job.remnants().stream().filter(r -> r.name().equals(on)).findFirst();
    if (named.isPresent()) {
      return named.get();
    }
    Matcher size = SIZE.matcher(on.strip());
    if (size.matches()) {
      double width;
      double length;
      try {
        width = Length.parse(size.group(1), job.unit()).mm();
        length = Length.parse(size.group(2), job.unit()).mm();
      } catch (InputException e) {
        throw unknown(job, on);
      }
      String of = cloth.orElse(job.cloths().get(0).name());
      return new Remnant(on, of, length, width, Optional.empty(), List.of());
    }
    throw unknown(job, on);
  }

  private static InputException unknown(Job job, String on) {
    List<String> ways = new ArrayList<>(job.remnants().stream().map(Remnant::name).toList());
    ways.add("a size such as '150cm x 1.2m'");
    return new InputException(
        Problem.of(
                "no remnant is called " + on + ", and it is no width and length",
                "Use " + String.join(", ", ways))
            .at(job.origin().path(), 0));
  }

  /**
   * The cloth that the remnant is a piece of.
   *
   * @throws InputException if the job has none of that name
   */
  static Cloth cloth(Job job, String name) {
    return job.cloths().stream()
        .filter(c -> c.name().equals(name))
        .findFirst()
        .orElseThrow(
            () ->
                new InputException(
                    Problem.of(
                            "the job has no cloth " + name,
                            "Use one of "
                                + String.join(
                                    ", ", job.cloths().stream().map(Cloth::name).toList()))
                        .at(job.origin().path(), 0)));
  }
}
