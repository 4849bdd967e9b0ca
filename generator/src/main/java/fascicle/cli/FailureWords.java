package fascicle.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;

/** Says in a plain sentence why a command could not be carried out. */
final class FailureWords {

    private FailureWords() {}

    /** The sentence. */
    static String of(Throwable failed) {
        if (failed instanceof UncheckedIOException && failed.getCause() != null) {
            return of(failed.getCause());
        }
        if (failed instanceof AccessDeniedException denied) {
            return "“" + denied.getFile() + "” may not be read or written; give yourself the right to it.";
        }
        if (failed instanceof NoSuchFileException gone) {
            return "“" + gone.getFile() + "” is not there; mend its name, or make the folder it should lie in.";
        }
        if (failed instanceof FileAlreadyExistsException inTheWay) {
            return "“" + inTheWay.getFile() + "” is in the way; move it elsewhere.";
        }
        if (failed instanceof FileSystemException disk) {
            return "The disk failed at “" + disk.getFile() + "”"
                    + (disk.getReason() == null ? "" : " (" + disk.getReason() + ")") + "; mend that and try again.";
        }
        if (failed instanceof IOException disk) {
            return "The disk failed (" + disk.getMessage() + "); mend that and try again.";
        }
        if (failed instanceof OutOfMemoryError || failed instanceof StackOverflowError) {
            return "This notebook is more than the program's memory can hold; take out what is no writing.";
        }
        return "Fascicle made a mistake of its own, and your notebook is as it was. Please report these words: "
                + failed + place(failed.getStackTrace());
    }

    private static String place(StackTraceElement[] trace) {
        return trace.length == 0 ? "" : " at " + trace[0].getFileName() + ":" + trace[0].getLineNumber();
    }
}
