package fascicle.measure;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** Whose cups, spoons and pints a notebook means. */
public enum Kitchen {
    /** The measures customary in the United States. */
    US,
    /** Cup 250 mL, tablespoon 15 mL, teaspoon 5 mL; pints and the like are imperial. */
    METRIC,
    /** The half-pint cup and the imperial pint; spoons as sold in Britain today, 15 mL and 5 mL. */
    IMPERIAL;

    /** The kitchen with this key, in any letter case; empty if there is none. */
    public static Optional<Kitchen> named(String key) {
        return Arrays.stream(values()).filter(kitchen -> kitchen.key().equalsIgnoreCase(key.strip())).findFirst();
    }

    /** The word for this kitchen in a notebook: {@code us}, {@code metric} or {@code imperial}. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }
}
