package fascicle.book.address;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class FileNamesTest {

    @Test
    void lettersStayAndAreComposed() {
        assertEquals("2026-05-09-\u00e9corce", FileNames.of("2026-05-09-e\u0301corce"));
    }

    @Test
    void whatSomeDiskRefusesIsSpelt() {
        assertEquals("a~2fb~3a~7e", FileNames.of("a/b:~"));
        assertEquals("~2e.~2f~2e", FileNames.of("../."));
        assertEquals("con~", FileNames.of("con"));
        assertEquals("aux.x~", FileNames.of("aux.x"));
    }

    @Test
    void longNamesAreShortenedAndStayDifferent() {
        String one = FileNames.of("\ud83c\udf32".repeat(100) + "1");
        String other = FileNames.of("\ud83c\udf32".repeat(100) + "2");
        assertNotEquals(one, other);
        assertTrue(one.getBytes(StandardCharsets.UTF_8).length <= 200);
    }

    @Test
    void linksArePercentEncodedUtf8() {
        assertEquals("entries/a%20%C3%A9%23%3F%25.html", FileNames.link("entries/a \u00e9#?%.html"));
    }
}
