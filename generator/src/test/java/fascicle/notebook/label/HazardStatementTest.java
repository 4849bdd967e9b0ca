package fascicle.notebook.label;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A pack's codes are worded as the system words them. */
class HazardStatementTest {

    static List<String> published() throws IOException {
        try (var stream = HazardStatementTest.class.getResourceAsStream("published-statements.txt")) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8).lines()
                    .filter(line -> !line.startsWith("#")).toList();
        }
    }

    @ParameterizedTest
    @MethodSource("published")
    void theWordsAreThosePublished(String line) {
        String code = line.substring(0, line.indexOf(' '));
        assertEquals(line, code + " " + HazardStatement.read(code).wording().orElseThrow());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "H301+H311|Toxic if swallowed or in contact with skin",
            "h302 + h332|Harmful if swallowed or if inhaled",
            "H300+310+330|Fatal if swallowed, in contact with skin or if inhaled",
            "H302+H318|Harmful if swallowed. Causes serious eye damage"})
    void combinedCodesAreWordedTogetherWhereTheSystemDoes(String written, String wording) {
        assertEquals(wording, HazardStatement.read(written).wording().orElseThrow());
    }

    @Test
    void aCodeIsSpelledAsTheSystemSpellsIt() {
        assertEquals("H302+H332", HazardStatement.read("h302 +332").code());
        assertEquals(List.of("EUH066"), HazardStatement.read("euh066").codes());
        assertEquals("H360Fd", HazardStatement.read("H360Fd").code());
    }

    @Test
    void capitalAndSmallLettersAfterACodeAreDifferentWarnings() {
        assertEquals(4, Stream.of("H360FD", "H360Fd", "H360Df", "H361fd").map(HazardStatement::read)
                .map(HazardStatement::wording).flatMap(Optional::stream).distinct().count());
        assertEquals(Optional.empty(), HazardStatement.read("H350I").wording());
    }

    @ParameterizedTest
    @ValueSource(strings = {"H999", "H381", "318", "P280", "H31", "H3180", "H318+", "+H318", "irritates", ""})
    void whatTheSystemDoesNotHaveHasNoWordsAndStaysAsWritten(String written) {
        HazardStatement read = HazardStatement.read(written);
        assertEquals(Optional.empty(), read.wording());
        assertEquals(written, read.code());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"H350, may cause cancer|H350", "H318 Causes serious eye damage|H318",
            "h301+311: toxic|H301+H311", "H360FD \u2013 may damage|H360FD", "EUH066 (dryness)|EUH066",
            "H318 + H317 with gloves|H318+H317"})
    void wordsCopiedWithACodeDoNotHideIt(String written, String code) {
        assertEquals(code, HazardStatement.read(written).code());
        assertTrue(HazardStatement.read(written).wording().isPresent());
    }

    /** Read as the first alone, the gravest of a pack could be lost. */
    @ParameterizedTest
    @ValueSource(strings = {"H302 and H350", "H302 Harmful if swallowed, H350 May cause cancer", "EUH066 with (h 350)",
            "P280, H350", "EUH208 contains cobalt, H350"})
    void noCodeHidesAnother(String written) {
        HazardStatement read = HazardStatement.read(written);
        assertEquals(List.of(), read.codes());
        assertEquals(written, read.code());
        assertTrue(read.isUnread());
    }

    @ParameterizedTest
    @ValueSource(strings = {"P280", "P 280", "P301+P312 if you feel unwell", "EUH208 contains cobalt", "H319"})
    void whatIsBesideTheHazardsIsNotUnread(String written) {
        assertFalse(HazardStatement.read(written).isUnread());
    }

    @Test
    void everyCodeOfTheTableIsReadAsItself() {
        assertTrue(HazardStatements.codes().size() > 100);
        HazardStatements.codes().forEach(code -> {
            assertEquals(code, HazardStatement.read(code).code());
            assertEquals(HazardStatements.wording(code), HazardStatement.read(code).wording());
        });
    }
}
