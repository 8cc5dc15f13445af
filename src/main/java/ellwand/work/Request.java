package ellwand.work;

/**
 * How to search: how much, from which randomness, on how many threads, who may stop it and who
 * hears of it. What uses it up keeps the account ({@link Spending}), not the request. Handed from
 * the command line down to whatever searches; each stage passes a part on.
 *
 * @param threads 1 or more
 */
public record Request(Effort effort, Seed seed, int threads, Stop stop, Progress progress) {

  public Request {
    if (threads < 1) {
      throw new IllegalArgumentException("a search needs one thread or more");
    }
  }

  /** On one thread, by nobody stopped or heard. */
  public static Request of(Effort effort, Seed seed) {
    return new Request(effort, seed, 1, new Stop(), Progress.NONE);
  }

  public Request with(Effort other) {
    return new Request(other, seed, threads, stop, progress);
  }

  public Request with(Seed other) {
    return new Request(effort, other, threads, stop, progress);
  }

  public Request with(Stop other) {
    return new Request(effort, seed, threads, other, progress);
  }

  public Request with(Progress other) {
    return new Request(effort, seed, threads, stop, other);
  }

  public Request onThreads(int number) {
    return new Request(effort, seed, number, stop, progress);
  }

  /** The same with a part of the effort, {@code 0 < share <= 1}. */
  public Request part(double share) {
    return with(effort.part(share));
  }

  /** The same with an equal part of the effort, for one of so many searches. */
  public Request share(int parts) {
    return with(effort.share(parts));
  }
}
