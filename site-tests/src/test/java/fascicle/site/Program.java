package fascicle.site;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The built program, run in a Java of its own: without the launcher, whose tests are elsewhere. */
final class Program {

    private Program() {}

    /** Runs a command. */
    static Run run(String... arguments) {
        return runUnder(List.of(), arguments);
    }

    /** Runs a command in a Java that was started with more flags, such as {@code -Duser.language=tr}. */
    static Run runUnder(List<String> flags, String... arguments) {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Dfile.encoding=UTF-8"));
        command.addAll(flags);
        command.addAll(List.of("-jar", Checkout.jar().toString()));
        command.addAll(List.of(arguments));
        return Run.of(Checkout.root(), command);
    }
}
