package ellwand.many.cluster;

import com.typesafe.config.Config;
import com.typesafe.config.ConfigFactory;
import ellwand.problem.InputException;
import java.net.BindException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.apache.pekko.actor.Address;
import org.apache.pekko.actor.typed.ActorSystem;
import org.apache.pekko.actor.typed.Behavior;
import org.apache.pekko.cluster.MemberStatus;
import org.apache.pekko.cluster.typed.Cluster;
import org.apache.pekko.cluster.typed.JoinSeedNodes;

/** Pekko started and ended as we use it. */
final class Engine {

  private static final String SYSTEM = "ellwand";
  private static final Duration POLL = Duration.ofMillis(10);

  /** It takes moments, on a busy machine some seconds. */
  private static final Duration FOUNDING = Duration.ofSeconds(60);

  /** Leaving in good order takes less; see the phases of leaving in cluster.conf. */
  private static final Duration LEAVING = Duration.ofSeconds(10);

  private Engine() {}

  /**
   * @throws InputException if its place cannot be had
   */
  static <T> ActorSystem<T> start(Behavior<T> root, Door door, String version) {
    try {
      return ActorSystem.create(root, SYSTEM, config(door, version));
    } catch (RuntimeException e) {
      throw bindFailed(e)
          ? InputException.of(
              "nothing can be opened at " + door.at(),
              "Is it in use already, or no address of this machine? Name another port or address")
          : e;
    }
  }

  private static boolean bindFailed(Throwable e) {
    return e != null && (e instanceof BindException || bindFailed(e.getCause()));
  }

  /**
   * Makes a cluster of its own, and waits until that stands. Before, it cannot be left in good
   * order: the place would stay taken until Pekko's time for leaving is over.
   */
  static void found(ActorSystem<?> system) {
    join(system, place(system));
    Instant late = Instant.now().plus(FOUNDING);
    while (!Cluster.get(system).selfMember().status().equals(MemberStatus.up())
        && Instant.now().isBefore(late)) {
      pause();
    }
  }

  private static void pause() {
    try {
      Thread.sleep(POLL.toMillis());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }

  /** Joins the cluster at one place. */
  static void join(ActorSystem<?> system, Place first) {
    Address address = new Address("pekko", SYSTEM, written(first.host()), first.port());
    Cluster.get(system).manager().tell(new JoinSeedNodes(List.of(address)));
  }

  /** Whether the one it joins has let it in, be it not yet known to all. */
  static boolean answered(ActorSystem<?> system) {
    return !Cluster.get(system).selfMember().status().equals(MemberStatus.removed());
  }

  /** Where it is, with the port that it has. */
  static Place place(ActorSystem<?> system) {
    Address address = Cluster.get(system).selfMember().address();
    String host = address.getHost().orElseThrow().replaceAll("[\\[\\]]", "");
    return new Place(host, address.getPort().orElseThrow());
  }

  /** Leaves the cluster and ends, or is left to end by itself after a time. */
  static void end(ActorSystem<?> system) {
    system.terminate();
    try {
      system
          .getWhenTerminated()
          .toCompletableFuture()
          .get(LEAVING.toMillis(), TimeUnit.MILLISECONDS);
    } catch (TimeoutException | ExecutionException e) {
      // Its threads are daemons.
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private static Config config(Door door, String version) {
    Map<String, Object> own = new HashMap<>();
    own.put(SameVersion.KEY, version);
    own.put("pekko.remote.artery.canonical.hostname", written(door.at().host()));
    own.put("pekko.remote.artery.canonical.port", door.at().port());
    own.put("pekko.remote.artery.transport", door.keys().isPresent() ? "tls-tcp" : "tcp");
    door.keys().map(Path::toString).ifPresent(keys -> ssl(own, keys));
    return ConfigFactory.load(
        ConfigFactory.parseMap(own)
            .withFallback(
                ConfigFactory.parseResources(
                    Engine.class.getClassLoader(), "ellwand/many/cluster.conf")));
  }

  private static void ssl(Map<String, Object> own, String keys) {
    String ssl = "pekko.remote.artery.ssl.config-ssl-engine.";
    own.put(ssl + "key-store", keys);
    own.put(ssl + "trust-store", keys);
    for (String password : List.of("key-store", "key", "trust-store")) {
      own.put(ssl + password + "-password", KeyFile.PASSWORD);
    }
  }

  private static String written(String host) {
    return host.contains(":") ? "[" + host + "]" : host;
  }
}
