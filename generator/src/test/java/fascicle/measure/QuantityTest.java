package fascicle.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayName("A quantity is read as people write it")
class QuantityTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
        "45 g | MASS | 45 GRAM", "45g | MASS | 45 GRAM", "45 G | MASS | 45 GRAM", "45 grams | MASS | 45 GRAM",
        "1 gramme | MASS | 1 GRAM", "`45\u00a0g` | MASS | 45 GRAM", "`45\u2009g` | MASS | 45 GRAM",
        "1.2 kg | MASS | 6/5 KILOGRAM", "2 Kilos | MASS | 2 KILOGRAM", "500 mg | MASS | 500 MILLIGRAM",
        "3 lbs. | MASS | 3 POUND", "1/2 LB | MASS | 1/2 POUND", "4 ounces | MASS | 4 OUNCE",
        "60 mL | VOLUME | 60 MILLILITRE", "60 ml. | VOLUME | 60 MILLILITRE", "1 millilitre | VOLUME | 1 MILLILITRE",
        "3,2 l | VOLUME | 16/5 LITRE", "2 liters | VOLUME | 2 LITRE", "2 Litres | VOLUME | 2 LITRE",
        "1 1/2 tsp | VOLUME | 3/2 METRIC_TEASPOON", "1½ Tsp. | VOLUME | 3/2 METRIC_TEASPOON",
        "2 Tbsp. | VOLUME | 2 METRIC_TABLESPOON", "2 TABLESPOONS | VOLUME | 2 METRIC_TABLESPOON",
        "½ cup | VOLUME | 1/2 METRIC_CUP", "8 fl. oz. | VOLUME | 8 IMPERIAL_FLUID_OUNCE",
        "8 fluid  ounces | VOLUME | 8 IMPERIAL_FLUID_OUNCE", "2 pts | VOLUME | 2 IMPERIAL_PINT",
        "1 qt | VOLUME | 1 IMPERIAL_QUART", "1 gal. | VOLUME | 1 IMPERIAL_GALLON",
        "3 in | LENGTH | 3 INCH", "3 inches | LENGTH | 3 INCH", "3\" | LENGTH | 3 INCH", "3″ | LENGTH | 3 INCH",
        "7 cm | LENGTH | 7 CENTIMETRE", "12 MM | LENGTH | 12 MILLIMETRE", "1 metre | LENGTH | 1 METRE",
        "190 °F | TEMPERATURE | 190 FAHRENHEIT", "190F | TEMPERATURE | 190 FAHRENHEIT",
        "190 deg F | TEMPERATURE | 190 FAHRENHEIT", "88 ºC | TEMPERATURE | 88 CELSIUS",
        "88˚c | TEMPERATURE | 88 CELSIUS", "88 ℃ | TEMPERATURE | 88 CELSIUS", "88 C | TEMPERATURE | 88 CELSIUS",
        "88 degrees Celsius | TEMPERATURE | 88 CELSIUS", "-5 °C | TEMPERATURE | -5 CELSIUS",
        "−5° C | TEMPERATURE | -5 CELSIUS",
        "90 s | TIME | 90 SECOND", "30 mins | TIME | 30 MINUTE", "2 hrs | TIME | 2 HOUR", "1 Hr. | TIME | 1 HOUR",
        "2 days | TIME | 2 DAY", "6 wks | TIME | 6 WEEK", "1 week | TIME | 1 WEEK"})
    void aQuantityIsReadExactly(String written, Dimension dimension, String expected) throws UnreadableQuantity {
        String[] parts = expected.split(" ");
        assertEquals(new Quantity(BigFraction.parse(parts[0]), Unit.valueOf(parts[1]), false),
                Quantity.read(written, dimension, Kitchen.METRIC));
    }

    @ParameterizedTest
    @CsvSource({"2 h 30 min, TIME, 5/2 HOUR", "2h30min, TIME, 5/2 HOUR", "1 hour and 20 minutes, TIME, 4/3 HOUR",
        "1 week 2 days 12 h, TIME, 19/14 WEEK", "1 lb 4 oz, MASS, 5/4 POUND", "1 lb.4 oz, MASS, 5/4 POUND",
        "'1 lb, 4½ oz', MASS, 41/32 POUND", "1 kg 250 g, MASS, 5/4 KILOGRAM", "1 cup 2 tbsp, VOLUME, 9/8 US_CUP"})
    void aQuantityInSeveralUnitsIsASumInTheFirst(String written, Dimension dimension, String expected)
            throws UnreadableQuantity {
        String[] parts = expected.split(" ");
        Quantity sum = Quantity.read(written, dimension, Kitchen.US);
        assertEquals(new Quantity(BigFraction.parse(parts[0]), Unit.valueOf(parts[1]), false), sum);
        assertEquals(sum, Quantity.read(sum.toString(), dimension, Kitchen.US));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
        "45 | MASS | has no unit; write g, kg, mg, lb or oz after the number",
        "5 | LENGTH | has no unit; write mm, cm, m, in or ft after the number",
        "85 | TEMPERATURE | has no unit; write °C or °F after the number",
        "85° | TEMPERATURE | has an unknown unit, “°”; write °C or °F if that is what is meant",
        "5 grms | MASS | has an unknown unit, “grms”; write g if that is what is meant",
        "5 millilters | VOLUME | has an unknown unit, “millilters”; write mL if that is what is meant",
        "5 bananas | MASS | has an unknown unit, “bananas”; write g, kg, mg, lb or oz after the number",
        "5 % | MASS | has an unknown unit, “%”; write g, kg, mg, lb or oz after the number",
        "1 T | VOLUME | may mean teaspoons or tablespoons; write tsp or tbsp",
        "1 t. | VOLUME | may mean teaspoons or tablespoons; write tsp or tbsp",
        "1 C | VOLUME | is a temperature, not a volume; write cup if that is what C means",
        "7 cm | MASS | is a length, not a mass; write g, kg, mg, lb or oz after the number",
        "30 m | TIME | is a length, not a time; write s, min, h, day or week after the number",
        "-5 g | MASS | is below zero; write a mass, such as 45 g",
        "ca. 5 g | MASS | does not begin with a number; write a mass, such as 45 g; a rough figure begins with about",
        "approx. 5 g | MASS | does not begin with a number; write a mass, such as 45 g; a rough figure begins with about",
        "3-4 g | MASS | holds more than one figure; write one figure, with about before it if it is rough",
        "3 to 4 g | MASS | holds more than one figure; write one figure, with about before it if it is rough",
        "3–4 g | MASS | holds more than one figure; write one figure, with about before it if it is rough",
        "1 500 g | MASS | has a space inside a number, or two numbers; write one number without spaces",
        "1,500 g | MASS | has a comma or a point that can be read in two ways; write 1500 or 1.500",
        "2 h 30 | TIME | has no unit; write s, min, h, day or week after the number",
        "30 min 2 h | TIME | holds two quantities; write one, or the larger unit first: 2 h 30 min",
        "80 °C 5 °C | TEMPERATURE | holds two quantities; write one, or the larger unit first: 85 °C",
        "5 g alum | MASS | has more after its unit than can be read; write the number and g, and nothing else",
        "1/0 cup | VOLUME | divides by zero; write a fraction such as 1/2"})
    void whatCannotBeReadIsRefusedInOnePlainSentence(String written, Dimension dimension, String sentence) {
        UnreadableQuantity refusal =
                assertThrows(UnreadableQuantity.class, () -> Quantity.read(written, dimension, Kitchen.METRIC));
        assertEquals("“" + written + "” " + sentence, refusal.getMessage());
        assertEquals(dimension.phrase() + ", such as " + dimension.example(), refusal.expected());
        assertEquals(written, refusal.found());
        assertTrue(sentence.endsWith(refusal.mend()));
    }

    @ParameterizedTest
    @MethodSource("unitsOfKitchens")
    void everyUnitPrintsSoThatItReadsBackEqual(Kitchen kitchen, Unit unit) throws UnreadableQuantity {
        for (String number : List.of("0", "1", "2", "3/2", "1/3", "7/8", "1/10", "5/4", "12345/1000", "1/7", "355/113",
                "999999999999", "1/999999999999", "-40", "-1/3")) {
            BigFraction exact = BigFraction.parse(number);
            if (exact.signum() < 0 && unit.dimension() != Dimension.TEMPERATURE) {
                continue;
            }
            for (boolean about : new boolean[] {true, false}) {
                Quantity quantity = new Quantity(exact, unit, about);
                assertEquals(quantity, Quantity.read(quantity.toString(), unit.dimension(), kitchen));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("unitsOfKitchens")
    void everyNameOfAUnitIsReadInAnyLetterCase(Kitchen kitchen, Unit unit) throws UnreadableQuantity {
        for (String name : unit.names()) {
            for (String written : List.of(name, name.toUpperCase(Locale.ROOT), name + ".")) {
                assertEquals(unit, Quantity.read("2 " + written, unit.dimension(), kitchen).unit());
                assertEquals(unit, Quantity.read("2" + written, unit.dimension(), kitchen).unit());
            }
        }
    }

    static Stream<Arguments> unitsOfKitchens() {
        return Stream.of(Kitchen.values()).flatMap(kitchen -> Stream.of(Unit.values())
                .filter(unit -> unit.isIn(kitchen))
                .map(unit -> Arguments.of(kitchen, unit)));
    }

    @Test
    void whateverIsReadPrintsSoThatItReadsBackEqual() {
        Random letters = new Random(1066);
        List<String> scraps = List.of("1", "2", "30", "500", "0", ".", ",", "/", "½", " ", " ", "-", "about ", "~", "g",
                "lb", "oz", "h", "min", "cup", "drops", "°F", "tsp", "and", "x", "\u00a0");
        int read = 0;
        for (int i = 0; i < 40_000; i++) {
            StringBuilder text = new StringBuilder();
            for (int scrap = letters.nextInt(8); scrap >= 0; scrap--) {
                text.append(scraps.get(letters.nextInt(scraps.size())));
            }
            Dimension dimension = Dimension.values()[i % Dimension.values().length];
            Kitchen kitchen = Kitchen.values()[i % Kitchen.values().length];
            try {
                Quantity quantity = Quantity.read(text.toString(), dimension, kitchen);
                read++;
                assertEquals(quantity, Quantity.read(quantity.toString(), dimension, kitchen), text.toString());
            } catch (UnreadableQuantity refusal) {
                assertEquals(text.toString(), refusal.found());
            }
        }
        assertTrue(read > 100, "only " + read + " could be read");
    }

    @ParameterizedTest
    @CsvSource({"about 45 g, about 45 g", "About 45g, about 45 g", "~45 g, about 45 g", "~ 45 g, about 45 g",
        "1.5 tsp, 1 1/2 tsp", "2 cup, 2 cups", "1 1/4 pints, 1 1/4 pints", "1.5 g, 1.5 g", "2.5 h, 2 h 30 min",
        "3 days, 3 days", "5 drops, about 5 drops", "1 drop, about 1 drop"})
    void aQuantityPrintsAsAMakerWouldWriteIt(String written, String printed) throws UnreadableQuantity {
        for (Dimension dimension : Dimension.values()) {
            try {
                assertEquals(printed, Quantity.read(written, dimension, Kitchen.METRIC).toString());
                return;
            } catch (UnreadableQuantity otherDimension) {
                // The next dimension may be the right one.
            }
        }
        throw new AssertionError(written + " was not read at all");
    }

    @Test
    void aDropIsNeverExact() throws UnreadableQuantity {
        assertTrue(Quantity.read("5 drops", Dimension.VOLUME, Kitchen.METRIC).about());
        assertFalse(Quantity.read("5 mL", Dimension.VOLUME, Kitchen.METRIC).about());
    }

    @Test
    void equivalentQuantitiesAreWrittenDifferently() throws UnreadableQuantity {
        Quantity pound = Quantity.read("1 lb", Dimension.MASS, Kitchen.US);
        Quantity ounces = Quantity.read("about 16 oz", Dimension.MASS, Kitchen.US);
        assertTrue(pound.isEquivalentTo(ounces));
        assertNotEquals(pound, ounces);
        Quantity gram = Quantity.read("1 g", Dimension.MASS, Kitchen.US);
        Quantity millilitre = Quantity.read("1 mL", Dimension.VOLUME, Kitchen.US);
        assertFalse(gram.isEquivalentTo(millilitre), "a gram is no millilitre");
    }

    @Test
    void aTripleKeepsUnitAndDoubt() throws UnreadableQuantity {
        Quantity triple = Quantity.read("about 1/2 tsp", Dimension.VOLUME, Kitchen.US).times(BigFraction.of(3));
        assertEquals("about 1 1/2 tsp", triple.toString());
        // NIST Handbook 44, Appendix C: three teaspoons are a tablespoon, sixteen tablespoons a cup of 236.5882365 mL.
        assertEquals(236.5882365 / 32, triple.value(), 1e-12);
    }

    @Test
    void whatCannotBeIsRefused() {
        Quantity warm = new Quantity(BigFraction.of(80), Unit.CELSIUS, false);
        assertThrows(UnsupportedOperationException.class, () -> warm.times(BigFraction.of(2)));
        Quantity gram = new Quantity(BigFraction.ONE, Unit.GRAM, false);
        assertThrows(IllegalArgumentException.class, () -> gram.times(BigFraction.of(-1)));
        assertThrows(IllegalArgumentException.class, () -> new Quantity(BigFraction.of(-1), Unit.GRAM, false));
    }

    @Test
    void aKitchenIsNamedByItsKey() {
        for (Kitchen kitchen : Kitchen.values()) {
            assertEquals(kitchen, Kitchen.named(kitchen.key()).orElseThrow());
        }
        assertEquals(Kitchen.IMPERIAL, Kitchen.named("IMPERIAL").orElseThrow());
        assertTrue(Kitchen.named("french").isEmpty());
    }
}
