package fascicle.book.lookup;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A word is found however it is written; the book's script is asked the same cases in the browser. */
class FoldingTest {

    private static final Pattern UNIT = Pattern.compile("\\\\u([0-9a-f]{4})");

    static Stream<String> cases() throws IOException {
        try (InputStream file = FoldingTest.class.getResourceAsStream("folding.txt")) {
            return new String(Objects.requireNonNull(file).readAllBytes(), StandardCharsets.UTF_8).lines()
                    .filter(line -> !line.startsWith("#")).toList().stream();
        }
    }

    @ParameterizedTest
    @MethodSource("cases")
    void aTextIsFoundByItsFoldedWords(String line) {
        String[] parts = line.split("\\|", -1);
        String text = UNIT.matcher(parts[0]).replaceAll(unit -> String.valueOf((char) Integer.parseInt(unit.group(1), 16)));
        assertEquals(parts[1], String.join(" ", Folding.words(text)));
    }

    @Test
    void foldingAgainChangesNothing() throws IOException {
        cases().forEach(line -> {
            String once = Folding.fold(line);
            assertEquals(once, Folding.fold(once), line);
        });
    }
}
