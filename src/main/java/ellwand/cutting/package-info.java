/**
 * From sewing line to cutting line: allowances, corners, opened halves, panels, growth for
 * shrinkage.
 */
package ellwand.cutting;
