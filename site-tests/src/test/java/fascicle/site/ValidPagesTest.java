package fascicle.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Every page of the demo is valid HTML by the Nu checker, without a warning. */
class ValidPagesTest {

    private static final Nu NU = new Nu();

    @ParameterizedTest
    @EnumSource
    void every_page_is_valid(Edition edition) {
        assertEquals(List.of(), NU.faults(PublishedBook.ofTheDemo(edition)));
    }

    @Test
    void the_checker_finds_what_is_wrong() {
        String start = "<!DOCTYPE html><html lang='en'><title>x</title><p>";
        assertEquals(List.of(), NU.faults("page.html", start));
        List<String> faults = NU.faults("page.html", start + "<ul><p id='a b'>x</ul><img src='x.png'>");
        assertTrue(faults.size() >= 2, faults.toString());
        assertTrue(faults.stream().anyMatch(fault -> fault.startsWith("1:") && fault.contains("error: ")), faults.toString());
    }
}
