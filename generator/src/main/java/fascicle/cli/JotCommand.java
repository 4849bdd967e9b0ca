package fascicle.cli;

import fascicle.notebook.Entry;
import fascicle.notebook.Ids;
import fascicle.notebook.Notebook;
import fascicle.notebook.read.NotebookReader;
import fascicle.notebook.read.Suggestion;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes the day's entries to fill in. */
@Command(name = "jot", mixinStandardHelpOptions = true,
        description = "Writes today's entry with gaps to fill in. It never overwrites a file.")
final class JotCommand implements Callable<Integer> {

    private static final int MOST_POTS = 50;
    private static final int MOST_NAMES = 1000;

    private final Terminal terminal;

    @Parameters(paramLabel = "NOTEBOOK", description = "The notebook's folder.")
    private Path notebook = Path.of("");

    @Option(names = "--method", paramLabel = "METHOD", description = "The method that is followed.")
    private @Nullable String method;

    @Option(names = "--lot", paramLabel = "LOT", description = "The needle lot.")
    private @Nullable String lot;

    @Option(names = "--like", paramLabel = "ENTRY", description = "An entry whose recipe is taken over.")
    private @Nullable String like;

    @Option(names = "--pots", paramLabel = "N", defaultValue = "1", description = "How many pots. Default: 1.")
    private int pots = 1;

    JotCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws IOException {
        if (pots < 1 || pots > MOST_POTS) {
            throw new WrongCall("“" + pots + "” is no number of pots; name one from 1 to " + MOST_POTS + ".");
        }
        Notebook read = NotebookReader.read(NotebookFolder.checked(notebook)).notebook();
        Optional<Entry> model = asked(like, "entry", read.entries(), Entry::id);
        Optional<String> ofMethod = asked(method, "method", read.methods(), found -> found.id())
                .map(found -> found.id()).or(() -> model.flatMap(Entry::method).map(noted -> noted.value()));
        Optional<String> ofLot = asked(lot, "lot", read.lots(), found -> found.id())
                .map(found -> found.id()).or(() -> model.flatMap(entry -> entry.needles().lot())
                        .map(noted -> noted.value()));
        Path written = write(Slip.text(ofMethod, ofLot, model, pots), name(ofMethod, model));
        terminal.print(written.toString());
        return Status.DONE;
    }

    private <T> Optional<T> asked(@Nullable String id, String kind, List<T> things,
            java.util.function.Function<T, String> idOf) {
        if (id == null) {
            return Optional.empty();
        }
        Optional<T> found = things.stream().filter(thing -> Ids.same(idOf.apply(thing), id)).findFirst();
        if (found.isEmpty()) {
            throw new WrongCall("“" + id + "” names no " + kind + " of this notebook."
                    + Suggestion.of(id, things.stream().map(idOf).toList())
                            .map(near -> " Did you mean “" + near + "”?").orElse(""));
        }
        return found;
    }

    private String name(Optional<String> ofMethod, Optional<Entry> model) {
        return pots > 1 ? "pots" : model.map(Entry::name).or(() -> ofMethod).orElse("pot");
    }

    private Path write(String text, String name) throws IOException {
        Path folder = notebook.resolve("days").resolve(LocalDate.now().toString());
        Files.createDirectories(folder);
        for (int count = 1; count < MOST_NAMES; count++) {
            Path file = folder.resolve(name + (count == 1 ? "" : "-" + count) + ".md");
            try {
                return Files.writeString(file, text, StandardOpenOption.CREATE_NEW);
            } catch (FileAlreadyExistsException taken) {
                // The next name may be free.
            }
        }
        throw new WrongCall("The folder “" + folder + "” holds too many entries of this name; rename some.");
    }
}
