package fascicle.cli;

import fascicle.book.Program;
import picocli.CommandLine;

/** Says which Fascicle this is. */
final class Version implements CommandLine.IVersionProvider {

    @Override
    public String[] getVersion() {
        return new String[] {Program.name()};
    }
}
