package fascicle.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Starts a notebook that can be published as it is. */
@Command(name = "begin", mixinStandardHelpOptions = true,
        description = "Starts a notebook with one lot, one dye, one method and one entry, ready to publish.")
final class BeginCommand implements Callable<Integer> {

    private static final String DAY = "@DAY@";

    private final Terminal terminal;

    @Parameters(paramLabel = "DIR", description = "The folder to start it in: a new or an empty one.")
    private Path folder = Path.of("");

    BeginCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws IOException {
        NotebookFolder.named(folder);
        refuseWhatIsThere();
        String today = LocalDate.now().toString();
        for (Map.Entry<String, String> file : files(today).entrySet()) {
            Path path = folder.resolve(file.getKey());
            Files.createDirectories(Objects.requireNonNull(path.getParent()));
            Files.writeString(path, text(file.getValue()).replace(DAY, today), StandardOpenOption.CREATE_NEW);
        }
        terminal.say("A notebook is begun in “" + folder + "”. Look at it as a book with:");
        terminal.say("  " + Called.program() + " publish " + CommandLinePath.of(folder) + " --to "
                + CommandLinePath.of(beside()));
        return Status.DONE;
    }

    private void refuseWhatIsThere() throws IOException {
        for (Path path = folder; path != null; path = path.getParent()) {
            if (Files.exists(path, LinkOption.NOFOLLOW_LINKS) && !Files.isDirectory(path)) {
                throw new WrongCall("“" + path + "” is no folder; name a new folder for the notebook.");
            }
        }
        if (Files.isDirectory(folder)) {
            try (DirectoryStream<Path> children = Files.newDirectoryStream(folder)) {
                if (children.iterator().hasNext()) {
                    throw new WrongCall("“" + folder + "” holds something already, and nothing of it shall be "
                            + "overwritten; name a new folder for the notebook.");
                }
            }
        }
    }

    /** A folder beside the notebook's, for its book. */
    private Path beside() {
        Path name = folder.toAbsolutePath().normalize().getFileName();
        return folder.resolve("..").resolve((name == null ? "note" : name) + "-book").normalize();
    }

    /** Where each file of the beginning goes, and which text it gets. */
    private static Map<String, String> files(String today) {
        Map<String, String> files = new LinkedHashMap<>();
        for (String name : new String[] {"notebook.yaml", "vessels.yaml", "needles/first-lot.md", "dyes/first-dye.md",
            "dyes/white-vinegar.md", "methods/low-simmer.md"}) {
            files.put(name, name);
        }
        files.put("days/" + today + "/first-pot.md", "days/first-pot.md");
        return files;
    }

    private static String text(String name) throws IOException {
        try (InputStream stream = BeginCommand.class.getResourceAsStream("/fascicle/cli/beginning/" + name)) {
            if (stream == null) {
                throw new IllegalStateException("the program lacks its file beginning/" + name);
            }
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
