package ellwand.many;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/**
 * Files in one piece: a zip file in which nothing is packed tighter, so that the same files give
 * the same bytes on every machine.
 *
 * @param files by name, in order; not to be changed
 */
record Parcel(Map<String, byte[]> files) {

  /** More than any job with its files and any marker has, bytes in all. */
  static final int MOST_BYTES = 64_000_000;

  Parcel {
    files = Collections.unmodifiableMap(new LinkedHashMap<>(files));
  }

  byte[] bytes() {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      for (Map.Entry<String, byte[]> file : files.entrySet()) {
        CRC32 sum = new CRC32();
        sum.update(file.getValue());
        ZipEntry entry = new ZipEntry(file.getKey());
        entry.setMethod(ZipEntry.STORED);
        entry.setSize(file.getValue().length);
        entry.setCrc(sum.getValue());
        entry.setTime(0);
        zip.putNextEntry(entry);
        zip.write(file.getValue());
      }
    } catch (IOException e) {
      throw new IllegalStateException("memory can always be written", e);
    }
    return bytes.toByteArray();
  }

  /**
   * What {@link #bytes} made.
   *
   * @throws TaskFailed if it is something else, or too large
   */
  static Parcel of(byte[] bytes) {
    Map<String, byte[]> files = new LinkedHashMap<>();
    int left = MOST_BYTES;
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(bytes))) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        byte[] file = zip.readNBytes(left + 1);
        left -= file.length;
        if (left < 0) {
          throw new TaskFailed("a parcel holds more than " + MOST_BYTES + " bytes");
        }
        files.put(entry.getName(), file);
      }
    } catch (IOException | IllegalArgumentException e) {
      throw new TaskFailed("a parcel is damaged", e);
    }
    return new Parcel(files);
  }

  /**
   * One of its files.
   *
   * @throws TaskFailed if it is not there
   */
  byte[] file(String name) {
    byte[] file = files.get(name);
    if (file == null) {
      throw new TaskFailed("a parcel lacks its " + name);
    }
    return file;
  }
}
