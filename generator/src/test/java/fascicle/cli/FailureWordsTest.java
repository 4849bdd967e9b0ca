package fascicle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import org.junit.jupiter.api.Test;

/** A disk that fails is told in words, wherever in the work it failed. */
class FailureWordsTest {

    @Test
    void aFullDiskIsNamedWithTheFileItFailedAt() {
        assertEquals("The disk failed at “book/index.html” (No space left on device); mend that and try again.",
                FailureWords.of(new FileSystemException("book/index.html", null, "No space left on device")));
        assertEquals("The disk failed (No space left on device); mend that and try again.",
                FailureWords.of(new UncheckedIOException(new UncheckedIOException(
                        new IOException("No space left on device")).getCause())));
    }

    @Test
    void whatIsForbiddenMissingOrInTheWaySaysWhatToDo() {
        assertTrue(FailureWords.of(new AccessDeniedException("book")).startsWith("“book” may not be read or written; give"));
        assertTrue(FailureWords.of(new NoSuchFileException("book")).startsWith("“book” is not there; "));
        assertTrue(FailureWords.of(new FileAlreadyExistsException("book")).startsWith("“book” is in the way; move it"));
        assertTrue(FailureWords.of(new OutOfMemoryError()).contains("more than the program's memory can hold"));
    }

    @Test
    void aMistakeOfTheProgramIsOwnedInOneLine() {
        String words = FailureWords.of(new IllegalStateException("a bug"));
        assertTrue(words.startsWith("Fascicle made a mistake of its own") && words.contains("a bug"), words);
        assertTrue(words.contains("FailureWordsTest.java:"), words);
        assertEquals(1, words.lines().count());
    }
}
