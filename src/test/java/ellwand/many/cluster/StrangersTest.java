package ellwand.many.cluster;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.problem.InputException;
import ellwand.work.Stop;
import java.io.IOException;
import java.io.OutputStream;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.net.SocketException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.KeyStore;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** Keys as they are made, and who comes in with them and who does not. */
@EnabledOnOs({OS.LINUX, OS.MAC})
class StrangersTest {

  @TempDir private static Path folder;
  private static List<Path> ours;
  private static Path theirs;
  private static HelpedWorkshop workshop;

  private final List<String> said = new CopyOnWriteArrayList<>();

  @BeforeAll
  static void open() throws Exception {
    ours = new KeyMaker(folder.resolve("ours")).make(List.of("table", "attic"));
    theirs = new KeyMaker(folder.resolve("theirs")).make(List.of("stranger")).get(0);
    Door door = new Door(Place.here(0), Optional.of(ours.get(0)));
    workshop = HelpedWorkshop.open(Toy.here(), 1, door, text -> {});
  }

  @AfterAll
  static void close() {
    workshop.close();
  }

  @Test
  void keysAreForOneMachineEachAndForNobodyElse() throws Exception {
    List<Path> later = new KeyMaker(folder.resolve("ours")).make(List.of("cellar"));
    for (Path file : List.of(ours.get(0), ours.get(1), later.get(0))) {
      assertEquals("rw-------", PosixFilePermissions.toString(Files.getPosixFilePermissions(file)));
      KeyStore store = KeyStore.getInstance(file.toFile(), KeyFile.PASSWORD.toCharArray());
      assertTrue(store.isKeyEntry("member"));
      assertFalse(store.isKeyEntry("authority"), "the authority's key left its folder");
      store.getCertificate("member").verify(store.getCertificate("authority").getPublicKey());
    }
    assertThrows(
        InputException.class,
        () -> new KeyMaker(folder.resolve("ours")).make(List.of("barn", "attic")));
    for (String name : List.of("authority", "../attic", "")) {
      assertThrows(
          InputException.class, () -> new KeyMaker(folder.resolve("ours")).make(List.of(name)));
    }
    try (var files = Files.list(folder.resolve("ours"))) {
      assertEquals(
          List.of("attic.p12", "authority.p12", "cellar.p12", "table.p12"),
          files.map(file -> file.getFileName().toString()).sorted().toList());
    }
  }

  @Test
  void whoHasKeysOfTheWorkshopComesInWhateverStrangersDo() throws Exception {
    Random random = new Random(1);
    for (int i = 0; i < 50; i++) {
      byte[] garbage = new byte[random.nextInt(1, 5_000)];
      random.nextBytes(garbage);
      say(garbage);
    }
    Stop end = new Stop();
    helper(
            Optional.of(ours.get(1)),
            text -> {
              said.add(text);
              end.request();
            })
        .run(end);
    assertTrue(said.get(0).startsWith("Helping"), said::toString);
  }

  @Test
  void whoHasAnotherKeyOrNoneIsRefusedWithAWord() {
    for (Optional<Path> keys : List.of(Optional.of(theirs), Optional.<Path>empty())) {
      InputException e =
          assertThrows(InputException.class, () -> helper(keys, said::add).run(new Stop()));
      assertTrue(
          e.getMessage().contains(keys.isPresent() ? "does not take this key" : "asks for a key"),
          e::getMessage);
      assertEquals(List.of(), said);
      assertEquals(1, workshop.cores());
    }
  }

  @Test
  void keysThatCannotBeUsedAreToldInOurWordsBeforeAnybodyIsWaitedFor() throws Exception {
    Path garbage = Files.write(folder.resolve("garbage.p12"), new byte[] {1, 2, 3});
    Path locked = folder.resolve("locked.p12");
    KeyStore store = KeyStore.getInstance(ours.get(0).toFile(), KeyFile.PASSWORD.toCharArray());
    try (OutputStream out = Files.newOutputStream(locked)) {
      store.store(out, "another".toCharArray());
    }
    Map<Path, String> wrong =
        Map.of(
            folder.resolve("none.p12"),
            "there is no file %s",
            garbage,
            "%s is no file of keys, or broken",
            locked,
            "%s has a password that is not ours",
            folder.resolve("ours/authority.p12"),
            "%s holds no keys of a machine");
    wrong.forEach(
        (file, words) -> {
          InputException e =
              assertThrows(
                  InputException.class, () -> helper(Optional.of(file), said::add).run(new Stop()));
          assertTrue(e.getMessage().startsWith(words.formatted(file) + ". "), e::getMessage);
          assertEquals(List.of(), said);
        });
  }

  private static Helper helper(Optional<Path> keys, Consumer<String> say) {
    return new Helper(
        Toy.there(text -> {}), 1, () -> Optional.of(workshop.place()), Optional.empty(), keys, say);
  }

  /** An alert of TLS is all there is: two bytes of content after a head of five (RFC 8446, 5.1). */
  @Test
  void strangersLearnNothing() throws Exception {
    byte[] http = "GET / HTTP/1.1\r\nHost: here\r\n\r\n".getBytes(StandardCharsets.US_ASCII);
    for (byte[] said : List.of(http, "PEKK\001".getBytes(StandardCharsets.US_ASCII))) {
      byte[] answer = say(said);
      assertTrue(answer.length <= 7, () -> new String(answer, StandardCharsets.ISO_8859_1));
      assertTrue(answer.length == 0 || answer[0] == 21, "an answer that is no alert");
    }
  }

  private static byte[] say(byte[] words) throws IOException {
    try (Socket socket = new Socket()) {
      socket.connect(new InetSocketAddress(workshop.place().host(), workshop.place().port()));
      socket.setSoTimeout(60_000);
      socket.getOutputStream().write(words);
      socket.shutdownOutput();
      return socket.getInputStream().readAllBytes();
    } catch (SocketException e) {
      return new byte[0];
    }
  }
}
