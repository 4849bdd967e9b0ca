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
import fascicle.workings.Workings;
import fascicle.workings.proof.Proofreading;
import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ConcurrentHashMap;
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
        Proofreading.Proof proof = NotebookFolder.proof(notebook, terminal);
        List<Finding> findings = proof.findings();
        findings.forEach(finding -> terminal.say(finding.toString()));
        if (NotebookFolder.hasErrors(findings) && !despiteErrors) {
            terminal.say(NotebookFolder.count(findings) + ". No book was written: mend the errors, or publish without "
                    + "these entries by --despite-errors.");
            return Status.ERRORS;
        }
        Notebook cut = EditionCut.of(NotebookFolder.withCover(proof.notebook()), edition);
        Bound bound;
        try {
            bound = bind(Book.of(Workings.of(cut), edition, theme(cut.cover().theme()),
                    Book.gallery(cut, edition, notebook, NotebookFolder.darkroom())));
        } catch (ThemeBroken broken) {
            return unusable(broken);
        }
        terminal.say(summary(cut, bound, begun));
        terminal.print(target.resolve("index.html").toString());
        return Status.DONE;
    }

    private Theme theme(String named) throws ThemeBroken {
        if (theme == null && !Theme.isShipped(named)) {
            throw new WrongNotebook("notebook.yaml names the theme “" + named + "”, which does not come with Fascicle; "
                    + "write “theme: " + Cover.UNSAID.theme() + "” there, or name a folder with a look of your own by "
                    + "--theme.");
        }
        if (theme != null && !Files.isDirectory(theme)) {
            throw new WrongCall("There is no folder “" + theme + "”; name the folder of a theme by --theme.");
        }
        return theme == null ? Theme.shipped(named) : Theme.in(theme);
    }

    /**
     * Writes every page, and finishes only if the theme failed on none; what lies in the book's folder stays until
     * then.
     */
    private Bound bind(Book book) throws IOException, ThemeBroken {
        try (Binding binding = Binding.open(target, notebook, edition.word())) {
            List<String> addresses = book.addresses();
            AtomicInteger done = new AtomicInteger();
            Set<ThemeBroken.Fault> faults = ConcurrentHashMap.newKeySet();
            addresses.parallelStream().forEach(address -> {
                try {
                    put(binding, address, book.bytes(address));
                } catch (ThemeBroken.WhileRendering broken) {
                    faults.add(broken.fault());
                }
                int count = done.incrementAndGet();
                if (count % STEP == 0) {
                    terminal.progress("page " + count + " of " + addresses.size());
                }
            });
            terminal.progressDone();
            if (!faults.isEmpty()) {
                throw new ThemeBroken(List.copyOf(faults));
            }
            return binding.finish();
        } catch (TargetRefused refused) {
            throw new WrongCall(String.valueOf(refused.getMessage()));
        }
    }

    /** A theme's faults are told like a notebook's, each with the file's way from where the maker stands. */
    private int unusable(ThemeBroken broken) {
        String folder = theme == null ? "" : theme.toString().replace(File.separatorChar, '/') + "/";
        broken.faults().forEach(fault -> terminal.say(folder + fault));
        terminal.say(plural(broken.faults().size(), "error", "errors") + " in the theme. No book was written: mend "
                + (broken.faults().size() == 1 ? "it" : "them") + ", or publish without --theme.");
        return Status.ERRORS;
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
