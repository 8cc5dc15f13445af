/** Writing what was reckoned: order.json, compare.json and the cut tickets. */
package ellwand.file.figures;
