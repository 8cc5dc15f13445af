/** The reference sheet that is laid beside a paper piece for its photo, and how to take it. */
package ellwand.draw.reference;
