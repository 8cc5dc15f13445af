/** What is wrong with what was asked for: where, what, and what to do about it. */
package ellwand.problem;
