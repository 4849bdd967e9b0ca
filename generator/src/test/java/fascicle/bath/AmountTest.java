package fascicle.bath;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.measure.Dimension;
import fascicle.measure.Kitchen;
import fascicle.measure.Quantity;
import fascicle.measure.Unit;
import fascicle.measure.UnreadableQuantity;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("An amount is read as a recipe writes it")
class AmountTest {

    static Stream<Arguments> amounts() {
        BigFraction half = BigFraction.of(1, 2);
        BigFraction threeHalves = BigFraction.of(3, 2);
        BigFraction twelve = BigFraction.of(12);
        Quantity fortyGrams = new Quantity(BigFraction.of(40), Unit.GRAM, false);
        Quantity spoons = new Quantity(threeHalves, Unit.METRIC_TEASPOON, true);
        Quantity fortyMillilitres = new Quantity(BigFraction.of(40), Unit.MILLILITRE, false);
        Quantity roughly = new Quantity(BigFraction.of(40), Unit.MILLILITRE, true);
        return Stream.of(
                Arguments.of("40 g", new Amount.Weighed(fortyGrams)),
                Arguments.of("40g", new Amount.Weighed(fortyGrams)),
                Arguments.of("1 lb 4 oz", new Amount.Weighed(new Quantity(BigFraction.of(5, 4), Unit.POUND, false))),
                Arguments.of("about 1½ tsp", new Amount.Measured(spoons)),
                Arguments.of("8 fl oz", new Amount.Measured(
                        new Quantity(BigFraction.of(8), Unit.IMPERIAL_FLUID_OUNCE, false))),
                Arguments.of("1.5 % owf", new Amount.OnNeedles(threeHalves, false)),
                Arguments.of("1,5% OWF", new Amount.OnNeedles(threeHalves, false)),
                Arguments.of("~1.5 %wof", new Amount.OnNeedles(threeHalves, true)),
                Arguments.of("1 1/2 % o.w.f.", new Amount.OnNeedles(threeHalves, false)),
                Arguments.of("1.5 % on weight of fibre", new Amount.OnNeedles(threeHalves, false)),
                Arguments.of("1.5 % on the weight of the dry needles", new Amount.OnNeedles(threeHalves, false)),
                Arguments.of("40 mL of 1 % stock", new Amount.OfStock(fortyMillilitres, BigFraction.ONE)),
                Arguments.of("about 40ml of ½% stock solution", new Amount.OfStock(roughly, half)),
                Arguments.of("12 g/L", new Amount.PerLitre(twelve, false)),
                Arguments.of("~12 g per litre", new Amount.PerLitre(twelve, true)),
                Arguments.of("12 grams / liter", new Amount.PerLitre(twelve, false)),
                Arguments.of("500 mg/l", new Amount.PerLitre(half, false)),
                Arguments.of("1/2 packet", new Amount.Packs(half, false)),
                Arguments.of("about 1.5 Packs", new Amount.Packs(threeHalves, true)),
                Arguments.of("a handful", new Amount.Unsized("a handful", false)),
                Arguments.of("About a handful", new Amount.Unsized("a handful", true)),
                Arguments.of("to taste", new Amount.Unsized("to taste", false)),
                Arguments.of("some", new Amount.Unsized("some", false)),
                Arguments.of("3 handfuls", new Amount.Unsized("3 handfuls", false)),
                Arguments.of("~ 2½ handfuls", new Amount.Unsized("2½ handfuls", true)),
                Arguments.of("2 leaves", new Amount.Unsized("2 leaves", false)),
                Arguments.of("2 big pinches", new Amount.Unsized("2 big pinches", false)));
    }

    @ParameterizedTest
    @MethodSource("amounts")
    void anAmountIsReadAndPrintsSoThatItReadsBackEqual(String written, Amount amount) throws UnreadableQuantity {
        assertEquals(amount, Amount.read(written, Kitchen.METRIC));
        assertEquals(amount, Amount.read(amount.toString(), Kitchen.METRIC));
    }

    @ParameterizedTest
    @CsvSource({"40 g, 40 g", "1.5 tsp, 1 1/2 tsp", "~1.50 % wof, about 1.5 % owf", "2 packs, 2 packets",
        "0.5 packet, 1/2 packet", "500 mg/L, 0.5 g/L", "40 ml of 1% stock, 40 mL of 1 % stock",
        "~ a pinch, about a pinch"})
    void anAmountPrintsInTheTradesWords(String written, String printed) throws UnreadableQuantity {
        assertEquals(printed, Amount.read(written, Kitchen.METRIC).toString());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "5 % | does not say per cent of what; write % owf if it is on the weight of the dry needles, or 40 mL of 1 % stock for a solution",
        "5 % vinegar | does not say per cent of what; write % owf if it is on the weight of the dry needles, or 40 mL of 1 % stock for a solution",
        "45 | has no unit; write g, mL, tsp, % owf, g/L or another unit after the number",
        "½ | has no unit; write g, mL, tsp, % owf, g/L or another unit after the number",
        "5 grms | has an unknown unit, “grms”; write g if that is what is meant",
        "5 tps | has an unknown unit, “tps”; write tsp or tbsp if that is what is meant",
        "1 T | may mean teaspoons or tablespoons; write tsp or tbsp",
        "1 C | is a temperature, not a volume; write cup if that is what C means",
        "7 cm | is a length, not a volume; write mL, L, tsp, tbsp, cup, gallon, quart, pint, fl oz or drop after the number",
        "1,500 g | has a comma or a point that can be read in two ways; write 1500 or 1.500",
        "-5 g | is below zero; write an amount, such as 45 g, 60 mL or 1.5 % owf",
        "5 g of alum | has more after its unit than can be read; write the number and g, and nothing else",
        "1 level tsp | has more around its unit than can be read; write the number and tsp, and nothing else",
        "2 packets of brick | has more around its unit than can be read; write the number and packets, and nothing else",
        "2 bags (50 g) | holds more than one number; write one amount",
        "40 mL 1 % stock | is no amount that can be read; write a stock solution as 40 mL of 1 % stock",
        "40 mL of 0 % stock | is no amount that can be read; write a stock solution as 40 mL of 1 % stock",
        "12 g/gallon | is no amount that can be read; write an amount in each litre of the bath as 12 g/L",
        "3–4 handfuls | holds more than one figure; write one figure, with about before it if it is rough"})
    void aNumberWithoutAnAmountIsRefused(String written, String sentence) {
        UnreadableQuantity refusal =
                assertThrows(UnreadableQuantity.class, () -> Amount.read(written, Kitchen.METRIC));
        assertEquals("“" + written + "” " + sentence, refusal.getMessage());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "?", "~", "1/0 packet", "a pinch (2 g)", "1e5 g", "1234567890123 g", "5 / 2", "%",
        "3 to 4 handfuls", "40 mL of about 1 % stock", "40 mL of 1 % vinegar", "40 g of 1 % stock", "3 x 5 g",
        "2 d", "80 °C"})
    void whatCannotBeAnAmountIsRefused(String written) {
        assertThrows(UnreadableQuantity.class, () -> Amount.read(written, Kitchen.METRIC));
    }

    @ParameterizedTest
    @ValueSource(strings = {"9", "9 ", "1 of ", "% ", "1/", "5 % owf ", "½"})
    void aVeryLongTextIsRefused(String part) {
        assertThrows(UnreadableQuantity.class, () -> Amount.read(part.repeat(5_000), Kitchen.METRIC));
    }

    @Test
    void whateverIsReadPrintsSoThatItReadsBackEqual() {
        Random letters = new Random(1066);
        List<String> scraps = List.of("1", "2", "30", "0.5", "1,5", "½", "/", " ", " ", " ", "about ", "~", "g", "mg",
                "tsp", "drops", "% owf", "% stock", " of ", "mL", "g/L", "packs", "handfuls", "a pinch", "–", "(");
        int read = 0;
        for (int i = 0; i < 40_000; i++) {
            StringBuilder text = new StringBuilder();
            for (int scrap = letters.nextInt(7); scrap >= 0; scrap--) {
                text.append(scraps.get(letters.nextInt(scraps.size())));
            }
            Kitchen kitchen = Kitchen.values()[i % Kitchen.values().length];
            Amount amount;
            try {
                amount = Amount.read(text.toString(), kitchen);
            } catch (UnreadableQuantity refusal) {
                continue;
            }
            read++;
            assertEquals(amount, assertDoesNotThrow(() -> Amount.read(amount.toString(), kitchen), text.toString()));
        }
        assertTrue(read > 1000, "only " + read + " could be read");
    }

    @Test
    void theKitchenDecidesWhatACupIs() throws UnreadableQuantity {
        Amount.Measured cup = assertInstanceOf(Amount.Measured.class, Amount.read("1 cup", Kitchen.US));
        // NIST Handbook 44, Appendix C.
        assertEquals(236.5882365, cup.volume().value(), 1e-12);
    }

    @Test
    void dropsAreRoughWhoeverCountsThem() throws UnreadableQuantity {
        assertTrue(Amount.read("5 drops", Kitchen.METRIC).about());
    }

    @Test
    void anAmountOfAnotherDimensionCannotBeMade() throws UnreadableQuantity {
        Quantity length = Quantity.read("7 cm", Dimension.LENGTH, Kitchen.METRIC);
        assertThrows(IllegalArgumentException.class, () -> new Amount.Weighed(length));
        assertThrows(IllegalArgumentException.class, () -> new Amount.Measured(length));
        assertThrows(IllegalArgumentException.class, () -> new Amount.OnNeedles(BigFraction.of(-1), false));
    }
}
