package fascicle.notebook.read;

import fascicle.measure.Kitchen;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number in the one unit that is kept of it.
 *
 * @param unit the unit
 * @param others other units that are read, in lower case, and what one of them is in that unit
 * @param least the least it may be, in that unit
 * @param most the most
 * @param conversions how other units become that one, for whoever wrote one that is not read
 */
record FixedUnit(String unit, Map<String, Double> others, double least, double most, String conversions)
        implements Scalar<Double> {

    static final FixedUnit DENSITY = new FixedUnit("g/mL", Map.of(), 0.01, 30,
            "1000 g/L, 1 kg/L and 1 g/cm³ are 1 g/mL");

    /**
     * As calcium carbonate: 1 ppm is 1 mg to the litre of so thin a water, and a German degree is 10 mg of calcium
     * oxide in a litre (DIN 38409-6; {@code from memory}), which is 17.848 mg of the carbonate by their molar masses,
     * 56.077 and 100.087 g/mol.
     */
    static final FixedUnit ALKALINITY = new FixedUnit("mg/L", Map.of("ppm", 1.0, "°dh", 17.848, "dh", 17.848),
            0, 100_000, "as calcium carbonate: 1 ppm is 1 mg/L, 1 °dH is 17.8 mg/L, 1 °fH is 10 mg/L, 1 mmol/L of acid "
                    + "capacity is 50 mg/L");

    /** What stands before the figure goes with it, or a word there would be taken for a unit. */
    private static final Pattern FIGURE_AND_UNIT = Pattern.compile("((?:\\D*(?=\\d))?[-−+.,/\\d\\s]*)(.*)");

    @Override
    public Double read(String text, Kitchen kitchen) throws Unreadable {
        String quoted = "“" + Scalar.shortened(text) + "”";
        Matcher parts = FIGURE_AND_UNIT.matcher(text);
        if (!parts.matches() || parts.group(2).isEmpty()) {
            throw new Unreadable(quoted + " lacks its unit; write it in " + unit);
        }
        String written = parts.group(2).toLowerCase(Locale.ROOT);
        if (!written.equals(unit.toLowerCase(Locale.ROOT)) && !others.containsKey(written)) {
            throw new Unreadable(quoted + " has a unit that is not known here; write it in " + unit + " (" + conversions
                    + ")");
        }
        double one = others.getOrDefault(written, 1.0);
        return one * Scalar.within(text, parts.group(1).strip(), least / one, StrictMath.floor(most / one));
    }
}
