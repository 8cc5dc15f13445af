/**
 * Work done by helpers on other machines: a cluster of one who asks and others who come and go. The
 * only place that sees Pekko, which lies in a jar of its own ({@link Engine#present}).
 */
package ellwand.many.cluster;
