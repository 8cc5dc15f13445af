/** Reading what is to be cut: jobs and orders in YAML. */
package ellwand.file.job;
