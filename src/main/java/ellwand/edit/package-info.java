/** Markers moved by hand: move, turn, exchange, slide; each step tells what it breaks. */
package ellwand.edit;
