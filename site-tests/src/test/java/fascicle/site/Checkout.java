package fascicle.site;

import java.nio.file.Files;
import java.nio.file.Path;

/** The folders of this checkout, wherever the tests were started from. */
final class Checkout {

    private static final Path ROOT = findRoot();

    private Checkout() {}

    /** The top folder. */
    static Path root() {
        return ROOT;
    }

    /** The folder into which tests write. */
    static Path target() {
        return ROOT.resolve("site-tests/target");
    }

    /** The built program. */
    static Path jar() {
        Path jar = ROOT.resolve("generator/target/fascicle.jar");
        if (!Files.isRegularFile(jar)) {
            throw new IllegalStateException("Not built yet: " + jar + "; run `mvn package -pl generator -am` first");
        }
        return jar;
    }

    private static Path findRoot() {
        Path here = Path.of("").toAbsolutePath();
        for (Path folder = here; folder != null; folder = folder.getParent()) {
            if (Files.isRegularFile(folder.resolve("generator/pom.xml"))) {
                return folder;
            }
        }
        throw new IllegalStateException("No checkout of Fascicle at or above " + here);
    }
}
