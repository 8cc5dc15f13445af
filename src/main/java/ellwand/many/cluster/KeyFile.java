package ellwand.many.cluster;

import ellwand.problem.InputException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import javax.net.ssl.KeyManagerFactory;
import javax.net.ssl.SSLContext;
import javax.net.ssl.TrustManagerFactory;

/** A machine's key with its certificate, and the authority whose others it trusts: one PKCS12. */
final class KeyFile {

  /** The format wants one; what keeps the file safe is who may read it. */
  static final String PASSWORD = "ellwand";

  private KeyFile() {}

  /**
   * @throws InputException if the file holds no keys of ours
   */
  static SSLContext context(Path file) {
    try (InputStream in = Files.newInputStream(file)) {
      KeyStore keys = KeyStore.getInstance("PKCS12");
      keys.load(in, PASSWORD.toCharArray());
      KeyManagerFactory own =
          KeyManagerFactory.getInstance(KeyManagerFactory.getDefaultAlgorithm());
      own.init(keys, PASSWORD.toCharArray());
      TrustManagerFactory others =
          TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
      others.init(keys);
      SSLContext context = SSLContext.getInstance("TLSv1.3");
      context.init(own.getKeyManagers(), others.getTrustManagers(), null);
      return context;
    } catch (IOException | GeneralSecurityException e) {
      throw InputException.of(
          "%s cannot be read as keys (%s)".formatted(file, e.getMessage()),
          "Make them with 'helper --make-keys FOLDER' and name this machine's .p12");
    }
  }
}
