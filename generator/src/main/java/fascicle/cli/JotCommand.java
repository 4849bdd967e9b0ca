package fascicle.cli;

import fascicle.notebook.Entry;
import fascicle.notebook.Ids;
import fascicle.notebook.Method;
import fascicle.notebook.NeedleLot;
import fascicle.notebook.Notebook;
import fascicle.notebook.Noted;
import fascicle.notebook.read.Suggestion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes the day's entries to fill in. */
@Command(name = "jot", mixinStandardHelpOptions = true,
        description = "Writes today's entry with gaps to fill in. It never overwrites a file.")
final class JotCommand implements Callable<Integer> {

    private static final int MOST_POTS = 50;

    private final Terminal terminal;
    private final LocalDate today = LocalDate.now();

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
        Notebook read = NotebookFolder.withCover(
                NotebookFolder.read(notebook, NotebookFolder.darkroom(), terminal).notebook());
        Optional<Entry> model = asked(read, like, "entry", read.entries(), Entry::id);
        Optional<String> ofMethod = asked(read, method, "method", read.methods(), Method::id).map(Method::id)
                .or(() -> model.flatMap(Entry::method).map(Noted::value));
        Optional<String> ofLot = asked(read, lot, "lot", read.lots(), NeedleLot::id).map(NeedleLot::id)
                .or(() -> model.flatMap(entry -> entry.needles().lot()).map(Noted::value));
        Path folder = notebook.resolve("days").resolve(today.toString());
        FreeNames free = new FreeNames(read, today, folder);
        String name = pots > 1 ? "pots" : model.map(Entry::name).or(() -> ofMethod).orElse("pot");
        List<String> names = pots > 1 ? free.several("pot", pots) : List.of(free.one(name));
        Path written = folder.resolve((pots > 1 ? free.one(name) : names.get(0)) + ".md");
        Files.createDirectories(folder);
        Files.writeString(written, Slip.text(ofMethod, ofLot, model, names), StandardOpenOption.CREATE_NEW);
        terminal.print(written.toString());
        return Status.DONE;
    }

    private <T> Optional<T> asked(Notebook read, @Nullable String id, String kind, List<T> things,
            Function<T, String> idOf) {
        if (id == null) {
            return Optional.empty();
        }
        Optional<T> found = things.stream().filter(thing -> Ids.same(idOf.apply(thing), id)).findFirst();
        if (found.isEmpty()) {
            read.missing().stream().filter(missing -> Ids.same(missing.what(), id)).findFirst().ifPresent(faulty -> {
                throw new WrongCall("“" + id + "” has errors, so nothing can be taken from it; mend it first: "
                        + String.join("; ", faulty.why()) + ".");
            });
            List<String> known = things.stream().map(idOf).toList();
            throw new WrongCall("“" + id + "” names no " + kind + " of this notebook; " + Suggestion.of(id, known)
                    .map(near -> "did you mean “" + near + "”?").orElseGet(() -> hint(kind, known)));
        }
        return found;
    }

    private static String hint(String kind, List<String> known) {
        return kind.equals("entry") ? "an entry's id is its day and its name, as in 2026-05-09-brick-half."
                : known.isEmpty() ? "it has none yet; leave --" + kind + " out."
                : "name one of these: " + String.join(", ", known) + ".";
    }
}
