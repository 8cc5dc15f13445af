package ellwand.file.source;

import ellwand.problem.InputException;

/** Where a job and the files that it names are read from: the disk, or memory. */
public interface Folder {

  /** The files on disk. */
  Folder DISK = new DiskFiles();

  /** Holds nothing; files may be laid in it. */
  Folder EMPTY =
      new Folder() {
        @Override
        public byte[] read(String name, int mostBytes) {
          throw Source.refused(name, 0, "there is no such file", "See that its path is right");
        }

        @Override
        public boolean holds(String name) {
          return false;
        }
      };

  /**
   * All bytes of a file.
   *
   * @param name of the job as it was given, or of a file as the job names it, seen from the job
   * @param mostBytes how large it may be
   * @throws InputException if it is not there, cannot be read or is larger
   */
  byte[] read(String name, int mostBytes);

  /** Whether there is a file of that name, though it may not be to be read. */
  boolean holds(String name);

  /** The same with a file laid in it, in place of one of that name. */
  default Folder with(String name, byte[] bytes) {
    Folder under = this;
    byte[] own = bytes.clone();
    return new Folder() {
      @Override
      public byte[] read(String asked, int mostBytes) {
        if (!asked.equals(name)) {
          return under.read(asked, mostBytes);
        }
        if (own.length > mostBytes) {
          throw Source.tooLarge(name, mostBytes);
        }
        return own.clone();
      }

      @Override
      public boolean holds(String asked) {
        return asked.equals(name) || under.holds(asked);
      }
    };
  }
}
