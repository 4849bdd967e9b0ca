package fascicle.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;

/** The program as its maker called it, so that a call that is printed can be copied. */
final class Called {

    /** Set by the launchers. */
    private static final String PROPERTY = "fascicle.called";

    private static final String NAME = "fascicle";

    private Called() {}

    /** The program's name or path, in quotes where a shell would take it apart. */
    static String program() {
        String called = System.getProperty(PROPERTY, NAME);
        try {
            return called.isBlank() ? NAME : CommandLinePath.of(Path.of(called));
        } catch (InvalidPathException noPath) {
            return NAME;
        }
    }
}
