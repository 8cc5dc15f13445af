package ellwand.many.cluster;

import ellwand.problem.InputException;
import java.net.DatagramSocket;
import java.net.Inet4Address;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.net.UnknownHostException;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Where somebody can be reached.
 *
 * @param host an IP address as a number: both sides must call a machine the same
 * @param port 0 for any that is free
 */
public record Place(String host, int port) {

  /** Where helpers look for who asks, if nobody says otherwise. */
  public static final int USUAL_PORT = 17355;

  private static final Pattern WRITTEN = Pattern.compile("(\\[[^\\]]+\\]|[^:]+)(?::(\\d{1,5}))?");
  private static final int PORTS = 65_536;

  /** This machine alone. */
  public static Place here(int port) {
    return new Place("127.0.0.1", port);
  }

  /**
   * @param text a name or an address, with or without a port: {@code cellar:17355}, {@code
   *     10.0.0.7}, {@code [fe80::1]:17355}
   * @throws InputException if it is none, or nobody knows the name
   */
  public static Place of(String text, int usualPort) {
    return known(text, usualPort)
        .orElseThrow(
            () ->
                InputException.of(
                    "no machine is known as '%s' here".formatted(text),
                    "Write its name as your network knows it, or its address"));
  }

  /**
   * The same, or nothing if nobody knows the name: some are known only while somebody is there.
   *
   * @throws InputException if it is no name or address
   */
  public static Optional<Place> known(String text, int usualPort) {
    Matcher written = WRITTEN.matcher(text);
    if (!written.matches()) {
      throw InputException.of(
          "'%s' is no machine and port".formatted(text), "Write for example cellar:" + USUAL_PORT);
    }
    int port = written.group(2) == null ? usualPort : Integer.parseInt(written.group(2));
    if (port >= PORTS) {
      throw InputException.of("there is no port " + port, "Ports go up to " + (PORTS - 1));
    }
    try {
      return Optional.of(new Place(InetAddress.getByName(written.group(1)).getHostAddress(), port));
    } catch (UnknownHostException e) {
      return Optional.empty();
    }
  }

  /**
   * This machine on its network.
   *
   * @throws InputException if it is on none
   */
  public static Place onNetwork(int port) {
    try {
      return NetworkInterface.networkInterfaces()
          .filter(Place::leadsOut)
          .flatMap(NetworkInterface::inetAddresses)
          .filter(Inet4Address.class::isInstance)
          .findFirst()
          .map(address -> new Place(address.getHostAddress(), port))
          .orElseThrow(Place::noNetwork);
    } catch (SocketException e) {
      throw noNetwork();
    }
  }

  private static boolean leadsOut(NetworkInterface network) {
    try {
      return network.isUp() && !network.isLoopback() && !network.isVirtual();
    } catch (SocketException e) {
      return false;
    }
  }

  private static InputException noNetwork() {
    return InputException.of(
        "this machine is on no network", "Name the address at which helpers reach it");
  }

  /** This machine as {@code other} sees it, at any free port; nothing is sent for that. */
  static Place facing(Place other) {
    try (DatagramSocket socket = new DatagramSocket()) {
      socket.connect(new InetSocketAddress(other.host, Math.max(1, other.port)));
      return new Place(socket.getLocalAddress().getHostAddress(), 0);
    } catch (SocketException e) {
      throw InputException.of(
          "no way leads from here to " + other, "See that both machines are on one network");
    }
  }

  boolean onlyHere() {
    try {
      return InetAddress.getByName(host).isLoopbackAddress();
    } catch (UnknownHostException e) {
      throw new IllegalStateException("an address is no name", e);
    }
  }

  @Override
  public String toString() {
    return (host.contains(":") ? "[" + host + "]" : host) + ":" + port;
  }
}
