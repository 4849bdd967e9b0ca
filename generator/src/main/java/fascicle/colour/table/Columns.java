package fascicle.colour.table;

import fascicle.colour.Reflectance;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Which columns of a table the colours are made from. */
final class Columns {

    /** More names than this are not worth listing in a message. */
    private static final int LISTED = 12;

    private static final String EXPECTED = "expected are L*, a* and b* (or LAB_L, LAB_A and LAB_B), a spectrum from "
            + "400 to 700 nm, X, Y and Z, a hex code, or R, G and B of sRGB";

    private final List<String> names;
    private final Map<Family, List<Heading>> headings;

    Columns(List<String> names) {
        this.names = names.stream().filter(name -> !name.isBlank()).toList();
        this.headings = Heading.of(names).stream().collect(Collectors.groupingBy(Heading::family));
    }

    /** The columns to use, and the light that Lab or XYZ in them are meant under. */
    record Choice(Family family, List<Heading> headings, Viewing viewing) {}

    /** Whether they name all parts of a colour, even if they name them twice. */
    boolean complete() {
        for (Family family : Family.values()) {
            if (parts(family) >= needed(family) && (family != Family.SPECTRUM || Reflectance.covers(wavelengths()))) {
                return true;
            }
        }
        return false;
    }

    /** How many parts of a colour they name, if two at least: one letter alone is a coincidence. */
    int parts() {
        int most = 0;
        for (Family family : Family.values()) {
            most = StrictMath.max(most, parts(family));
        }
        return most < 2 ? 0 : most;
    }

    /** Whether they name a colour or part of one. */
    boolean some() {
        return complete() || parts() > 0;
    }

    /**
     * The first family that is whole and under a light that suits.
     *
     * @param line where the columns are named
     * @param around what the table as a whole says of the light
     * @throws UnreadableTable if there is none; it says what the columns lack
     */
    Choice choose(int line, Viewing around) throws UnreadableTable {
        Optional<Viewing> unsuited = Optional.empty();
        for (Family family : Family.values()) {
            Map<Viewing, List<Heading>> sets = sets(family, around);
            Optional<Map.Entry<Viewing, List<Heading>>> best = sets.entrySet().stream()
                    .filter(set -> !family.seen() || set.getKey().suits())
                    .min(Comparator.comparing(set -> set.getKey().isD65()));
            if (best.isPresent()) {
                return new Choice(family, single(family, best.get().getValue(), line), best.get().getKey());
            }
            unsuited = unsuited.or(() -> sets.keySet().stream().findFirst());
        }
        if (unsuited.isPresent()) {
            throw new UnreadableTable(line, "the colours are under " + unsuited.get().words()
                    + "; export them under D50 and the 2° observer, or export the spectrum");
        }
        throw new UnreadableTable(line, lack());
    }

    /** That nothing here is a colour. */
    String colourless() {
        String found = names.stream().limit(LISTED).map(name -> "“" + name + "”").collect(Collectors.joining(", "));
        String more = names.size() > LISTED ? " and " + (names.size() - LISTED) + " more" : "";
        return "no columns of colour" + (names.isEmpty() ? "" : " among " + found + more) + "; " + EXPECTED;
    }

    /** The whole sets of columns of a family, by the light they are meant under. */
    private Map<Viewing, List<Heading>> sets(Family family, Viewing around) {
        Map<Viewing, List<Heading>> sets = new LinkedHashMap<>();
        for (Heading heading : of(family)) {
            Viewing viewing = family.seen() ? heading.viewing().over(around) : Viewing.UNSAID;
            sets.computeIfAbsent(viewing, key -> new ArrayList<>()).add(heading);
        }
        sets.values().removeIf(set -> distinct(set) < needed(family));
        if (family == Family.SPECTRUM && !Reflectance.covers(wavelengths())) {
            sets.clear();
        }
        return sets;
    }

    /** One column for each part, in the family's order; a spectrum in that of its wavelengths. */
    private static List<Heading> single(Family family, List<Heading> set, int line) throws UnreadableTable {
        Map<String, List<Heading>> byPart = set.stream()
                .collect(Collectors.groupingBy(Heading::part, LinkedHashMap::new, Collectors.toList()));
        List<Heading> chosen = new ArrayList<>();
        for (List<Heading> candidates : byPart.values()) {
            List<Heading> usual = candidates.stream().filter(Heading::usual).toList();
            List<Heading> left = candidates.size() > 1 && !usual.isEmpty() ? usual : candidates;
            if (left.size() > 1) {
                throw new UnreadableTable(line, "two columns tell the same, “" + left.get(0).name() + "” and “"
                        + left.get(1).name() + "”; leave in the one that counts");
            }
            chosen.add(left.get(0));
        }
        chosen.sort(family == Family.SPECTRUM
                ? Comparator.comparingDouble(Heading::wavelength)
                : Comparator.comparingInt(heading -> place(family, heading)));
        return List.copyOf(chosen);
    }

    private static int place(Family family, Heading heading) {
        List<String> letters = family.usual();
        for (int i = 0; i < letters.size(); i++) {
            if (letters.get(i).equalsIgnoreCase(heading.part())) {
                return i;
            }
        }
        return letters.size();
    }

    /** What the columns lack to be a colour. */
    private String lack() {
        for (Family family : Family.values()) {
            int parts = parts(family);
            if (family == Family.SPECTRUM && parts > 1) {
                return "the spectrum is at " + parts + " wavelengths from " + trimmed(0) + " to " + trimmed(parts - 1)
                        + " nm; it has to begin by 420, to end from 680, and to leave no gap wider than 20";
            }
            if (parts > 1) {
                String found = of(family).stream().map(heading -> "“" + heading.name() + "”").distinct()
                        .collect(Collectors.joining(" and "));
                String missing = family.usual().stream().filter(letter -> of(family).stream()
                        .noneMatch(heading -> heading.part().equalsIgnoreCase(letter))).collect(Collectors.joining());
                return missing.isEmpty()
                        ? found + " are not under one light; export all of them under D50"
                        : found + " are there, but no column for " + missing + "; export all three";
            }
        }
        return colourless();
    }

    private String trimmed(int place) {
        return Decimals.written(wavelengths()[place]);
    }

    private double[] wavelengths() {
        return of(Family.SPECTRUM).stream().mapToDouble(Heading::wavelength).distinct().sorted().toArray();
    }

    private int parts(Family family) {
        return family == Family.SPECTRUM ? wavelengths().length : distinct(of(family));
    }

    private static int distinct(List<Heading> set) {
        return (int) set.stream().map(Heading::part).distinct().count();
    }

    private static int needed(Family family) {
        return family.usual().isEmpty() ? 1 : family.usual().size();
    }

    private List<Heading> of(Family family) {
        return headings.getOrDefault(family, List.of());
    }
}
