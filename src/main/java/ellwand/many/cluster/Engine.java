package ellwand.many.cluster;

import com.typesafe.config.Config;
import com.typesafe.config.ConfigFactory;
import ellwand.problem.InputException;
import java.net.BindException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.apache.pekko.actor.Address;
import org.apache.pekko.actor.typed.ActorRef;
import org.apache.pekko.actor.typed.ActorRefResolver;
import org.apache.pekko.actor.typed.ActorSystem;
import org.apache.pekko.actor.typed.Behavior;

/** Pekko started and ended as we use it. */
final class Engine {

  private static final String SYSTEM = "ellwand";

  /** Ending in good order takes less. */
  private static final Duration ENDING = Duration.ofSeconds(10);

  private static final int BEATS = 4;

  private Engine() {}

  /**
   * @param silent after so long and a beat more, a quarter of it, whoever is watched and says
   *     nothing is gone
   * @throws InputException if its place cannot be had
   */
  static <T> ActorSystem<T> start(Behavior<T> root, Door door, Duration silent) {
    try {
      return ActorSystem.create(root, SYSTEM, config(door, silent));
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

  /** Whoever is the root of the system at a place. */
  static <T> ActorRef<T> root(ActorSystem<?> system, Place place) {
    Address address = new Address("pekko", SYSTEM, written(place.host()), place.port());
    return ActorRefResolver.get(system).resolveActorRef(address + "/user");
  }

  /** Where it is, with the port that it has. */
  static Place place(ActorSystem<?> system) {
    Address address = system.address();
    String host = address.getHost().orElseThrow().replaceAll("[\\[\\]]", "");
    return new Place(host, address.getPort().orElseThrow());
  }

  /** Ends, or is left to end by itself after a time. */
  static void end(ActorSystem<?> system) {
    system.terminate();
    waitForEnd(system, ENDING);
  }

  /** Waits until it has ended by itself, but not for longer. */
  static void waitForEnd(ActorSystem<?> system, Duration most) {
    try {
      system.getWhenTerminated().toCompletableFuture().get(most.toMillis(), TimeUnit.MILLISECONDS);
    } catch (TimeoutException | ExecutionException e) {
      // Its threads are daemons.
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private static Config config(Door door, Duration silent) {
    Map<String, Object> own = new HashMap<>();
    String watch = "pekko.remote.watch-failure-detector.";
    own.put(watch + "acceptable-heartbeat-pause", silent);
    own.put(watch + "heartbeat-interval", silent.dividedBy(BEATS));
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
