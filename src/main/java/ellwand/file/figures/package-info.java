/** Writing what was reckoned: figures.json, order.json, compare.json and the cut tickets. */
package ellwand.file.figures;
