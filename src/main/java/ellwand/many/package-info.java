/**
 * Work as bytes, done here or on other machines: tasks, who takes them, and what is asked in them.
 */
package ellwand.many;
