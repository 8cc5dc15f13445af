/** What every reader and writer builds on: files, trees that know their lines, whole writing. */
package ellwand.file.source;
