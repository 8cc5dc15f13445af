package ellwand.pattern;

import ellwand.geometry.Path;

/** A line drawn inside a piece: a pocket's place, a dart, a pleat. Open or closed. */
public record InnerLine(String name, Path line) {}
