/** Control pictures: photos of paper pieces with what was traced in them. */
package ellwand.draw.photo;
