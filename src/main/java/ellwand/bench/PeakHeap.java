package ellwand.bench;

import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;

/** The most heap in use since it was last reset, garbage included. */
final class PeakHeap {

  private PeakHeap() {}

  static void reset() {
    System.gc();
    ManagementFactory.getMemoryPoolMXBeans().forEach(MemoryPoolMXBean::resetPeakUsage);
  }

  static long megabytes() {
    long bytes = 0;
    for (MemoryPoolMXBean pool : ManagementFactory.getMemoryPoolMXBeans()) {
      bytes += pool.getType() == MemoryType.HEAP ? pool.getPeakUsage().getUsed() : 0;
    }
    return bytes >> 20;
  }
}
