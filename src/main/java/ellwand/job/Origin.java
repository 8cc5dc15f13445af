package ellwand.job;

import java.util.Objects;

/**
 * Where a job was read from.
 *
 * @param path the job file as the user gave it, or a name for what is no file
 * @param sha256 hexadecimal, of the job followed by the files it names
 */
public record Origin(String path, String sha256) {

  public Origin {
    Objects.requireNonNull(path);
    Objects.requireNonNull(sha256);
  }
}
