package ellwand.many;

import ellwand.app.Hands;
import ellwand.file.job.JobReader;
import ellwand.file.job.OrderJobReader;
import ellwand.file.source.Folder;
import ellwand.job.Job;
import ellwand.job.OrderJob;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.Collections;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;

/**
 * A job's own text and the files that it names, from which it can be read anywhere.
 *
 * @param name of the job file, as it was given
 * @param order whether it is an order's
 * @param files by the names under which the job asks for them; not to be changed
 */
public record JobFiles(String name, boolean order, Map<String, byte[]> files) {

  public JobFiles {
    files = Collections.unmodifiableMap(new LinkedHashMap<>(files));
  }

  /**
   * A job with the files that it was read from.
   *
   * @param what the job or the order
   * @param style the job itself, or what the garments of the order are
   */
  public record Read<J>(J what, Optional<Job> style, JobFiles files) {

    /**
     * Those of a workshop; an order without a style has no markers to be made.
     *
     * @param seeds how many race for each marker, 1 or more
     */
    public Hands hands(Workshop workshop, int seeds) {
      return style.<Hands>map(job -> new TaskHands(workshop, files, job, seeds)).orElse(Hands.OWN);
    }
  }

  /**
   * Reads a job that is to be laid.
   *
   * @throws ellwand.problem.InputException with every problem that could be found
   */
  public static Read<Job> job(String name, Folder from) {
    return read(name, from, false, JobReader::toLay, Optional::of);
  }

  /**
   * Reads an order.
   *
   * @throws ellwand.problem.InputException with every problem that could be found
   */
  public static Read<OrderJob> order(String name, Folder from) {
    return read(name, from, true, OrderJobReader::read, OrderJob::style);
  }

  private static <J> Read<J> read(
      String name,
      Folder from,
      boolean order,
      BiFunction<String, Folder, J> reader,
      Function<J, Optional<Job>> style) {
    Map<String, byte[]> files = new LinkedHashMap<>();
    Folder noting =
        new Folder() {
          @Override
          public byte[] read(String asked, int mostBytes) {
            byte[] bytes = from.read(asked, mostBytes);
            files.put(asked, bytes.clone());
            return bytes;
          }

          @Override
          public boolean holds(String asked) {
            return from.holds(asked);
          }
        };
    J job = reader.apply(name, noting);
    return new Read<>(job, style.apply(job), new JobFiles(name, order, files));
  }

  /** Hexadecimal SHA-256 of some words and of the job with its files. */
  public String digest(List<String> words) {
    Map<String, byte[]> all = new LinkedHashMap<>();
    all.put("words", String.join("\0", words).getBytes(StandardCharsets.UTF_8));
    files.forEach((file, bytes) -> all.put("/" + file, bytes));
    try {
      return HexFormat.of()
          .formatHex(MessageDigest.getInstance("SHA-256").digest(new Parcel(all).bytes()));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  /** Whether another holds the same. */
  boolean same(JobFiles other) {
    return name.equals(other.name)
        && order == other.order
        && List.copyOf(files.keySet()).equals(List.copyOf(other.files.keySet()))
        && files.keySet().stream()
            .allMatch(file -> Arrays.equals(files.get(file), other.files.get(file)));
  }

  /** The job itself, or what the garments of the order are. */
  Job style() {
    Folder folder = Folder.EMPTY;
    for (Map.Entry<String, byte[]> file : files.entrySet()) {
      folder = folder.with(file.getKey(), file.getValue());
    }
    return order
        ? OrderJobReader.read(name, folder)
            .style()
            .orElseThrow(() -> new TaskFailed("the order has no style"))
        : JobReader.read(name, folder);
  }
}
