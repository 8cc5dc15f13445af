/** Pieces traced in photos and scans, as drawings from which a style is made. */
package ellwand.file.photo;
