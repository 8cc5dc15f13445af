/**
 * The pattern: styles and their pieces on the sewing line, drawn as seen on the cloth's right side,
 * x along the piece's grain, top towards +x.
 */
package ellwand.pattern;
