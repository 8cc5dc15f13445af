/** PDF pages with lines in. */
package ellwand.file.pdf;
