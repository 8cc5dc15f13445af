package ellwand.many.cluster;

import java.io.IOException;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.net.SocketTimeoutException;
import java.nio.file.Path;
import java.util.Optional;
import javax.net.ssl.SSLSocket;

/** Asks whether anybody is at a place and takes our key, before a cluster is joined there. */
enum Knock {
  OPEN,
  NOBODY,
  /** Somebody is there, who does not take our key or shows one that we do not take. */
  SHUT;

  private static final int CONNECT_MILLIS = 3_000;
  private static final int HANDSHAKE_MILLIS = 10_000;

  /** So long after the handshake somebody who refuses our certificate would have said so. */
  private static final int REFUSAL_MILLIS = 1_000;

  static Knock at(Place place, Optional<Path> keys) {
    try (Socket socket = new Socket()) {
      socket.connect(new InetSocketAddress(place.host(), place.port()), CONNECT_MILLIS);
      return keys.isPresent() ? tls(socket, place, keys.get()) : OPEN;
    } catch (IOException e) {
      return NOBODY;
    }
  }

  private static Knock tls(Socket socket, Place place, Path keys) {
    try (SSLSocket secured =
        (SSLSocket)
            KeyFile.context(keys)
                .getSocketFactory()
                .createSocket(socket, place.host(), place.port(), true)) {
      secured.setSoTimeout(HANDSHAKE_MILLIS);
      secured.startHandshake();
      secured.setSoTimeout(REFUSAL_MILLIS);
      secured.getInputStream().read();
      return SHUT;
    } catch (SocketTimeoutException e) {
      return OPEN;
    } catch (IOException e) {
      return SHUT;
    }
  }
}
