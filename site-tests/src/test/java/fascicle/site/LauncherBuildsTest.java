package fascicle.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/**
 * When the launcher builds, and what it says. Java and Maven are stand-ins here: the one tells what it was given, the
 * other notes that it was called.
 */
@DisabledOnOs(value = OS.WINDOWS, disabledReason = "Windows has a launcher of its own")
class LauncherBuildsTest {

    private static final String BUILDING = "fascicle: building the program (once; takes a minute)…\n";

    @TempDir
    Path folder;

    private Path generator;
    private Path jar;
    private Path javaHome;
    private Path maven;
    private Path builds;

    @BeforeEach
    void layOut() throws IOException {
        generator = Files.createDirectories(folder.resolve("check out/generator"));
        jar = generator.resolve("target/fascicle.jar");
        builds = folder.resolve("builds");
        Files.copy(Checkout.root().resolve("generator/fascicle"), generator.resolve("fascicle"));
        write(generator.resolve("src/main/java/Some.java"), "");
        write(generator.resolve("pom.xml"), "");
        javaHome = folder.resolve("java home");
        write(javaHome.resolve("release"), "JAVA_VERSION=\"17.0.1\"\n");
        program(javaHome.resolve("bin/javac"), "");
        program(
                javaHome.resolve("bin/java"),
                """
                while [ "$1" != -jar ]; do shift; done
                shift 2
                printf '<%s>' "$@"
                echo "a word to the maker" >&2
                exit 37
                """);
        maven = folder.resolve("maven/mvn");
        program(
                maven,
                """
                echo "start $JAVA_HOME" >>"%1$s"
                sleep 0.5
                mkdir -p "%2$s"
                touch "%2$s/fascicle.jar"
                echo end >>"%1$s"
                """
                        .formatted(builds, jar.getParent()));
    }

    @Test
    void arguments_words_and_the_exit_status_pass_untouched() {
        Run run = launch("two words", "", "*", "$HOME", "'\"\\", "nadeln-grün", "-x=ü°");
        assertEquals("<two words><><*><$HOME><'\"\\><nadeln-grün><-x=ü°>", run.output());
        assertEquals(37, run.status());
        assertEquals(BUILDING + "a word to the maker\n", run.words());
    }

    @Test
    void builds_once_and_with_the_java_it_found() throws IOException {
        launch();
        Run second = launch();
        assertEquals(List.of("start " + javaHome, "end"), Files.readAllLines(builds));
        assertEquals("a word to the maker\n", second.words());
    }

    @Test
    void builds_again_when_a_source_is_newer() throws IOException {
        launch();
        Path source = generator.resolve("src/main/java/Some.java");
        Files.setLastModifiedTime(source, FileTime.from(Instant.now().plusSeconds(5)));
        Run run = launch();
        assertTrue(run.words().startsWith(BUILDING), run.words());
    }

    @Test
    void what_is_edited_during_a_build_is_built_at_the_next_launch() throws IOException {
        Run.Started building = start();
        Path source = generator.resolve("src/main/java/Some.java");
        while (!Files.exists(builds)) {
            Thread.onSpinWait();
        }
        Files.setLastModifiedTime(source, FileTime.from(Instant.now()));
        building.await();
        assertTrue(launch().words().startsWith(BUILDING));
    }

    @Test
    void launches_at_once_build_one_after_the_other() throws IOException {
        List<Run.Started> launches = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            launches.add(start());
        }
        for (Run.Started launch : launches) {
            assertEquals(37, launch.await().status());
        }
        assertEquals(List.of("start " + javaHome, "end"), Files.readAllLines(builds));
        assertFalse(Files.exists(generator.resolve("target/fascicle.lock")));
    }

    @Test
    void the_lock_of_a_launch_that_died_is_broken() throws Exception {
        Process dead = new ProcessBuilder("true").start();
        dead.waitFor();
        write(generator.resolve("target/fascicle.lock/process"), dead.pid() + "\n");
        assertEquals(37, launch().status());
    }

    @Test
    void a_failed_build_shows_mavens_last_words_and_ends_with_3() throws IOException {
        program(maven, "seq 1 100; echo 'No such dependency' >&2; exit 1");
        Run run = launch();
        assertEquals(3, run.status());
        assertEquals("", run.output());
        assertTrue(run.words().startsWith(BUILDING), run.words());
        assertTrue(run.words().endsWith("99\n100\nNo such dependency\n"), run.words());
        assertFalse(run.words().contains("\n50\n"), "only the last words");
        assertFalse(Files.exists(generator.resolve("target/fascicle.lock")));
    }

    @Test
    void without_maven_nothing_can_be_built_and_it_says_what_to_install() throws IOException {
        Files.delete(maven);
        Run run = launch();
        assertEquals(3, run.status());
        assertTrue(run.words().contains("Install Maven"), run.words());
    }

    @Test
    void without_maven_a_built_program_runs_even_if_older_than_its_sources() throws IOException {
        Files.delete(maven);
        write(jar, "");
        Files.setLastModifiedTime(jar, FileTime.from(Instant.now().minusSeconds(600)));
        Run run = launch();
        assertEquals(37, run.status());
        assertTrue(run.words().contains("running the program as it was built"), run.words());
    }

    @Test
    void a_built_program_without_its_sources_runs_and_says_nothing() throws IOException {
        Files.delete(maven);
        Files.delete(generator.resolve("src/main/java/Some.java"));
        Files.delete(generator.resolve("src/main/java"));
        Files.delete(generator.resolve("src/main"));
        write(jar, "");
        Run run = launch();
        assertEquals(37, run.status());
        assertEquals("a word to the maker\n", run.words());
    }

    @Test
    void an_older_java_is_not_enough() throws IOException {
        write(javaHome.resolve("release"), "JAVA_VERSION=\"11.0.20\"\n");
        Run run = launch();
        assertEquals(3, run.status());
        assertTrue(run.words().contains("Java 17 or newer is needed"), run.words());
    }

    @Test
    void a_java_without_a_compiler_builds_nothing() throws IOException {
        Files.delete(javaHome.resolve("bin/javac"));
        Run run = launch();
        assertEquals(3, run.status());
        assertTrue(run.words().contains("building needs a JDK"), run.words());
    }

    private Run launch(String... arguments) {
        return start(arguments).await();
    }

    private Run.Started start(String... arguments) {
        List<String> command = new ArrayList<>(List.of(generator.resolve("fascicle").toString()));
        command.addAll(List.of(arguments));
        return Run.start(folder, Map.of("JAVA_HOME", javaHome.toString(), "PATH", path()), command);
    }

    /** The stand-in Maven and the system's small tools, but no true Java and no true Maven. */
    private String path() {
        try {
            Path tools = Files.createDirectories(folder.resolve("tools"));
            for (String name : List.of(
                    "bash", "cat", "dirname", "find", "head", "locale", "mkdir", "mktemp", "mv", "readlink", "rm",
                    "rmdir", "sed", "seq", "sleep", "tail", "touch")) {
                Path tool = tools.resolve(name);
                if (!Files.exists(tool)) {
                    write(tool, "#!/bin/sh\nexec " + find(name) + " \"$@\"\n");
                    makeExecutable(tool);
                }
            }
            return maven.getParent() + ":" + tools;
        } catch (IOException problem) {
            throw new IllegalStateException(problem);
        }
    }

    private static Path find(String name) {
        for (String place : System.getenv("PATH").split(":")) {
            Path tool = Path.of(place, name);
            if (Files.isExecutable(tool)) {
                return tool;
            }
        }
        throw new IllegalStateException("Not on the PATH: " + name);
    }

    private static void program(Path file, String script) throws IOException {
        write(file, "#!/usr/bin/env bash\n" + script);
        makeExecutable(file);
    }

    private static void makeExecutable(Path file) throws IOException {
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rwxr-xr-x"));
    }

    private static void write(Path file, String text) throws IOException {
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
    }
}
