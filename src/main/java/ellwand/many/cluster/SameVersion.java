package ellwand.many.cluster;

import com.typesafe.config.Config;
import java.util.List;
import org.apache.pekko.cluster.ConfigValidation;
import org.apache.pekko.cluster.JoinConfigCompatChecker;
import scala.collection.immutable.Seq;
import scala.jdk.javaapi.CollectionConverters;

/** Only helpers of the asker's own version come in: others would make other markers. */
public final class SameVersion extends JoinConfigCompatChecker {

  /** Where a process says its version. */
  static final String KEY = "ellwand.version";

  @Override
  public Seq<String> requiredKeys() {
    return CollectionConverters.asScala(List.of(KEY)).toSeq();
  }

  @Override
  public ConfigValidation check(Config toCheck, Config actual) {
    return JoinConfigCompatChecker.fullMatch(requiredKeys(), toCheck, actual);
  }
}
