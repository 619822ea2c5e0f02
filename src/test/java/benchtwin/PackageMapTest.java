package benchtwin;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Holds the package map: which package may use which, and which library lives where. */
class PackageMapTest {

    private static final String ROOT = "benchtwin.";

    /** Package to the packages it may use. A new arrow or a new package changes this table and the docs together. */
    private static final Map<String, Set<String>> MAY_USE = new LinkedHashMap<>();

    static {
        MAY_USE.put("measure", Set.of());
        MAY_USE.put("club", Set.of("measure"));
        MAY_USE.put("stock", Set.of("measure", "club"));
        MAY_USE.put("mechanics", Set.of("measure", "club"));
        MAY_USE.put("rules", Set.of("measure", "club", "mechanics"));
        MAY_USE.put("bend", Set.of("measure", "club", "mechanics"));
        MAY_USE.put("match", Set.of("measure", "club", "mechanics", "bend", "rules"));
        MAY_USE.put("sets", Set.of("measure", "club", "mechanics", "bend", "rules", "match"));
        MAY_USE.put("gauge", Set.of("measure", "club"));
        MAY_USE.put("book", Set.of("measure", "club"));
        MAY_USE.put("picture", Set.of("measure", "club", "mechanics"));
        MAY_USE.put("ticket", Set.of("measure", "club", "picture"));
        MAY_USE.put("bench", Set.of("measure", "club", "stock", "mechanics", "rules", "bend", "match", "sets", "gauge",
            "book", "picture", "ticket"));
        MAY_USE.put("web", Set.of("measure", "club", "stock", "rules", "bend", "match", "sets", "gauge", "picture",
            "ticket", "bench"));
        MAY_USE.put("cli", Set.of("measure", "club", "stock", "rules", "bend", "match", "sets", "gauge", "picture",
            "ticket", "bench", "web"));
    }

    /** Library package to the packages of ours that may use it. */
    private static final Map<String, Set<String>> LIBRARY_HOME = Map.ofEntries(
        Map.entry("org.optaplanner..", Set.of("sets")),
        Map.entry("org.apache.commons.csv..", Set.of("stock")),
        Map.entry("org.jdbi..", Set.of("book")),
        Map.entry("org.flywaydb..", Set.of("book")),
        Map.entry("io.javalin..", Set.of("web")),
        Map.entry("org.eclipse.jetty..", Set.of("web")),
        Map.entry("picocli..", Set.of("cli")),
        Map.entry("org.sqlite..", Set.of("book")),
        Map.entry("com.fasterxml.jackson..", Set.of("bench", "book")),
        Map.entry("gg.jte..", Set.of("ticket", "web")),
        Map.entry("com.openhtmltopdf..", Set.of("ticket", "web")),
        Map.entry("org.apache.pdfbox..", Set.of("ticket")),
        Map.entry("org.apache.fontbox..", Set.of("ticket")),
        Map.entry("com.google.zxing..", Set.of("picture")),
        Map.entry("org.jfree..", Set.of("picture")),
        Map.entry("org.apache.batik..", Set.of("picture")),
        Map.entry("org.jgrapht..", Set.of("match")),
        Map.entry("org.ojalgo..", Set.of("sets")));

    private static final JavaClasses CLASSES = new ClassFileImporter()
        .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
        .importPackages("benchtwin");

    @Test
    void everyPackageUsesOnlyWhatTheMapAllows() {
        MAY_USE.forEach((pkg, allowed) -> noClasses().that().resideInAPackage(ROOT + pkg + "..")
            .should().dependOnClassesThat().resideInAnyPackage(everyPackageBut(pkg, allowed))
            .allowEmptyShould(true).check(CLASSES));
    }

    @Test
    void everyLibraryStaysInItsHome() {
        LIBRARY_HOME.forEach((library, homes) -> noClasses().that()
            .resideInAnyPackage(everyPackageBut("", homes))
            .should().dependOnClassesThat().resideInAPackage(library)
            .allowEmptyShould(true).check(CLASSES));
    }

    @Test
    void theScanSeesEveryPackageAndTheTableKnowsThem() {
        Set<String> seen = CLASSES.stream().map(JavaClass::getPackageName)
            .filter(name -> name.startsWith(ROOT))
            .map(name -> name.substring(ROOT.length()).split("\\.")[0])
            .collect(Collectors.toCollection(TreeSet::new));
        assertThat(seen).isNotEmpty().contains("measure", "club");
        assertThat(MAY_USE.keySet()).containsAll(seen);
    }

    @Test
    void whatOnlyComputesReadsNoFilesAndNoClock() {
        noClasses().that().resideInAnyPackage(ROOT + "mechanics..", ROOT + "club..", ROOT + "measure..",
                ROOT + "gauge..", ROOT + "rules..")
            .should().dependOnClassesThat().resideInAnyPackage("java.io..", "java.nio..", "java.net..", "java.util.random..")
            .orShould().dependOnClassesThat().haveFullyQualifiedName("java.util.Random")
            .orShould().dependOnClassesThat().haveFullyQualifiedName("java.time.Clock")
            .check(CLASSES);
    }

    private static String[] everyPackageBut(String own, Set<String> allowed) {
        List<String> forbidden = MAY_USE.keySet().stream()
            .filter(name -> !name.equals(own) && !allowed.contains(name))
            .map(name -> ROOT + name + "..")
            .toList();
        assertThat(forbidden).as("packages %s may not use: %s", own, Arrays.toString(allowed.toArray())).isNotEmpty();
        return forbidden.toArray(String[]::new);
    }
}
