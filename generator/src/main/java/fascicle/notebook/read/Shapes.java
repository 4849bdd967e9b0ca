package fascicle.notebook.read;

import java.util.Map;

/** What keys that hold other keys look like when they are filled in, for whoever wrote something else there. */
final class Shapes {

    private static final String PART = "[{is: brick, amount: 1.5 % owf}]";

    private static final Map<String, String> FILLED_IN = Map.ofEntries(
            Map.entry("needles", "{lot: scalded-2025, weight: 45 g}"),
            Map.entry("presoak", "{water: 6 L, for: 1 h}"),
            Map.entry("before", "[{as: mordant, water: 3 L}]"),
            Map.entry("after", "[{as: iron, water: 3 L}]"),
            Map.entry("bath", "{vessel: wide-pan, water: 3 L}"),
            Map.entry("dye", PART),
            Map.entry("assistants", "[{is: salt, amount: 40 g}]"),
            Map.entry("with", "[{is: white-vinegar, amount: 250 mL}]"),
            Map.entry("finish", "[{is: glycerin, amount: 100 mL}]"),
            Map.entry("extract", "{of: 200 g, state: dried, water: 3 L}"),
            Map.entry("heat", "[{to: 88 °C, over: 30 min, hold: 2 h}]"),
            Map.entry("colour", "[{hex: \"#7f4632\"}]"),
            Map.entry("target", "{hex: \"#8a3b2a\"}"),
            Map.entry("glass", "{before: {hex: \"#a03020\"}, left: 2.4 L}"),
            Map.entry("outcome", "{verdict: worked, evenness: 4}"),
            Map.entry("fastness", "{rub-dry: 4-5, rub-wet: 3}"),
            Map.entry("window", "[{after: 6 weeks, hex: \"#7f4632\"}]"),
            Map.entry("kept", "{weight: 41 g, how: dry}"),
            Map.entry("used", "[{weight: 10 g, in: lake-basket}]"),
            Map.entry("bundle", "{weight: 150 g, counted: 10}"),
            Map.entry("pack", "{holds: 50 g, price: 4.20}"),
            Map.entry("bought", "[{on: 2025-03-01, packs: 2}]"),
            Map.entry("label", "{signal: danger, says: [H318]}"));

    private Shapes() {}

    /** The key as it may be written, such as {@code needles: {lot: scalded-2025, weight: 45 g}}. */
    static String of(String key) {
        return key + ": " + FILLED_IN.getOrDefault(key, "{…: …}");
    }
}
