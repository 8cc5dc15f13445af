import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.spi.ToolProvider;
import java.util.stream.Stream;

/**
 * Makes Ellwand into an application that brings its own Java: {@code target/application/ellwand},
 * which runs where it lies, and beside it what installs it on the system that this runs on. Run by
 * {@code mvn -Papp package}.
 */
final class MakeApplication {

  /**
   * What {@code jdeps --print-module-deps target/ellwand.jar} says, and three that it cannot see:
   * one hears Ctrl-C, one opens the desk's files in the jar, one has the curves of helpers' keys.
   */
  private static final String MODULES =
      "java.compiler,java.desktop,java.instrument,java.naming,java.net.http,java.rmi,"
          + "java.security.jgss,java.sql,jdk.crypto.ec,jdk.management,jdk.unsupported,jdk.zipfs";

  /** The second is found through the manifest of the first, beside it. */
  private static final List<String> JARS = List.of("ellwand.jar", "ellwand-helpers.jar");

  /** The ready-made classes of a run: found by their place, so they are made where they stay. */
  private static final String ARCHIVE = "ellwand.jsa";

  private static final String CLASSES = "ellwand.classes";

  /**
   * The second compiler is left what a search runs through all the time; the JDK's limits on calls
   * and loops times fifty.
   */
  private static final List<String> COMPILING =
      List.of(
          "-XX:Tier4InvocationThreshold=250000",
          "-XX:Tier4MinInvocationThreshold=30000",
          "-XX:Tier4CompileThreshold=750000",
          "-XX:Tier4BackEdgeThreshold=2000000");

  private final Path made = Path.of("target", "application").toAbsolutePath();
  private final Path parts = Path.of("src", "application");
  private final Path runtime = made.resolve("runtime");
  private final Path input = made.resolve("input");
  private final String version;

  private MakeApplication(String version) {
    this.version = version;
  }

  /**
   * @param args the version
   */
  public static void main(String[] args) throws IOException, InterruptedException {
    new MakeApplication(args[0]).make();
  }

  private void make() throws IOException, InterruptedException {
    delete(made);
    Files.createDirectories(input);
    for (String jar : JARS) {
      Files.copy(Path.of("target", jar), input.resolve(jar), StandardCopyOption.COPY_ATTRIBUTES);
    }
    tool(
        "jlink",
        "--add-modules",
        MODULES,
        "--output",
        runtime.toString(),
        "--no-header-files",
        "--no-man-pages",
        "--strip-java-debug-attributes",
        "--compress",
        "0");
    run(java(runtime), "-Xshare:dump");
    if (Os.HERE == Os.LINUX) {
      Files.write(input.resolve(CLASSES), classesOfRuns(input.resolve(JARS.get(0))));
    }
    image();
    Path image = made.resolve(Os.HERE.image);
    installer(image);
    if (Os.HERE == Os.LINUX) {
      archive(image);
    }
    delete(runtime);
    delete(input);
    System.out.println("The application lies in " + image);
  }

  /** All classes that the usual commands load, in their order. */
  private Set<String> classesOfRuns(Path jar) throws IOException, InterruptedException {
    Path job = Path.of("sample-markers", "weir-jacket", "job.yaml").toAbsolutePath();
    Path work = Files.createDirectories(made.resolve("work"));
    List<List<String>> runs =
        List.of(
            List.of("lay", job.toString(), "--effort", "50steps", "--out", work + "/lay"),
            List.of("draw", job.toString(), "--out", work + "/pieces.svg"),
            List.of("print", job.toString(), "--out", work + "/pieces.pdf"),
            List.of("desk", work.toString(), "--no-browser"));
    Set<String> classes = new LinkedHashSet<>();
    for (List<String> command : runs) {
      Path list = work.resolve(command.get(0) + ".classes");
      List<String> line = new ArrayList<>();
      line.add(java(runtime));
      line.addAll(List.of("-XX:DumpLoadedClassList=" + list, "-cp", jar.toString()));
      line.add("ellwand.cli.Main");
      line.addAll(command);
      Process process =
          new ProcessBuilder(line).redirectError(ProcessBuilder.Redirect.DISCARD).start();
      if (command.get(0).equals("desk")) {
        try (BufferedReader said = process.inputReader()) {
          if (said.readLine() == null) {
            throw new IllegalStateException("the desk did not open");
          }
          process.destroy();
          process.waitFor();
        }
      } else {
        said(process, line);
      }
      classes.addAll(Files.readAllLines(list));
    }
    delete(work);
    return classes;
  }

  private void image() {
    List<String> args = new ArrayList<>();
    args.addAll(List.of("--type", "app-image", "--name", "ellwand", "--dest", made.toString()));
    args.addAll(List.of("--app-version", number(), "--vendor", "Ellwand"));
    args.addAll(List.of("--runtime-image", runtime.toString(), "--input", input.toString()));
    args.addAll(List.of("--main-jar", "ellwand.jar", "--main-class", "ellwand.cli.Main"));
    args.addAll(List.of("--icon", parts.resolve("ellwand" + Os.HERE.icon).toString()));
    // Started by a double click, without arguments, it opens the desk.
    args.addAll(List.of("--arguments", "desk ~/Ellwand"));
    args.addAll(List.of("--java-options", "-Xshare:auto", "--java-options", "-XX:+UseSerialGC"));
    COMPILING.forEach(option -> args.addAll(List.of("--java-options", option)));
    if (Os.HERE == Os.LINUX) {
      args.addAll(List.of("--java-options", "-XX:SharedArchiveFile=$APPDIR/" + ARCHIVE));
    }
    if (Os.HERE == Os.WINDOWS) {
      args.add("--win-console");
    }
    tool("jpackage", args.toArray(String[]::new));
  }

  private void installer(Path image) {
    List<String> args = new ArrayList<>();
    args.addAll(List.of("--type", Os.HERE.installer, "--name", "ellwand"));
    args.addAll(List.of("--app-image", image.toString(), "--dest", made.toString()));
    args.addAll(List.of("--app-version", number(), "--vendor", "Ellwand"));
    args.addAll(List.of("--description", "Plans how to lay pattern pieces on cloth"));
    switch (Os.HERE) {
      case LINUX -> {
        args.addAll(List.of("--resource-dir", parts.resolve("debian").toString()));
        args.addAll(List.of("--icon", parts.resolve("ellwand.png").toString()));
        args.addAll(List.of("--linux-shortcut", "--linux-deb-maintainer", maintainer()));
      }
      case WINDOWS ->
          args.addAll(List.of("--win-menu", "--win-shortcut", "--win-per-user-install"));
      case MAC -> {}
    }
    tool("jpackage", args.toArray(String[]::new));
  }

  /**
   * Who answers for the package: the mail of whoever makes it, as Debian's own tools take it, or
   * else one that is nobody's (RFC 2606 keeps .invalid free for that).
   */
  private static String maintainer() {
    return Optional.ofNullable(System.getenv("DEBEMAIL")).orElse("maintainers@ellwand.invalid");
  }

  /** As the installed package does for itself; see debian/postinst. */
  private static void archive(Path image) throws IOException, InterruptedException {
    Path app = image.resolve("lib").resolve("app");
    run(
        java(image.resolve("lib").resolve("runtime")),
        "-Xshare:dump",
        "-XX:+UseSerialGC",
        "-XX:SharedClassListFile=" + app.resolve(CLASSES),
        "-XX:SharedArchiveFile=" + app.resolve(ARCHIVE),
        "-cp",
        app.resolve("ellwand.jar").toString());
  }

  /** Installers want plain numbers, on a Mac from 1 on. */
  private String number() {
    String plain = version.replaceAll("[^0-9.].*", "");
    return Os.HERE == Os.MAC && plain.startsWith("0.") ? "1" + plain.substring(1) : plain;
  }

  private static String java(Path home) {
    return home.resolve("bin").resolve("java").toString();
  }

  private static void tool(String name, String... args) {
    ToolProvider tool =
        ToolProvider.findFirst(name)
            .orElseThrow(() -> new IllegalStateException("this JDK has no " + name));
    if (tool.run(System.out, System.err, args) != 0) {
      throw new IllegalStateException(name + " failed: " + String.join(" ", args));
    }
  }

  private static void run(String... line) throws IOException, InterruptedException {
    said(new ProcessBuilder(line).redirectErrorStream(true).start(), List.of(line));
  }

  private static void said(Process process, Collection<String> line)
      throws IOException, InterruptedException {
    String said = new String(process.getInputStream().readAllBytes());
    if (process.waitFor() != 0) {
      throw new IllegalStateException(String.join(" ", line) + " failed: " + said);
    }
  }

  private static void delete(Path folder) throws IOException {
    if (Files.exists(folder)) {
      try (Stream<Path> all = Files.walk(folder)) {
        for (Path path : all.sorted((a, b) -> b.compareTo(a)).toList()) {
          path.toFile().setWritable(true);
          Files.delete(path);
        }
      }
    }
  }

  private enum Os {
    LINUX("ellwand", ".png", "deb"),
    WINDOWS("ellwand", ".ico", "msi"),
    MAC("ellwand.app", ".icns", "dmg");

    static final Os HERE = here(System.getProperty("os.name").toLowerCase(Locale.ROOT));

    final String image;
    final String icon;
    final String installer;

    Os(String image, String icon, String installer) {
      this.image = image;
      this.icon = icon;
      this.installer = installer;
    }

    private static Os here(String name) {
      return name.contains("win") ? WINDOWS : name.contains("mac") ? MAC : LINUX;
    }
  }
}
