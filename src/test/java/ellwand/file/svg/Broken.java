package ellwand.file.svg;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Random;

/** Files with a few things wrong. */
public final class Broken {

  private static final String[] ODD = {
    "NaN",
    "1e300",
    "-1e-300",
    "Infinity",
    "-",
    "z",
    "<g>",
    "</g>",
    "&lt;",
    "0",
    "99999",
    "\u0000",
    "'"
  };

  private Broken() {}

  /** The same with bytes changed, cut, doubled or put in. */
  public static byte[] bytes(byte[] good, Random random) {
    byte[] bytes = good.clone();
    for (int i = 0; i < 1 + random.nextInt(4); i++) {
      int at = random.nextInt(bytes.length);
      switch (random.nextInt(5)) {
        case 0 -> bytes[at] = (byte) random.nextInt(256);
        case 1 -> bytes = Arrays.copyOf(bytes, Math.max(20, at));
        case 2 -> {
          int end = Math.min(bytes.length, at + 1 + random.nextInt(200));
          bytes = with(bytes, at, Arrays.copyOfRange(bytes, at, end), 0);
        }
        case 3 ->
            bytes =
                with(
                    bytes, at, ODD[random.nextInt(ODD.length)].getBytes(StandardCharsets.UTF_8), 0);
        default ->
            bytes =
                with(
                    bytes,
                    at,
                    ODD[random.nextInt(ODD.length)].getBytes(StandardCharsets.UTF_8),
                    Math.min(bytes.length - at, 1 + random.nextInt(5)));
      }
    }
    return bytes;
  }

  private static byte[] with(byte[] bytes, int at, byte[] put, int left) {
    byte[] all = new byte[bytes.length + put.length - left];
    System.arraycopy(bytes, 0, all, 0, at);
    System.arraycopy(put, 0, all, at, put.length);
    System.arraycopy(bytes, at + left, all, at + put.length, bytes.length - at - left);
    return all;
  }
}
