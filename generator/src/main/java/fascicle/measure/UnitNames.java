package fascicle.measure;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The names of units as each kitchen understands them, and the nearest one to a slip of the pen. */
final class UnitNames {
    private static final Map<Kitchen, Map<String, Unit>> UNITS = byKitchen();

    private UnitNames() {}

    static Optional<Unit> find(String name, Kitchen kitchen) {
        return Optional.ofNullable(namesIn(kitchen).get(plain(name)));
    }

    /**
     * The units of a dimension whose names come nearest to a word, if any comes near: a slip of one letter in a short
     * word, one in three in a longer one. Several where they are equally near.
     */
    static List<Unit> nearest(String word, Dimension dimension, Kitchen kitchen) {
        String written = plain(word);
        int least = Math.max(1, written.length() / 3);
        List<Unit> found = new ArrayList<>();
        for (Unit unit : Unit.of(dimension, kitchen)) {
            int distance = slips(written, unit);
            if (distance < least) {
                found.clear();
                least = distance;
            }
            if (distance == least) {
                found.add(unit);
            }
        }
        return found;
    }

    /** How many letters must be changed, added or left out to make the word a name of the unit. */
    static int slips(String word, Unit unit) {
        String written = plain(word);
        return unit.names().stream().mapToInt(name -> slips(written, name)).min().orElseThrow();
    }

    /** The Levenshtein distance between two words. */
    static int slips(String one, String other) {
        int[] above = new int[other.length() + 1];
        for (int j = 0; j <= other.length(); j++) {
            above[j] = j;
        }
        for (int i = 1; i <= one.length(); i++) {
            int[] row = new int[other.length() + 1];
            row[0] = i;
            for (int j = 1; j <= other.length(); j++) {
                int changed = above[j - 1] + (one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1);
                row[j] = Math.min(changed, 1 + Math.min(above[j], row[j - 1]));
            }
            above = row;
        }
        return above[other.length()];
    }

    /** A name in lower case, without the full stops of abbreviations, with single spaces. */
    private static String plain(String name) {
        String plain = name.toLowerCase(Locale.ROOT).replace(".", "").strip();
        return plain.contains("  ") ? plain.replaceAll(" {2,}", " ") : plain;
    }

    private static Map<String, Unit> namesIn(Kitchen kitchen) {
        return UNITS.getOrDefault(kitchen, Map.of());
    }

    private static Map<Kitchen, Map<String, Unit>> byKitchen() {
        Map<Kitchen, Map<String, Unit>> all = new EnumMap<>(Kitchen.class);
        for (Kitchen kitchen : Kitchen.values()) {
            Map<String, Unit> names = new HashMap<>();
            for (Unit unit : Unit.values()) {
                if (unit.isIn(kitchen)) {
                    unit.names().forEach(name -> names.merge(name, unit, UnitNames::clash));
                }
            }
            all.put(kitchen, Map.copyOf(names));
        }
        return all;
    }

    private static Unit clash(Unit one, Unit other) {
        throw new IllegalStateException(one + " and " + other + " share a name");
    }
}
