/**
 * Lengths, areas and angles as people write and read them; inside the program all are mm, mm² and
 * degrees.
 */
package ellwand.units;
