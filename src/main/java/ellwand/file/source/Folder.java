package ellwand.file.source;

import ellwand.problem.InputException;

/** Where a job and the files that it names are read from: the disk, or memory. */
@FunctionalInterface
public interface Folder {

  /** The files on disk. */
  Folder DISK = DiskFile::read;

  /** Holds nothing; files may be laid in it. */
  Folder EMPTY =
      (name, mostBytes) -> {
        throw Source.refused(name, 0, "there is no such file", "See that its path is right");
      };

  /**
   * All bytes of a file.
   *
   * @param name of the job as it was given, or of a file as the job names it, seen from the job
   * @param mostBytes how large it may be
   * @throws InputException if it is not there, cannot be read or is larger
   */
  byte[] read(String name, int mostBytes);

  /** The same with a file laid in it, in place of one of that name. */
  default Folder with(String name, byte[] bytes) {
    byte[] own = bytes.clone();
    return (asked, mostBytes) -> {
      if (!asked.equals(name)) {
        return read(asked, mostBytes);
      }
      if (own.length > mostBytes) {
        throw Source.tooLarge(name, mostBytes);
      }
      return own.clone();
    };
  }
}
