package ellwand.many.cluster;

import ellwand.problem.InputException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.security.UnrecoverableKeyException;
import javax.net.ssl.KeyManagerFactory;
import javax.net.ssl.SSLContext;
import javax.net.ssl.TrustManagerFactory;

/** A machine's key with its certificate, and the authority whose others it trusts: one PKCS12. */
final class KeyFile {

  /** The format wants one; what keeps the file safe is who may read it. */
  static final String PASSWORD = "ellwand";

  /** What a machine's key and the authority's certificate are called in it. */
  static final String MEMBER = "member";

  static final String AUTHORITY = "authority";

  private KeyFile() {}

  /**
   * @throws InputException if the file holds no keys of ours
   */
  static SSLContext context(Path file) {
    try (InputStream in = Files.newInputStream(file)) {
      KeyStore keys = KeyStore.getInstance("PKCS12");
      keys.load(in, PASSWORD.toCharArray());
      InputException.unless(
          keys.isKeyEntry(MEMBER) && keys.isCertificateEntry(AUTHORITY),
          "%s holds no keys of a machine".formatted(file),
          "Name this machine's .p12, not the authority's");
      KeyManagerFactory own =
          KeyManagerFactory.getInstance(KeyManagerFactory.getDefaultAlgorithm());
      own.init(keys, PASSWORD.toCharArray());
      TrustManagerFactory others =
          TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
      others.init(keys);
      SSLContext context = SSLContext.getInstance("TLSv1.3");
      context.init(own.getKeyManagers(), others.getTrustManagers(), null);
      return context;
    } catch (NoSuchFileException e) {
      throw refused("there is no file " + file);
    } catch (AccessDeniedException e) {
      throw refused("this user may not read " + file);
    } catch (IOException e) {
      throw refused(
          file
              + (e.getCause() instanceof UnrecoverableKeyException
                  ? " has a password that is not ours"
                  : " is no file of keys, or broken"));
    } catch (GeneralSecurityException e) {
      throw refused("the keys in %s cannot be used".formatted(file));
    }
  }

  private static InputException refused(String what) {
    return InputException.of(
        what, "Make keys with 'helper --make-keys FOLDER' and name this machine's .p12");
  }
}
