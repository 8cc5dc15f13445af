/** What is to be cut together, and markers: plain results, whoever placed them. */
package ellwand.lay;
