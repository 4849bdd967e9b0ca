package fascicle;

import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A room stands on the ones below it and never looks up. */
@AnalyzeClasses(packages = "fascicle", importOptions = ImportOption.DoNotIncludeTests.class)
class FloorsTest {

    @ArchTest
    static final ArchRule ROOMS_NEVER_LOOK_UP = layeredArchitecture().consideringOnlyDependenciesInLayers()
            .layer("measure").definedBy("fascicle.measure..")
            .layer("colour").definedBy("fascicle.colour..")
            .layer("bath").definedBy("fascicle.bath..")
            .layer("photo").definedBy("fascicle.photo..")
            .layer("notebook").definedBy("fascicle.notebook..")
            .layer("workings").definedBy("fascicle.workings..")
            .layer("book").definedBy("fascicle.book..")
            .layer("cli").definedBy("fascicle.cli..")
            .whereLayer("cli").mayNotBeAccessedByAnyLayer()
            .whereLayer("book").mayOnlyBeAccessedByLayers("cli")
            .whereLayer("workings").mayOnlyBeAccessedByLayers("book", "cli")
            .whereLayer("notebook").mayOnlyBeAccessedByLayers("workings", "book", "cli")
            .whereLayer("bath").mayOnlyBeAccessedByLayers("notebook", "workings", "book", "cli")
            .whereLayer("photo").mayOnlyBeAccessedByLayers("notebook", "workings", "book", "cli")
            .whereLayer("colour").mayOnlyBeAccessedByLayers("bath", "photo", "notebook", "workings", "book", "cli")
            .whereLayer("measure").mayOnlyBeAccessedByLayers("colour", "bath", "notebook", "workings", "book", "cli")
            .ensureAllClassesAreContainedInArchitecture();

    @ArchTest
    static final ArchRule COLOUR_KNOWS_NO_MEASURES =
            noClasses().that().resideInAPackage("fascicle.colour..")
                    .should().dependOnClassesThat().resideInAPackage("fascicle.measure..");

    @ArchTest
    static final ArchRule THE_NOTEBOOKS_RECORDS_KNOW_NOTHING_OF_HOW_THEY_ARE_READ =
            noClasses().that().resideInAPackage("fascicle.notebook")
                    .should().dependOnClassesThat().resideInAnyPackage("fascicle.notebook.text..",
                            "fascicle.notebook.resolve..", "fascicle.notebook.read..", "fascicle.notebook.edition..");

    @ArchTest
    static final ArchRule WORKINGS_NEVER_HEAR_HOW_A_NOTEBOOK_WAS_READ_OR_CUT =
            noClasses().that().resideInAPackage("fascicle.workings..")
                    .should().dependOnClassesThat().resideInAnyPackage("fascicle.notebook.text..",
                            "fascicle.notebook.resolve..", "fascicle.notebook.read..", "fascicle.notebook.edition..");

    @ArchTest
    static final ArchRule FIGURES_OF_ENTRIES_STAND_ON_NOTHING_ELSE_OF_THE_WORKINGS =
            noClasses().that().resideInAPackage("fascicle.workings")
                    .should().dependOnClassesThat().resideInAPackage("fascicle.workings.*..");

    @ArchTest
    static final ArchRule WORKINGS_GO_IN_NO_CIRCLE =
            slices().matching("fascicle.workings.(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule THE_BOOK_GOES_IN_NO_CIRCLE =
            slices().matching("fascicle.book.(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule YAML_IS_KNOWN_IN_ONE_ROOM =
            noClasses().that().resideOutsideOfPackage("fascicle.notebook.text..")
                    .should().dependOnClassesThat().resideInAnyPackage("tools.jackson.dataformat..",
                            "org.snakeyaml..");

    @ArchTest
    static final ArchRule THE_COMMAND_LINE_IS_KNOWN_IN_ONE_ROOM =
            noClasses().that().resideOutsideOfPackage("fascicle.cli..")
                    .should().dependOnClassesThat().resideInAPackage("picocli..");

    @ArchTest
    static final ArchRule FIGURES_ARE_THE_SAME_ON_EVERY_MACHINE =
            noClasses().that().resideInAnyPackage("fascicle.measure..", "fascicle.colour..", "fascicle.bath..",
                            "fascicle.photo..", "fascicle.workings..")
                    .should().callMethod(Math.class, "pow", double.class, double.class)
                    .orShould().callMethod(Math.class, "cbrt", double.class)
                    .orShould().callMethod(Math.class, "atan2", double.class, double.class)
                    .orShould().callMethod(Math.class, "sin", double.class)
                    .orShould().callMethod(Math.class, "cos", double.class)
                    .orShould().callMethod(Math.class, "exp", double.class)
                    .orShould().callMethod(Math.class, "log10", double.class)
                    .because("StrictMath gives the same bytes everywhere");

    @ArchTest
    static final ArchRule COMMANDS_STAY_SMALL_AND_SHUT =
            classes().that().resideInAPackage("fascicle.cli").and().haveSimpleNameEndingWith("Command")
                    .should().notBePublic();

    @Test
    void everyPackageSaysWhatLivesThereAndIsNullMarked() throws IOException {
        Path sources = Path.of("src/main/java/fascicle");
        try (Stream<Path> files = Files.walk(sources)) {
            List<Path> silent = files.filter(Files::isDirectory).filter(FloorsTest::holdsClasses)
                    .filter(folder -> !saysWhatLivesThere(folder)).toList();
            assertEquals(List.of(), silent);
        }
    }

    private static boolean holdsClasses(Path folder) {
        try (Stream<Path> files = Files.list(folder)) {
            return files.anyMatch(file -> file.toString().endsWith(".java"));
        } catch (IOException failed) {
            throw new java.io.UncheckedIOException(failed);
        }
    }

    private static boolean saysWhatLivesThere(Path folder) {
        try {
            String text = Files.readString(folder.resolve("package-info.java"));
            return text.contains("@NullMarked") && text.startsWith("/**");
        } catch (IOException absent) {
            return false;
        }
    }
}
