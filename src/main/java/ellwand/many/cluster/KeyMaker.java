package ellwand.many.cluster;

import ellwand.problem.InputException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Makes the keys of a workshop with the JDK's keytool: an authority, which stays where it is, and
 * for each machine a file of its own, which that authority has signed. What a stranger could see of
 * them during a handshake names neither machines nor people.
 */
public final class KeyMaker {

  private static final String AUTHORITY = KeyFile.AUTHORITY;
  private static final String MEMBER = KeyFile.MEMBER;
  private static final String DAYS = "3650";
  private static final Pattern NAME = Pattern.compile("[\\p{Alnum}][\\p{Alnum}._-]{0,63}");

  private final Path folder;
  private final Path authority;

  /**
   * @param folder where the keys lie, made if it is not there
   */
  public KeyMaker(Path folder) {
    this.folder = folder;
    this.authority = folder.resolve(AUTHORITY + ".p12");
  }

  /**
   * Makes keys for machines, and the authority before if there is none. All or nothing.
   *
   * @param machines what their files are called; none of them has keys here yet
   * @return their files
   * @throws InputException if one has keys already, or is no name for a file
   */
  public List<Path> make(List<String> machines) throws IOException, InterruptedException {
    for (String machine : machines) {
      InputException.unless(
          NAME.matcher(machine).matches() && !machine.equals(AUTHORITY),
          "'%s' cannot be the name of a machine's keys".formatted(machine),
          "Use letters, digits, dots and dashes");
      InputException.unless(
          !Files.exists(file(machine)),
          "there are keys already: " + file(machine),
          "Use these, or take them away first");
    }
    Files.createDirectories(folder);
    Path work = Files.createTempDirectory(folder, ".making");
    try {
      Path signing = work.resolve("signing");
      boolean first = !Files.exists(authority);
      if (first) {
        makeAuthority(signing);
      } else {
        Files.copy(authority, signing);
      }
      List<Path> made = new ArrayList<>();
      for (String machine : machines) {
        made.add(makeMember(work, signing, machine));
      }
      if (first) {
        move(signing, authority);
      }
      List<Path> files = new ArrayList<>();
      for (Path path : made) {
        files.add(move(path, file(path.getFileName().toString())));
      }
      return files;
    } finally {
      try (var left = Files.newDirectoryStream(work)) {
        for (Path path : left) {
          Files.delete(path);
        }
      }
      Files.delete(work);
    }
  }

  private Path file(String machine) {
    return folder.resolve(machine + ".p12");
  }

  private static void makeAuthority(Path store) throws IOException, InterruptedException {
    keytool(
        store,
        "-genkeypair -alias %s -dname CN=%s -keyalg EC -groupname secp256r1 -validity %s"
            .formatted(AUTHORITY, AUTHORITY, DAYS),
        "-ext",
        "bc:critical=ca:true,pathlen:0",
        "-ext",
        "ku:critical=keyCertSign");
  }

  private static Path makeMember(Path work, Path signing, String machine)
      throws IOException, InterruptedException {
    Path store = work.resolve(machine);
    String request = work.resolve("request").toString();
    String signed = work.resolve("signed").toString();
    String trusted = work.resolve("trusted").toString();
    keytool(
        store,
        "-genkeypair -alias %s -dname CN=%s -keyalg EC -groupname secp256r1 -validity %s"
            .formatted(MEMBER, MEMBER, DAYS));
    keytool(store, "-certreq -alias " + MEMBER, "-file", request);
    keytool(
        signing,
        "-gencert -alias %s -validity %s".formatted(AUTHORITY, DAYS),
        "-ext",
        "ku:critical=digitalSignature",
        "-infile",
        request,
        "-outfile",
        signed);
    keytool(signing, "-exportcert -alias " + AUTHORITY, "-file", trusted);
    keytool(store, "-importcert -noprompt -alias " + AUTHORITY, "-file", trusted);
    keytool(store, "-importcert -noprompt -alias " + MEMBER, "-file", signed);
    return store;
  }

  private static void keytool(Path store, String words, String... more)
      throws IOException, InterruptedException {
    List<String> line = new ArrayList<>();
    line.add(Path.of(System.getProperty("java.home"), "bin", "keytool").toString());
    line.addAll(List.of(words.split(" ")));
    line.addAll(List.of("-keystore", store.toString(), "-storetype", "PKCS12"));
    line.addAll(List.of("-storepass", KeyFile.PASSWORD));
    line.addAll(List.of(more));
    Process process = new ProcessBuilder(line).redirectErrorStream(true).start();
    String said = new String(process.getInputStream().readAllBytes());
    if (process.waitFor() != 0) {
      throw new IOException("keytool failed: " + said);
    }
  }

  private static Path move(Path from, Path to) throws IOException {
    if (Files.getFileStore(from).supportsFileAttributeView("posix")) {
      Files.setPosixFilePermissions(from, PosixFilePermissions.fromString("rw-------"));
    }
    return Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
  }
}
