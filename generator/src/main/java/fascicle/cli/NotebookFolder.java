package fascicle.cli;

import fascicle.book.Book;
import fascicle.notebook.Edition;
import fascicle.notebook.Finding;
import fascicle.notebook.Notebook;
import fascicle.notebook.read.NotebookReader;
import fascicle.photo.Darkroom;
import fascicle.workings.proof.Proofreading;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** A notebook's folder as a command was given it. */
final class NotebookFolder {

    private NotebookFolder() {}

    /** Refuses a name without a letter, which would mean the folder one stands in. */
    static void named(Path folder) {
        if (folder.toString().isBlank()) {
            throw new WrongCall("A folder's name is empty in this call; name the folder (“.” is the one you are in).");
        }
    }

    /** Checks that a folder can be read as a notebook. */
    static Path checked(Path folder) throws IOException {
        named(folder);
        if (!Files.exists(folder)) {
            throw new WrongCall("There is no folder “" + folder + "”; name the folder of your notebook, or start one "
                    + "with: " + Called.program() + " begin " + CommandLinePath.of(folder));
        }
        if (!Files.isDirectory(folder)) {
            throw new WrongCall("“" + folder + "” is a file; name the folder that holds your notebook.");
        }
        if (!Files.isReadable(folder)) {
            throw new AccessDeniedException(folder.toString());
        }
        return folder;
    }

    /** Reads and proofs a notebook, the maker's words and the pictures in them included. */
    static Proofreading.Proof proof(Path folder, Terminal terminal) throws IOException {
        NotebookReader.Result read = read(folder, darkroom(), terminal);
        List<Finding> findings = new ArrayList<>(read.findings());
        findings.addAll(Book.takenOutOf(read.notebook(),
                Book.gallery(read.notebook(), Edition.STUDIO, folder, darkroom())));
        return Proofreading.of(read.notebook(), findings);
    }

    /** The sound part of a notebook, whose findings nobody asks for. */
    static Notebook sound(Path folder, Terminal terminal) throws IOException {
        return withCover(soundProof(folder, terminal).notebook());
    }

    /**
     * The sound part of a notebook, after the errors of files that some recipes rest on were said.
     *
     * @param recipes the entries and methods that a call names
     * @param vessels the vessels that it names
     */
    static Notebook sound(Path folder, List<String> recipes, List<String> vessels, Terminal terminal)
            throws IOException {
        Proofreading.Proof proof = soundProof(folder, terminal);
        Notebook sound = withCover(proof.notebook());
        new FaultyFiles(sound, proof.findings()).under(recipes, vessels).forEach(terminal::say);
        return sound;
    }

    private static Proofreading.Proof soundProof(Path folder, Terminal terminal) throws IOException {
        NotebookReader.Result read = read(folder, darkroom(), terminal);
        return Proofreading.of(read.notebook(), read.findings());
    }

    /** Reads a notebook as it stands. */
    static NotebookReader.Result read(Path folder, Darkroom darkroom, Terminal terminal) throws IOException {
        terminal.progress("reading the notebook …");
        NotebookReader.Result read = NotebookReader.read(checked(folder), darkroom,
                (looked, of) -> terminal.progress("reading the notebook … photograph " + looked + " of " + of));
        terminal.progressDone();
        return read;
    }

    /** What reads photographs, makes copies of them, and remembers both in the user's cache. */
    static Darkroom darkroom() {
        return Darkroom.keeping(Darkroom.usualFolder());
    }

    /** Refuses a notebook whose {@code notebook.yaml} could not be read, since everything rests on it. */
    static Notebook withCover(Notebook notebook) {
        notebook.missing().stream().filter(missing -> missing.what().equals(NotebookReader.COVER)).findFirst()
                .ifPresent(cover -> {
                    throw new WrongNotebook("Nothing can be made of this notebook until its " + NotebookReader.COVER
                            + " is mended: " + String.join("; ", cover.why()) + ".");
                });
        return notebook;
    }

    /** Says findings, and how many there are. */
    static String count(List<Finding> findings) {
        long errors = findings.stream().filter(finding -> finding.level() == Finding.Level.ERROR).count();
        long warnings = findings.size() - errors;
        return (errors == 1 ? "1 error" : errors + " errors") + ", "
                + (warnings == 1 ? "1 warning" : warnings + " warnings");
    }

    /** Whether a book may not be made of a notebook as it is. */
    static boolean hasErrors(List<Finding> findings) {
        return findings.stream().anyMatch(finding -> finding.level() == Finding.Level.ERROR);
    }
}
