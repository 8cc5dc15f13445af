/** The command line: reads arguments, calls {@code app}, shows what it returns. */
package ellwand.cli;
