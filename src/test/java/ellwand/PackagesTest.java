package ellwand;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Holds the package table of the contributors' guide: who may import whom. */
class PackagesTest {

  /** A package, and the packages of ours that it may import; the table of DEVELOPERS.md. */
  private static final Map<String, List<String>> TABLE = new LinkedHashMap<>();

  static {
    TABLE.put("problem", List.of());
    TABLE.put("work", List.of("problem"));
    TABLE.put("units", List.of("problem"));
    TABLE.put("geometry", List.of("units", "problem"));
    TABLE.put("trace", List.of("geometry", "units", "problem"));
    TABLE.put("pattern", List.of("geometry", "units", "problem"));
    TABLE.put("pattern.alter", List.of("pattern", "geometry", "units", "problem"));
    TABLE.put("pattern.block", List.of("pattern", "geometry", "problem"));
    TABLE.put("cutting", List.of("pattern", "geometry", "units", "problem"));
    TABLE.put("cloth", List.of("geometry", "units", "problem"));
    TABLE.put("lay", List.of("cutting", "cloth", "pattern", "geometry", "units", "problem"));
    TABLE.put("rule", with("lay", "lay"));
    TABLE.put("edit", with("rule", "rule"));
    TABLE.put("nest.kernel", List.of("work"));
    TABLE.put("nest.turning", List.of());
    TABLE.put("nest.pose", with("lay", "lay", "nest.kernel", "problem"));
    TABLE.put("nest.repeat", with("nest.pose", "nest.pose"));
    TABLE.put("nest.stretch", with("nest.repeat", "nest.repeat", "work"));
    TABLE.put("nest.choice", with("nest.stretch", "nest.stretch"));
    TABLE.put("nest.swing", with("nest.stretch", "nest.stretch", "nest.turning"));
    TABLE.put("nest.wish", with("nest.stretch", "nest.stretch", "rule"));
    TABLE.put("nest.tidy", with("nest.stretch", "nest.stretch", "rule"));
    TABLE.put("nest", with("nest.wish", "nest.wish", "nest.choice", "nest.swing", "nest.tidy"));
    TABLE.put("order", with("lay", "lay", "work"));
    TABLE.put("job", with("lay", "lay", "order"));
    TABLE.put("figures", with("rule", "rule", "order", "job"));
    TABLE.put("file.source", with("job", "job"));
    TABLE.put("file.dxf", with("job", "job", "file.source"));
    TABLE.put("draw.sheet", with("figures", "figures"));
    TABLE.put("draw.piece", with("draw.sheet", "draw.sheet"));
    TABLE.put("draw.plot", with("draw.sheet", "draw.sheet", "file.dxf"));
    TABLE.put("draw.marker", with("draw.piece", "draw.piece", "draw.plot"));
    TABLE.put("draw.tiles", with("draw.piece", "draw.piece"));
    TABLE.put("draw.order", with("draw.sheet", "draw.sheet"));
    TABLE.put("draw.reference", with("draw.sheet", "draw.sheet", "trace"));
    TABLE.put("draw.photo", with("draw.sheet", "draw.sheet", "trace"));
    TABLE.put(
        "file.alter",
        List.of("pattern.alter", "pattern", "file.source", "geometry", "units", "problem"));
    TABLE.put(
        "file.job",
        with("job", "job", "file.source", "file.alter", "pattern.alter", "pattern.block"));
    TABLE.put("file.drawn", with("job", "job", "file.source", "file.job"));
    TABLE.put("file.svg", with("file.drawn", "file.drawn"));
    TABLE.put("file.pdf", with("file.drawn", "file.drawn"));
    TABLE.put("file.photo", with("file.drawn", "file.drawn", "trace"));
    TABLE.put("file.interchange", with("file.drawn", "file.drawn", "file.dxf"));
    TABLE.put("file.marker", with("job", "job", "rule", "file.source"));
    TABLE.put("file.figures", with("figures", "figures", "file.source"));
    TABLE.put(
        "app",
        with(
            "figures",
            "figures",
            "work",
            "nest",
            "nest.pose",
            "nest.repeat",
            "edit",
            "draw.sheet",
            "draw.piece",
            "draw.plot",
            "draw.marker",
            "draw.tiles",
            "draw.order",
            "draw.reference",
            "draw.photo",
            "file.source",
            "file.job",
            "file.drawn",
            "file.svg",
            "file.interchange",
            "file.pdf",
            "file.photo",
            "file.marker",
            "file.figures",
            "trace"));
    TABLE.put("many", with("app", "app"));
    TABLE.put("many.cluster", List.of("many", "problem", "work"));
    TABLE.put(
        "desk",
        with(
            "edit",
            "edit",
            "app",
            "figures",
            "file.source",
            "file.job",
            "file.drawn",
            "file.photo",
            "trace",
            "job",
            "work"));
    TABLE.put(
        "cli",
        List.of(
            "desk",
            "many",
            "many.cluster",
            "app",
            "job",
            "file.source",
            "file.job",
            "file.drawn",
            "file.pdf",
            "file.photo",
            "units",
            "problem",
            "work"));
    TABLE.put(
        "bench",
        with(
            "nest",
            "nest",
            "order",
            "job",
            "figures",
            "file.source",
            "file.job",
            "app",
            "many",
            "many.cluster"));
  }

  private static JavaClasses classes;

  private static List<String> with(String base, String... more) {
    List<String> all = new ArrayList<>(TABLE.get(base));
    for (String name : more) {
      if (!all.contains(name)) {
        all.add(name);
      }
    }
    return List.copyOf(all);
  }

  @BeforeAll
  static void read() {
    classes =
        new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("ellwand");
  }

  @Test
  void everyPackageIsInTheTable() {
    TreeSet<String> found = new TreeSet<>();
    classes.forEach(c -> found.add(c.getPackageName().substring("ellwand".length() + 1)));
    TreeSet<String> unknown = new TreeSet<>(found);
    unknown.removeAll(TABLE.keySet());
    assertEquals(new TreeSet<>(), unknown, "packages that the table does not know");
  }

  @TestFactory
  List<DynamicTest> eachImportsOnlyWhatItMay() {
    List<DynamicTest> tests = new ArrayList<>();
    TABLE.forEach(
        (name, may) -> {
          tests.add(DynamicTest.dynamicTest(name, () -> holds(name, may)));
        });
    return tests;
  }

  private static void holds(String name, List<String> may) {
    List<String> allowed = new ArrayList<>();
    allowed.add("ellwand." + name);
    may.forEach(other -> allowed.add("ellwand." + other));
    noClasses()
        .that(resideInAPackage("ellwand." + name))
        .should()
        .dependOnClassesThat(
            resideInAPackage("ellwand..")
                .and(not(resideInAnyPackage(allowed.toArray(new String[0])))))
        .allowEmptyShould(true)
        .check(classes);
  }

  @Test
  void onlyTheAppTasksAndTheBenchSeeTheNester() {
    noClasses()
        .that()
        .resideOutsideOfPackages("ellwand.app", "ellwand.many", "ellwand.bench", "ellwand.nest..")
        .should()
        .dependOnClassesThat(resideInAnyPackage("ellwand.nest.."))
        .check(classes);
  }

  @Test
  void noCycles() {
    slices().matching("ellwand.(**)").should().beFreeOfCycles().check(classes);
  }

  @Test
  void librariesStayWhereTheyBelong() {
    stays("org.locationtech.jts..", "ellwand.geometry");
    for (String vision : List.of("boofcv..", "georegression..", "org.ddogleg..", "org.ejml..")) {
      stays(vision, "ellwand.trace");
    }
    stays("com.drew..", "ellwand.trace");
    for (String engine : List.of("org.apache.pekko..", "com.typesafe..", "scala..")) {
      stays(engine, "ellwand.many.cluster");
    }
    stays("org.optaplanner..", "ellwand.nest", "ellwand.nest.choice", "ellwand.order");
    stays("org.apache.batik..", "ellwand.draw..");
    stays("org.apache.pdfbox..", "ellwand.draw..", "ellwand.file.pdf");
    stays("picocli..", "ellwand.cli", "ellwand.bench");
  }

  private static void stays(String library, String... homes) {
    noClasses()
        .that()
        .resideOutsideOfPackages(homes)
        .should()
        .dependOnClassesThat()
        .resideInAPackage(library)
        .allowEmptyShould(true)
        .check(classes);
  }
}
