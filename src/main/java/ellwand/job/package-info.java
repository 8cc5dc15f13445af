/**
 * What is asked for, however it was read: a garment and its cloths, or an order in several sizes
 * and colours.
 */
package ellwand.job;
