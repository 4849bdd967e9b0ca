package fascicle.bench;

import java.io.File;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/** The command lines of the two programs that are compared, both under the flags of the generator's launcher. */
final class Programs {

    private static final List<String> FLAGS = List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC");
    private static final String JAVA = Path.of(System.getProperty("java.home"), "bin", "java").toString();

    private final Path scratch;
    private final Path generator;
    private final Path floorArchive;
    private final boolean archived;

    /**
     * Finds the generator beside this program, and makes the class-data archive of the floor.
     *
     * @param scratch a folder to work in
     * @param sample  a notebook to make the floor's archive with
     */
    Programs(Path scratch, Path sample) throws IOException, InterruptedException, Run.Failed {
        this.scratch = scratch;
        this.generator = home().resolve("generator/target");
        this.floorArchive = scratch.resolve("floor.jsa");
        if (Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator)).anyMatch(p -> !p.endsWith(".jar"))) {
            throw new IllegalStateException("run from jars, because a class-data archive holds no folders: " + System.getProperty("java.class.path"));
        }
        Run.of(floor(sample, scratch.resolve("floor-sample"), "-XX:ArchiveClassesAtExit=" + floorArchive), scratch);
        this.archived = Files.exists(generator.resolve("fascicle.jsa")) && takesArchive();
    }

    /** Whether {@code publish} runs with its class-data archive. */
    boolean publishArchived() {
        return archived;
    }

    /** The libraries alone, on two threads, without or with their class-data archive. */
    List<String> floor(Path notebook, Path target, boolean withArchive) {
        return withArchive ? floor(notebook, target, "-XX:SharedArchiveFile=" + floorArchive) : floor(notebook, target, "-Xshare:auto");
    }

    private List<String> floor(Path notebook, Path target, String archive) {
        return java(List.of(archive, "-cp", System.getProperty("java.class.path"), LibrariesAlone.class.getName(),
                notebook.toString(), target.toString(), "2"));
    }

    /** The JDK alone with photographs. */
    List<String> pictures(Path notebook, Path target) {
        return java(List.of("-cp", System.getProperty("java.class.path"), PicturesAlone.class.getName(),
                notebook.toString(), target.toString()));
    }

    /** A whole publishing. */
    List<String> publish(Path notebook, Path target) {
        List<String> arguments = new ArrayList<>();
        if (archived) {
            arguments.add("-XX:SharedArchiveFile=" + generator.resolve("fascicle.jsa"));
        }
        arguments.addAll(List.of("-jar", generator.resolve("fascicle.jar").toString(),
                "publish", notebook.toString(), "--to", target.toString()));
        return java(arguments);
    }

    /** A Java that cannot use an archive runs without it and says nothing, so that it must be looked up. */
    private boolean takesArchive() throws IOException, InterruptedException, Run.Failed {
        Path loaded = scratch.resolve("loaded.txt");
        Run.of(java(List.of("-XX:SharedArchiveFile=" + generator.resolve("fascicle.jsa"), "-Xlog:class+load:file=" + loaded,
                "-jar", generator.resolve("fascicle.jar").toString(), "--help")), scratch);
        try (Stream<String> lines = Files.lines(loaded)) {
            return lines.anyMatch(line -> line.contains(" fascicle.") && line.contains("shared objects file"));
        }
    }

    private static List<String> java(List<String> arguments) {
        List<String> command = new ArrayList<>(List.of(JAVA));
        command.addAll(FLAGS);
        command.addAll(arguments);
        return command;
    }

    /** The project's folder: this program's jar is its {@code site-tests/target/….jar}. */
    private static Path home() {
        try {
            Path jar = Path.of(Programs.class.getProtectionDomain().getCodeSource().getLocation().toURI());
            return jar.resolve("../../..").normalize();
        } catch (URISyntaxException e) {
            throw new IllegalStateException("this program lies at no path", e);
        }
    }
}
