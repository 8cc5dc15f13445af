package ellwand.file.source;

import java.util.regex.Pattern;

/** What cloths, pieces and edges may be called. */
public final class Names {

  /** No point, which joins piece and edge, and nothing that a file name cannot hold. */
  private static final Pattern USABLE =
      Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{M}\\p{N} _+'()-]{0,59}");

  private Names() {}

  /** Reports a name that cannot be used. */
  public static void check(Spot spot, String name) {
    spot.holds(
        USABLE.matcher(name).matches(),
        "'" + shown(name) + "' cannot be a name",
        "Use letters, digits, spaces and hyphens, 60 at most, and begin with a letter or digit");
  }

  /** Short and printable, to be quoted in a message. */
  public static String shown(String name) {
    String plain = name.replaceAll("\\p{Cntrl}", "?");
    return plain.length() > 60 ? plain.substring(0, 60) + "..." : plain;
  }
}
