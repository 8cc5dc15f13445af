package ellwand.many.cluster;

import java.io.IOException;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.net.SocketTimeoutException;
import java.nio.file.Path;
import java.util.Optional;
import javax.net.ssl.SSLSocket;

/** Asks whether anybody is at a place and takes our key, before any is offered help. */
enum Knock {
  OPEN,
  NOBODY,
  /** Somebody is there, who does not take what we show, or shows a key that we do not take. */
  SHUT;

  private static final int CONNECT_MILLIS = 3_000;
  private static final int HANDSHAKE_MILLIS = 10_000;

  /** So long after our first words somebody who refuses them would have done so. */
  private static final int REFUSAL_MILLIS = 1_000;

  /** A door may also be shut because who asks is just going. */
  private static final int SHUT_TIMES = 3;

  private static final int SHUT_AGAIN_MILLIS = 500;

  /** How a connection of Pekko's begins where there are no keys: its mark, and a stream. */
  private static final byte[] WITHOUT_KEYS = {'A', 'K', 'K', 'A', 1};

  static Knock at(Place place, Optional<Path> keys) throws InterruptedException {
    Knock answer = once(place, keys);
    for (int i = 1; i < SHUT_TIMES && answer == SHUT; i++) {
      Thread.sleep(SHUT_AGAIN_MILLIS);
      answer = once(place, keys);
    }
    return answer;
  }

  private static Knock once(Place place, Optional<Path> keys) {
    try (Socket socket = new Socket()) {
      socket.connect(new InetSocketAddress(place.host(), place.port()), CONNECT_MILLIS);
      return keys.isPresent() ? secured(socket, place, keys.get()) : plain(socket);
    } catch (IOException e) {
      return NOBODY;
    }
  }

  private static Knock plain(Socket socket) {
    try {
      socket.getOutputStream().write(WITHOUT_KEYS);
      return refused(socket);
    } catch (IOException e) {
      return SHUT;
    }
  }

  private static Knock secured(Socket socket, Place place, Path keys) {
    try (SSLSocket secured =
        (SSLSocket)
            KeyFile.context(keys)
                .getSocketFactory()
                .createSocket(socket, place.host(), place.port(), true)) {
      secured.setSoTimeout(HANDSHAKE_MILLIS);
      secured.startHandshake();
      return refused(secured);
    } catch (IOException e) {
      return SHUT;
    }
  }

  /** Who takes us waits for more. */
  private static Knock refused(Socket socket) throws IOException {
    socket.setSoTimeout(REFUSAL_MILLIS);
    try {
      socket.getInputStream().read();
      return SHUT;
    } catch (SocketTimeoutException e) {
      return OPEN;
    }
  }
}
