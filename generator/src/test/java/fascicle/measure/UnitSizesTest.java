package fascicle.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.EnumSet;
import java.util.Set;
import javax.measure.MetricPrefix;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import systems.uom.common.Imperial;
import systems.uom.common.USCustomary;
import tech.units.indriya.unit.Units;

@DisplayName("Sizes of units agree with what others publish")
class UnitSizesTest {

    @ParameterizedTest(name = "{0}: {1} is {3}, source {5}")
    @CsvFileSource(resources = "units.csv", useHeadersInDisplayName = true)
    void aUnitHasItsPublishedSize(
            String kitchen, String written, Dimension dimension, BigDecimal value, String exact, String source)
            throws UnreadableQuantity {
        Quantity quantity = Quantity.read(written, dimension, Kitchen.named(kitchen).orElseThrow());
        if (exact.equals("yes")) {
            assertEquals(Numbers.ofDecimal(value.toPlainString()), quantity.exactValue());
        } else {
            assertEquals(value, quantity.exactValue().bigDecimalValue(value.scale(), RoundingMode.HALF_EVEN));
        }
    }

    @Test
    void everyKitchenMeasureIsOneThatTheSourcesGive() throws IOException, UnreadableQuantity {
        Set<Unit> checked = EnumSet.noneOf(Unit.class);
        try (var lines = new BufferedReader(new InputStreamReader(
                UnitSizesTest.class.getResourceAsStream("units.csv"), StandardCharsets.UTF_8))) {
            for (String line : lines.lines().filter(row -> row.matches("(us|metric|imperial),.*")).toList()) {
                String[] cells = line.split(",");
                checked.add(Quantity.read(cells[1], Dimension.valueOf(cells[2]), Kitchen.named(cells[0]).orElseThrow())
                        .unit());
            }
        }
        for (Unit unit : Unit.values()) {
            boolean dependsOnKitchen = EnumSet.allOf(Kitchen.class).stream().anyMatch(kitchen -> !unit.isIn(kitchen));
            assertTrue(!dependsOnKitchen || checked.contains(unit), unit + " has no published size to answer to");
        }
    }

    @Test
    @DisplayName("a general-purpose library of units (JSR 385) finds the same sizes")
    void anotherLibraryFindsTheSameSizes() {
        var millilitre = MetricPrefix.MILLI(Units.LITRE);
        var centimetre = MetricPrefix.CENTI(Units.METRE);
        agree(Unit.GRAM, Units.GRAM.getConverterTo(Units.GRAM).convert(1.0));
        agree(Unit.KILOGRAM, Units.KILOGRAM.getConverterTo(Units.GRAM).convert(1.0));
        agree(Unit.MILLIGRAM, MetricPrefix.MILLI(Units.GRAM).getConverterTo(Units.GRAM).convert(1.0));
        agree(Unit.POUND, USCustomary.POUND.getConverterTo(Units.GRAM).convert(1.0));
        agree(Unit.OUNCE, USCustomary.OUNCE.getConverterTo(Units.GRAM).convert(1.0));
        agree(Unit.LITRE, Units.LITRE.getConverterTo(millilitre).convert(1.0));
        agree(Unit.US_GALLON, USCustomary.GALLON_LIQUID.getConverterTo(millilitre).convert(1.0));
        agree(Unit.US_PINT, USCustomary.PINT.getConverterTo(millilitre).convert(1.0));
        agree(Unit.US_CUP, USCustomary.CUP.getConverterTo(millilitre).convert(1.0));
        agree(Unit.US_FLUID_OUNCE, USCustomary.FLUID_OUNCE.getConverterTo(millilitre).convert(1.0));
        agree(Unit.IMPERIAL_GALLON, Imperial.GALLON_UK.getConverterTo(millilitre).convert(1.0));
        agree(Unit.IMPERIAL_QUART, Imperial.QUART.getConverterTo(millilitre).convert(1.0));
        agree(Unit.IMPERIAL_PINT, Imperial.PINT.getConverterTo(millilitre).convert(1.0));
        agree(Unit.IMPERIAL_FLUID_OUNCE, Imperial.FLUID_OUNCE.getConverterTo(millilitre).convert(1.0));
        agree(Unit.INCH, USCustomary.INCH.getConverterTo(centimetre).convert(1.0));
        agree(Unit.FOOT, USCustomary.FOOT.getConverterTo(centimetre).convert(1.0));
        agree(Unit.METRE, Units.METRE.getConverterTo(centimetre).convert(1.0));
        agree(Unit.MILLIMETRE, MetricPrefix.MILLI(Units.METRE).getConverterTo(centimetre).convert(1.0));
        agree(Unit.SECOND, Units.SECOND.getConverterTo(Units.MINUTE).convert(1.0));
        agree(Unit.HOUR, Units.HOUR.getConverterTo(Units.MINUTE).convert(1.0));
        agree(Unit.DAY, Units.DAY.getConverterTo(Units.MINUTE).convert(1.0));
        agree(Unit.WEEK, Units.WEEK.getConverterTo(Units.MINUTE).convert(1.0));
    }

    @Test
    @DisplayName("the same library, which rounds its spoons to nine digits, finds the same spoons to nine digits")
    void anotherLibraryFindsTheSameSpoons() {
        var millilitre = MetricPrefix.MILLI(Units.LITRE);
        assertEquals(USCustomary.TABLESPOON.getConverterTo(millilitre).convert(1.0),
                Unit.US_TABLESPOON.size().doubleValue(), 5e-8);
        assertEquals(USCustomary.TEASPOON.getConverterTo(millilitre).convert(1.0),
                Unit.US_TEASPOON.size().doubleValue(), 5e-8);
    }

    @Test
    @DisplayName("the same library turns Fahrenheit into Celsius alike, from a freezer to an oven")
    void anotherLibraryTurnsFahrenheitIntoCelsiusAlike() {
        var celsius = USCustomary.FAHRENHEIT.getConverterTo(Units.CELSIUS);
        for (int degrees = -40; degrees <= 450; degrees++) {
            BigFraction fahrenheit = BigFraction.of(degrees);
            assertEquals(celsius.convert((double) degrees), Unit.FAHRENHEIT.toBase(fahrenheit).doubleValue(), 1e-9);
            assertEquals(fahrenheit, Unit.FAHRENHEIT.fromBase(Unit.FAHRENHEIT.toBase(fahrenheit)));
        }
    }

    private static void agree(Unit unit, double theirs) {
        assertEquals(theirs, unit.size().doubleValue(), theirs * 1e-12, unit.name());
    }
}
