package ellwand.file;

/**
 * A place in a file.
 *
 * @param file as the user gave it
 * @param line from 1
 */
record Place(String file, int line) {}
