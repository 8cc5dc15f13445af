/** The one place that runs the stages in order: job, pieces, lay, marker, check, figures, files. */
package ellwand.app;
