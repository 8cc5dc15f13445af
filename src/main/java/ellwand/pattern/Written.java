package ellwand.pattern;

/**
 * A place in a file.
 *
 * @param file path as the user gave it
 * @param line 1 or more, 0 if unknown
 */
public record Written(String file, int line) {}
