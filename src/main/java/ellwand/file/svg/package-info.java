/** SVG drawings in, and styles as SVG out and back. */
package ellwand.file.svg;
