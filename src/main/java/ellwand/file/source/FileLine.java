package ellwand.file.source;

/**
 * A place in a file.
 *
 * @param file as the user gave it
 * @param line from 1
 */
public record FileLine(String file, int line) {}
