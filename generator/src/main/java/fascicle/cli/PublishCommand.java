package fascicle.cli;

import fascicle.book.Book;
import fascicle.book.binding.Binding;
import fascicle.book.binding.Bound;
import fascicle.book.binding.TargetRefused;
import fascicle.book.theme.Theme;
import fascicle.book.theme.ThemeBroken;
import fascicle.notebook.Cover;
import fascicle.notebook.Edition;
import fascicle.notebook.Finding;
import fascicle.notebook.Missing;
import fascicle.notebook.Notebook;
import fascicle.notebook.edition.EditionCut;
import fascicle.workings.Proofreading;
import fascicle.workings.Workings;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.atomic.AtomicInteger;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes the book. */
@Command(name = "publish", mixinStandardHelpOptions = true,
        description = "Makes the book of a notebook: pages that open by double-click.")
final class PublishCommand implements Callable<Integer> {

    private static final int STEP = 50;

    private final Terminal terminal;

    @Parameters(paramLabel = "NOTEBOOK", description = "The notebook's folder.")
    private Path notebook = Path.of("");

    @Option(names = "--to", required = true, paramLabel = "DIR",
            description = "The book's folder: a new or empty one, or that of an earlier book of the same edition.")
    private Path target = Path.of("");

    @Option(names = "--edition", paramLabel = "EDITION", defaultValue = "studio",
            description = "Whom the book is for: studio (everything), students, or open. Default: ${DEFAULT-VALUE}.")
    private Edition edition = Edition.STUDIO;

    @Option(names = "--despite-errors",
            description = "Make the book without the entries that have errors; its first page names them.")
    private boolean despiteErrors;

    @Option(names = "--theme", paramLabel = "DIR", description = "A folder with a look of your own.")
    private @Nullable Path theme;

    PublishCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws IOException {
        long begun = System.nanoTime();
        NotebookFolder.named(target);
        terminal.progress("reading the notebook …");
        Proofreading.Proof proof = NotebookFolder.proof(notebook);
        List<Finding> findings = proof.findings();
        terminal.progressDone();
        findings.forEach(finding -> terminal.say(finding.toString()));
        if (NotebookFolder.hasErrors(findings) && !despiteErrors) {
            terminal.say(NotebookFolder.count(findings) + ". No book was written: mend the errors, or publish without "
                    + "these entries by --despite-errors.");
            return Status.ERRORS;
        }
        Notebook cut = EditionCut.of(NotebookFolder.withCover(proof.notebook()), edition);
        Book book = Book.of(Workings.of(cut), edition, theme(cut.cover().theme()));
        Bound bound = bind(book);
        terminal.say(summary(cut, bound, begun));
        terminal.print(target.resolve("index.html").toString());
        return Status.DONE;
    }

    private Theme theme(String named) {
        if (theme == null && !Theme.isShipped(named)) {
            throw new WrongNotebook("notebook.yaml names the theme “" + named + "”, which does not come with Fascicle; "
                    + "write “theme: " + Cover.UNSAID.theme() + "” there, or name a folder with a look of your own by "
                    + "--theme.");
        }
        if (theme != null && !Files.isDirectory(theme)) {
            throw new WrongCall("There is no folder “" + theme + "”; name the folder of a theme by --theme.");
        }
        try {
            return theme == null ? Theme.shipped(named) : Theme.in(theme);
        } catch (ThemeBroken broken) {
            throw unusable(broken);
        }
    }

    private Bound bind(Book book) throws IOException {
        try (Binding binding = Binding.open(target, notebook, edition.word())) {
            List<String> addresses = book.addresses();
            AtomicInteger done = new AtomicInteger();
            addresses.parallelStream().forEach(address -> {
                put(binding, address, book.bytes(address));
                int count = done.incrementAndGet();
                if (count % STEP == 0) {
                    terminal.progress("page " + count + " of " + addresses.size());
                }
            });
            terminal.progressDone();
            return binding.finish();
        } catch (TargetRefused refused) {
            throw new WrongCall(String.valueOf(refused.getMessage()));
        } catch (ThemeBroken.WhileRendering broken) {
            throw unusable(broken);
        }
    }

    private static WrongCall unusable(Exception broken) {
        return new WrongCall("This theme cannot be used: " + broken.getMessage() + "; mend it, or publish without "
                + "--theme.");
    }

    private static void put(Binding binding, String address, byte[] bytes) {
        try {
            binding.put(address, bytes);
        } catch (IOException disk) {
            throw new UncheckedIOException(disk);
        }
    }

    private String summary(Notebook cut, Bound bound, long begun) {
        long tenths = Math.round((System.nanoTime() - begun) / 1e8);
        int files = bound.written() + bound.unchanged();
        long left = cut.missing().stream().filter(Missing::entry).count();
        String changes = bound.written() + bound.removed() == 0 ? "nothing changed"
                : bound.written() + " written, " + bound.unchanged() + " as they were, " + bound.removed() + " removed";
        return "The " + edition.word() + " edition: " + plural(cut.entries().size(), "entry", "entries")
                + (left == 0 ? "" : " (" + left + " left out because of errors)") + ", "
                + plural(files, "file", "files") + " (" + changes + ") in " + tenths / 10 + "." + tenths % 10
                + " s. Open:";
    }

    private static String plural(int count, String one, String many) {
        return count + " " + (count == 1 ? one : many);
    }
}
