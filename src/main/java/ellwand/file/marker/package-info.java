/** Reading and writing markers in JSON. */
package ellwand.file.marker;
