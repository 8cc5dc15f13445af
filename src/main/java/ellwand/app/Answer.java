package ellwand.app;

import java.util.List;

/** What came of a run: what is said of it, and the files that can be had. */
public interface Answer {

  /** Whether it came to what was asked for: something fits, no rule is broken. */
  boolean achieved();

  /** For people, some lines. */
  String text();

  /** The same in one line, for a list of many. */
  default String headline() {
    return text().lines().findFirst().orElse("");
  }

  /** The figures for programs, in UTF-8. */
  byte[] json();

  /** For people, beside the result, each a sentence. */
  default List<String> remarks() {
    return List.of();
  }

  /** Files, each of another name. */
  default List<Output> outputs() {
    return List.of();
  }
}
