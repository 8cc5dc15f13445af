/**
 * How long work may take, how it is stopped, how it reports, and where its randomness comes from.
 *
 * <p>{@link ellwand.work.Stop} may be set and read by any thread; everything else is immutable but
 * {@link ellwand.work.Spending}, which belongs to one thread.
 */
package ellwand.work;
