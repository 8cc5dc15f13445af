package ellwand.file.svg;

import java.util.Random;

/** Path data with every command. */
final class RandomPaths {

  private RandomPaths() {}

  static String data(Random random) {
    StringBuilder d = new StringBuilder("M" + n(random) + " " + n(random));
    char before = 'M';
    for (int i = 0; i < 3 + random.nextInt(12); i++) {
      char command = "LlHhVvCcSsQqTtAaMmZz".charAt(random.nextInt(20));
      if ("Ss".indexOf(command) >= 0 && "CcSs".indexOf(before) < 0
          || "Tt".indexOf(command) >= 0 && "QqTt".indexOf(before) < 0) {
        // Batik mirrors the handle also of a curve that was closed since; SVG does not.
        command = 'l';
      }
      before = command;
      d.append(random.nextBoolean() ? " " : "\n").append(command);
      int numbers =
          switch (Character.toUpperCase(command)) {
            case 'H', 'V' -> 1;
            case 'L', 'T', 'M' -> 2;
            case 'S', 'Q' -> 4;
            case 'C' -> 6;
            default -> 0;
          };
      for (int k = 0; k < numbers; k++) {
        d.append(random.nextBoolean() ? "," : " ").append(n(random));
      }
      if (Character.toUpperCase(command) == 'A') {
        d.append(150 + random.nextInt(90))
            .append(' ')
            .append(150 + random.nextInt(90))
            .append(' ')
            .append(random.nextInt(180))
            .append(random.nextBoolean() ? " 0 1 " : " 1,0,")
            .append(n(random))
            .append(' ')
            .append(n(random));
      }
    }
    return d.toString().replace(" ,", " ").replaceAll("([A-Za-z]),", "$1 ");
  }

  private static String n(Random random) {
    return Double.toString(Math.rint(random.nextDouble() * 2000 - 1000) / 10);
  }
}
