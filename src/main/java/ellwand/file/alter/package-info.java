/** How the steps of {@code alter:} are written in a job. */
package ellwand.file.alter;
