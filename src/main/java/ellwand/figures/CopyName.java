package ellwand.figures;

/** Which copy is meant. */
public record CopyName(String piece, String size, int garment) {}
