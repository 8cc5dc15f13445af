/** What a marker must keep, declared once; and the check that looks for what it breaks. */
package ellwand.rule;
