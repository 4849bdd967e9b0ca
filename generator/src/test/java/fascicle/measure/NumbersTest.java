package fascicle.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("Numbers as makers write them")
class NumbersTest {
    private static final List<String> COUNTS = List.of("ZERO", "ONE", "TWO", "THREE", "FOUR", "FIVE", "SIX", "SEVEN");
    private static final List<String> PARTS = List.of("", "", "HALF", "THIRD", "QUARTER", "FIFTH", "SIXTH", "SEVENTH",
            "EIGHTH", "NINTH", "TENTH");

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "45 | 45", "0 | 0", "007 | 7", "1.5 | 3/2", ".5 | 1/2", "0.5 | 1/2", "1/2 | 1/2", "3/2 | 3/2", "1 1/2 | 3/2",
        "1-1/2 | 3/2", "1½ | 3/2", "1 ½ | 3/2", "½ | 1/2", "2⅔ | 8/3", "1⁄2 | 1/2", "11⁄2 | 11/2", "⅟8 | 1/8",
        "'1\u00a01/2' | 3/2", "'1\u20091/2' | 3/2", "'\u202f1\u202f½ ' | 3/2", "-5 | -5", "−5 | -5", "-1 1/2 | -3/2",
        "999999999999 | 999999999999", "0.123456789012 | 123456789012/1000000000000"})
    void aNumberIsReadExactly(String written, String exact) throws UnreadableQuantity {
        assertEquals(BigFraction.parse(exact), Numbers.read(written));
    }

    @ParameterizedTest
    @MethodSource("vulgarFractions")
    @DisplayName("every fraction character is what its Unicode name says")
    void everyFractionCharacterIsWhatItsNameSays(int character) throws UnreadableQuantity {
        String[] name = Character.getName(character).replace("VULGAR FRACTION ", "").split(" ");
        int above = COUNTS.indexOf(name[0]);
        int below = PARTS.indexOf(above == 1 ? name[1] : name[1].replaceAll("S$", ""));
        assertTrue(above >= 0 && below >= 2, Character.getName(character));
        assertEquals(BigFraction.of(above, below), Numbers.read(Character.toString(character)));
    }

    static IntStream vulgarFractions() {
        return IntStream.rangeClosed(0, 0xffff)
                .filter(c -> Character.isDefined(c) && Character.getName(c).startsWith("VULGAR FRACTION "));
    }

    @Test
    void thereAreNineteenFractionCharacters() {
        assertEquals(19, vulgarFractions().count());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "1,5 | 1.5", "0,125 | 0.125", "0,5 | 0.5", "12,3456 | 12.3456", "1234,567 | 1234.567", "1,50 | 1.5",
        "00,125 | 0.125", ",5 | 0.5", "-1,5 | -1.5"})
    void aCommaIsADecimalCommaWhereItCannotBeAnother(String written, String plain) throws UnreadableQuantity {
        assertEquals(Numbers.read(plain), Numbers.read(written));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "1,500 | write 1500 or 1.500", "12,500 | write 12500 or 12.500", "999,999 | write 999999 or 999.999",
        "1,2,3 | write 123 or 12.3", "1.23,4 | write 1234 or 123.4"})
    void aCommaThatCouldBeEitherIsNeverGuessed(String written, String mend) {
        UnreadableQuantity refusal = assertThrows(UnreadableQuantity.class, () -> Numbers.read(written));
        assertEquals(mend, refusal.mend());
        assertEquals(written, refusal.found());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "1.234,5 | write 1234.5", "1,234.5 | write 1234.5", "1.234,567 | write 1234.567", "12,345,678.9 | write 12345678.9",
        "1.234.567 | write 1234567", "1,234,567 | write 1234567"})
    void whatHasThousandsIsOfferedAsTheOneNumberItCanBe(String written, String mend) {
        UnreadableQuantity refusal = assertThrows(UnreadableQuantity.class, () -> Numbers.read(written));
        assertEquals("“" + written + "” has thousands set apart; " + mend, refusal.getMessage());
    }

    @ParameterizedTest
    @ValueSource(strings = {
        "", " ", "\u00a0", "x", "1/0", "1 1/0", "1/", "/2", "1//2", "1/2/3", "1/½", "½½", "½5", "1 3/2", "0.5 1/2",
        "1.5/2", "1/2,5", "1e5", "1e999999999", "0x1F", "1 000", "1'000", "--1", "+1", "- 1", "1.", "1-", "NaN", "∞",
        "٣", "¹⁄₂", "1234567890123", "0.1234567890123", "1/1234567890123", "1 2", "1-2"})
    void whatIsNoNumberIsRefused(String written) {
        UnreadableQuantity refusal = assertThrows(UnreadableQuantity.class, () -> Numbers.read(written));
        assertEquals(written, refusal.found());
        assertTrue(refusal.getMessage().startsWith("“"), refusal.getMessage());
    }

    @ParameterizedTest
    @ValueSource(strings = {"9", " ", ".", ",", "1,", "1/", "½", "-", "1 ", "about ", "\uD83C"})
    void aVeryLongTextIsRefusedAtOnce(String part) {
        String hostile = part.repeat(10_000 / part.length());
        assertTimeoutPreemptively(Duration.ofSeconds(2), () -> {
            assertThrows(UnreadableQuantity.class, () -> Numbers.read(hostile));
            UnreadableQuantity refusal = assertThrows(UnreadableQuantity.class,
                    () -> Quantity.read(hostile, Dimension.MASS, Kitchen.METRIC));
            assertTrue(refusal.getMessage().length() < 200, "a message quotes only the beginning");
        });
    }

    @ParameterizedTest
    @CsvSource({"3/2, 1.5", "1/3, 1/3", "4/3, 1 1/3", "-4/3, -1 1/3", "5, 5", "0, 0", "1/1000, 0.001",
        "1/131072, 1/131072", "3000, 3000", "-1/4, -0.25"})
    void aNumberPrintsAsADecimalWhereItEndsAndElseAsAFraction(String exact, String printed) throws UnreadableQuantity {
        BigFraction number = BigFraction.parse(exact);
        assertEquals(printed, Numbers.print(number));
        assertEquals(number, Numbers.read(printed));
    }

    @ParameterizedTest
    @CsvSource({"3/2, 1 1/2", "1/3, 1/3", "1/16, 1/16", "1/17, 1/17", "1/20, 0.05", "2, 2"})
    void spoonsPrintAsFractions(String exact, String printed) {
        assertEquals(printed, Numbers.printFraction(BigFraction.parse(exact)));
    }

    @Test
    void wordsHoldNoNumberAndFractionCharactersDo() {
        assertFalse(Numbers.holdsNumber("a handful, to taste"));
        assertTrue(Numbers.holdsNumber("½ a handful"));
        assertTrue(Numbers.holdsNumber("a 5"));
        assertTrue(Numbers.holdsNumber("٣"));
    }
}
