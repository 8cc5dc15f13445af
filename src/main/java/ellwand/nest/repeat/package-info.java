/**
 * The cloth's repeat: which pieces hang together by their matches, and where their marks may lie.
 */
package ellwand.nest.repeat;
