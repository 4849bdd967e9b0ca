package fascicle.book.data;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.junit.jupiter.api.Test;

class EntriesCsvTest {

    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+1", "-1", "@sum", "  =1", "\u00a0=1", "\uff1d1"})
    void textThatBeginsAFormulaIsDefused(String text) {
        assertEquals("'" + text, EntriesCsv.cell(text));
    }

    @Test
    void tabsAndReturnsInFrontAreDefusedAndQuoted() {
        assertEquals("\"'\rx\"", EntriesCsv.cell("\rx"));
        assertEquals("'\tx", EntriesCsv.cell("\tx"));
    }

    @Test
    void otherTextStaysAsItIs() {
        assertEquals("a=b", EntriesCsv.cell("a=b"));
        assertEquals("4-5", EntriesCsv.cell("4-5"));
        assertEquals("", EntriesCsv.cell(""));
    }

    @Test
    void quotesCommasAndLinesAreQuotedByRfc4180() {
        assertEquals("\"a \"\"b\"\", c\"", EntriesCsv.cell("a \"b\", c"));
        assertEquals("\"a\nb\"", EntriesCsv.cell("a\nb"));
    }
}
