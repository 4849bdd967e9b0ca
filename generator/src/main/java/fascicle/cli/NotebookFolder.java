package fascicle.cli;

import fascicle.book.Book;
import fascicle.notebook.Finding;
import fascicle.notebook.read.NotebookReader;
import fascicle.workings.Proofreading;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** A notebook's folder as a command was given it. */
final class NotebookFolder {

    private NotebookFolder() {}

    /** Checks that a folder can be read as a notebook. */
    static Path checked(Path folder) throws IOException {
        if (!Files.exists(folder)) {
            throw new WrongCall("There is no folder “" + folder + "”; name the folder of your notebook, or start one "
                    + "with: fascicle begin " + folder);
        }
        if (!Files.isDirectory(folder)) {
            throw new WrongCall("“" + folder + "” is a file; name the folder that holds your notebook.");
        }
        if (!Files.isReadable(folder)) {
            throw new AccessDeniedException(folder.toString());
        }
        return folder;
    }

    /** Reads and proofs a notebook. */
    static Proofreading.Proof proof(Path folder) throws IOException {
        NotebookReader.Result read = NotebookReader.read(checked(folder));
        List<Finding> findings = new ArrayList<>(read.findings());
        findings.addAll(Book.takenOutOf(read.notebook()));
        return Proofreading.of(read.notebook(), findings);
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
