package fascicle.colour.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A column whose name tells a part of a colour.
 *
 * @param column its place, counted from 0
 * @param name the name as written
 * @param family what its part is a part of
 * @param part such as {@code A} of Lab, or a wavelength in nm
 * @param usual whether the part is written as usual: L, a, b; X, Y, Z; R, G, B
 * @param viewing what the name says of light and observer
 * @param full what the name says stands for all of it: 1, 100 or 255
 */
record Heading(
        int column, String name, Family family, String part, boolean usual, Viewing viewing, OptionalDouble full) {

    private static final Pattern LAB = caseless("((?:CIE)?[\\s_-]*(?:L\\*?A\\*?B\\*?)?[\\s_-]*)([LAB])(\\*?)(.*)");
    private static final Pattern XYZ = caseless("((?:CIE)?[\\s_-]*(?:XYZ)?[\\s_-]*)([XYZ])()(.*)");
    private static final Pattern RGB = caseless("((?:S?RGB)?[\\s_-]*)(RED|GREEN|BLUE|[RGB])()(.*)");
    private static final Pattern HEX = caseless("(?:S?RGB[\\s_-]*)?HEX(?:[\\s_-]*(?:CODE|COLOU?R))?");
    private static final Pattern WAVELENGTH = caseless(
            "(?:SPECTRAL|SPECTRUM|SPEC|REFLECTANCE|REFL|R|WAVELENGTH|WL)?[\\s_-]*(%?)[\\s_-]*(?:NM)?[\\s_(\\[-]*"
                    + "([0-9]{3,4}(?:\\.[0-9]+)?)\\s*(?:NM)?[\\s)\\]]*(.*)");
    private static final Pattern RANGE = caseless(
            "[\\s_(\\[]*(?:0\\s*(?:-|–|TO|\\.\\.|…)\\s*(1|100|255)|(%|PER ?CENT|PCT))[\\s)\\]]*");

    /** No column's name is longer, and the patterns would be at longer ones for minutes. */
    private static final int LONGEST_NAME = 80;

    /** Columns of a table of spectra; a number outside is a count or a year. */
    private static final double SHORTEST = 300;
    private static final double LONGEST = 1200;

    /** What the names of a table's columns may mean; “B” may be the b* of Lab and the blue of sRGB. */
    static List<Heading> of(List<String> names) {
        List<Heading> headings = new ArrayList<>();
        for (int column = 0; column < names.size(); column++) {
            String name = names.get(column).strip();
            if (name.length() > LONGEST_NAME) {
                continue;
            }
            letters(column, name, Family.LAB, LAB).ifPresent(headings::add);
            letters(column, name, Family.XYZ, XYZ).ifPresent(headings::add);
            letters(column, name, Family.RGB, RGB).ifPresent(headings::add);
            wavelength(column, name).ifPresent(headings::add);
            if (HEX.matcher(name).matches()) {
                headings.add(new Heading(
                        column, name, Family.HEX, "HEX", true, Viewing.UNSAID, OptionalDouble.empty()));
            }
        }
        return headings;
    }

    /** The wavelength in nm of a column of a spectrum. */
    double wavelength() {
        return Double.parseDouble(part);
    }

    private static Optional<Heading> letters(int column, String name, Family family, Pattern pattern) {
        Matcher matcher = pattern.matcher(name);
        if (!matcher.matches()) {
            return Optional.empty();
        }
        String letter = matcher.group(2);
        String part = letter.substring(0, 1).toUpperCase(Locale.ROOT);
        boolean usual = !matcher.group(1).isBlank()
                || !matcher.group(3).isEmpty()
                || letter.length() > 1
                || family.usual().contains(letter);
        String tail = matcher.group(4);
        Optional<Viewing> viewing =
                family.seen() || tail.isBlank() ? Viewing.ofTail(tail) : Optional.empty();
        if (viewing.isPresent()) {
            return viewing.map(
                    said -> new Heading(column, name, family, part, usual, said, OptionalDouble.empty()));
        }
        return family == Family.LAB
                ? Optional.empty()
                : range(tail, family).map(full -> new Heading(
                        column, name, family, part, usual, Viewing.UNSAID, OptionalDouble.of(full)));
    }

    private static Optional<Heading> wavelength(int column, String name) {
        Matcher matcher = WAVELENGTH.matcher(name);
        if (!matcher.matches()) {
            return Optional.empty();
        }
        String tail = matcher.group(3);
        Optional<Double> full = matcher.group(1).isEmpty() ? range(tail, Family.SPECTRUM) : Optional.of(100.0);
        double wavelength = Double.parseDouble(matcher.group(2));
        if (!tail.isBlank() && full.isEmpty() || wavelength < SHORTEST || wavelength > LONGEST) {
            return Optional.empty();
        }
        return Optional.of(new Heading(
                column,
                name,
                Family.SPECTRUM,
                Decimals.written(Double.parseDouble(matcher.group(2))),
                true,
                Viewing.UNSAID,
                full.map(OptionalDouble::of).orElse(OptionalDouble.empty())));
    }

    /** 255 steps are those of a screen; nothing else is counted so. */
    private static Optional<Double> range(String tail, Family family) {
        Matcher matcher = RANGE.matcher(tail);
        if (!matcher.matches()) {
            return Optional.empty();
        }
        return Optional.of(matcher.group(1) == null ? 100.0 : Double.parseDouble(matcher.group(1)))
                .filter(full -> full < 255 || family == Family.RGB);
    }

    private static Pattern caseless(String regex) {
        return Pattern.compile(regex, Pattern.CASE_INSENSITIVE);
    }
}
