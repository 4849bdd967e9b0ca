package fascicle.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** A maker starts the built program from wherever the maker happens to be. */
@DisabledOnOs(value = OS.WINDOWS, disabledReason = "Windows has a launcher of its own")
class LauncherTest {

    private static final String LAUNCHER = Checkout.root().resolve("generator/fascicle").toString();

    @TempDir
    Path folder;

    @Test
    void tells_its_version_and_ends_with_0() {
        Run run = Run.of(folder, List.of(LAUNCHER, "--version"));
        assertEquals(0, run.status(), run.words());
        assertTrue(run.output().contains("0.1.0"), run.output());
        assertEquals("", run.words(), "nothing is said beside the answer");
    }

    @Test
    void a_wrong_call_ends_with_2() {
        Run run = Run.of(folder, List.of(LAUNCHER, "--no-such-option"));
        assertEquals(2, run.status(), run.words());
    }

    @Test
    void a_relative_path_is_meant_from_the_callers_folder() throws IOException {
        Path shed = Files.createDirectory(folder.resolve("dye shed"));
        Run run = Run.of(shed, List.of(LAUNCHER, "begin", "my notebook"));
        assertEquals(0, run.status(), run.words());
        assertTrue(Files.isRegularFile(shed.resolve("my notebook/notebook.yaml")));
    }

    @Test
    void the_next_call_is_written_as_the_launcher_was_called() throws IOException {
        Path links = Files.createDirectory(folder.resolve("my bin"));
        Path link = Files.createSymbolicLink(links.resolve("dyebook"), Path.of(LAUNCHER));
        Run run = Run.of(folder, List.of(link.toString(), "begin", "notebook"));
        assertTrue(run.words().contains("  \"" + link + "\" publish notebook --to "), run.words());
    }

    @Test
    void starts_by_links_of_links() throws IOException {
        Path links = Files.createDirectory(folder.resolve("bin"));
        Files.createSymbolicLink(links.resolve("first"), Path.of(LAUNCHER));
        Path second = Files.createSymbolicLink(links.resolve("second"), Path.of("first"));
        Run run = Run.of(folder, List.of(second.toString(), "--version"));
        assertEquals(0, run.status(), run.words());
    }

    @Test
    void a_built_program_carried_into_a_folder_with_spaces_runs() throws IOException {
        Path generator = Files.createDirectories(folder.resolve("a folder, with spaces & more/generator"));
        copy(Path.of(LAUNCHER), generator.resolve("fascicle"));
        Path target = Files.createDirectories(generator.resolve("target/lib")).getParent();
        copy(Checkout.jar(), target.resolve("fascicle.jar"));
        try (Stream<Path> libraries = Files.list(Checkout.jar().resolveSibling("lib"))) {
            for (Path library : libraries.toList()) {
                copy(library, target.resolve("lib").resolve(library.getFileName()));
            }
        }
        Run run = Run.of(folder, List.of(generator.resolve("fascicle").toString(), "begin", "notebook"));
        assertEquals(0, run.status(), run.words());
        assertTrue(run.words().startsWith("A notebook is begun"), "the launcher itself says nothing: " + run.words());
        assertTrue(Files.isRegularFile(folder.resolve("notebook/notebook.yaml")));
    }

    private static void copy(Path from, Path to) throws IOException {
        Files.copy(from, to, StandardCopyOption.COPY_ATTRIBUTES);
    }
}
