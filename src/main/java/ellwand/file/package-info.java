/** Reading and writing: jobs in YAML, markers and figures in JSON. */
package ellwand.file;
