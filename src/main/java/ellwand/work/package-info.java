/**
 * How long work may take, how it is stopped, how it reports, and where its randomness comes from.
 */
package ellwand.work;
