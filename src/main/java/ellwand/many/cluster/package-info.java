/**
 * Work done by helpers on other machines: one who asks, and others who come and go and have to do
 * with that one only. The only place that sees Pekko, which lies in a jar of its own ({@link
 * SecondJar}).
 */
package ellwand.many.cluster;
