package fascicle.bench;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The front matter of one pot: about 30 lines, drawn at random within what a careful maker could have written.
 *
 * <p>It is kept in two parts, so that several pots of a file can share what is theirs in common.
 *
 * @param name   the pot's name within its day, for instance {@code brick-2}
 * @param own    lines that belong to this pot alone
 * @param common lines that pots of one file may share
 * @param spare  whether 10 g of dry needles and a bath are left over for a later entry
 * @param takes  the id of the entry whose leavings this one uses, or empty
 */
record Recipe(String name, List<String> own, List<String> common, boolean spare, String takes) {

    private static final List<Supply> DYES = Supply.ofKind("dye");
    private static final List<Supply> SALTS = Supply.ofKind("salt");
    private static final List<Supply> ACIDS = Supply.ofKind("acid");
    private static final List<Supply> WETTING = Supply.ofKind("wetting");

    /**
     * Draws a recipe.
     *
     * @param name    the pot's name within its day; the caller keeps it unique
     * @param dye     the first dye of the bath
     * @param lots    the lots that are gathered by then
     * @param tag     the tag, which is also the running number of the entry
     * @param earlier the id of an entry with needles and a bath left over, or empty
     */
    static Recipe draw(Chance chance, Vocabulary vocabulary, LocalDate day, String name, Supply dye, List<Lot> lots,
                       int tag, String earlier) {
        Lot lot = chance.pick(lots.subList(Math.max(0, lots.size() - 8), lots.size()));
        String title = dye.title() + " on " + lot.condition().replace('-', ' ') + " needles, " + vocabulary.words(chance, 2);
        int grams = chance.between(40, 120) / 2;
        boolean overdye = !earlier.isEmpty() && chance.oneIn(60);
        boolean reuse = !earlier.isEmpty() && !overdye && chance.oneIn(60);
        boolean spare = !overdye && grams >= 30 && chance.oneIn(4);

        List<String> own = new ArrayList<>(List.of("title: " + title, "tag: " + tag));
        needles(own, chance, lot, grams, spare, overdye ? earlier : "");
        bath(own, chance, dye, overdye || reuse, reuse ? earlier : "");
        colour(own, chance, lot, dye, tag);
        outcome(own, chance);
        if (spare) {
            own.add("kept:");
            own.add("  weight: " + grams * 9 / 10 + " g");
            own.add("  how: dry");
            own.add("  since: " + day.plusDays(2));
            own.add("  used: [{weight: " + chance.between(3, 9) + " g, in: " + vocabulary.word(chance) + "-basket}]");
        }
        return new Recipe(name, List.copyOf(own), common(chance, day), spare, overdye || reuse ? earlier : "");
    }

    private static void needles(List<String> own, Chance chance, Lot lot, int grams, boolean weighed, String from) {
        own.add("needles:");
        if (from.isEmpty()) {
            own.add("  lot: " + lot.id());
            own.add(!weighed && chance.oneIn(7) ? "  bundles: " + chance.between(2, 4) : "  weight: " + grams + " g");
        } else {
            own.add("  from: " + from);
            own.add("  weight: 10 g");
        }
        if (chance.oneIn(2)) {
            own.add("  sheaths: " + chance.oneOf("on", "off"));
        }
        if (chance.oneIn(5)) {
            own.add("  weighed: " + chance.oneOf("dry", "dry", "damp", "fresh", "guessed"));
        }
    }

    /** With {@code bare}, and for plants, the water is always written down, so that no ratio of a method makes it too little. */
    private static void bath(List<String> own, Chance chance, Supply dye, boolean bare, String reuses) {
        own.add("bath:");
        int amount = bare || dye.form().equals("plant") ? 0 : chance.between(0, 9);
        own.add("  vessel: " + (amount == 1 ? "stock-pot" : chance.pick(Vessels.IDS)));
        if (!reuses.isEmpty()) {
            own.add("  reuses: " + reuses);
        }
        switch (amount) {
            case 0, 4, 5, 6, 7, 8, 9 -> own.add("  water: " + (bare ? "800 mL" : chance.tenths(18, 42) + " L"));
            case 1 -> own.add("  depth: " + chance.between(4, 6) + " cm");
            case 2 -> own.add("  ratio: " + chance.between(40, 80));
            default -> { }
        }
        own.add("  from: " + chance.oneOf("tap", "tap", "rain", "well", "softened"));
        own.add("  dye:");
        own.add("    - " + dye.part(chance));
        if (chance.oneIn(3)) {
            Supply second = chance.pick(DYES);
            if (second != dye) {
                own.add("    - {is: " + second.id() + ", amount: " + second.amount(chance) + ", at: " + chance.between(10, 30) + " min}");
            }
        }
        own.add("  assistants:");
        own.add("    - " + chance.pick(SALTS).part(chance));
        own.add("    - " + chance.pick(ACIDS).part(chance));
        if (chance.oneIn(3)) {
            own.add("    - " + chance.pick(WETTING).part(chance));
        }
        if (dye.form().equals("plant") && chance.oneIn(2)) {
            own.add("  extract: {of: " + chance.between(10, 30) * 10 + " g, state: dried, water: 1 L, heat: [{to: simmer, hold: 1 h}]}");
        }
        if (chance.oneIn(2)) {
            own.add("  ph: " + (chance.oneIn(3) ? Chance.tenths(chance.between(35, 60)) : "{reads: " + chance.between(3, 6) + ", with: strip}"));
        }
    }

    private static void colour(List<String> own, Chance chance, Lot lot, Supply dye, int tag) {
        int number = Supply.ALL.indexOf(dye);
        Lab full = Lab.ofHue(number * 47 % 130 - 20, 200 + number * 31 % 200, 150 + number * 17 % 300);
        Lab mean = lot.colour().towards(full, chance.between(30, 95)).near(chance, 30);
        own.add("colour:");
        if (tag > 1 && chance.oneIn(50)) {
            own.add("  - {like: " + chance.between(1, tag - 1) + ", but: " + chance.oneOf("redder", "duller", "paler") + "}");
        } else {
            for (int reading = 0; reading < 3; reading++) {
                own.add("  - lab: " + mean.near(chance, 20));
            }
        }
        if (chance.oneIn(8)) {
            own.add("target: {hex: \"" + hex(chance, 60, 200) + "\"}");
        }
        if (chance.oneIn(10)) {
            own.add("glass:");
            own.add("  plain: {hex: \"" + hex(chance, 238, 250) + "\"}");
            own.add("  before: {hex: \"" + hex(chance, 40, 160) + "\"}");
            own.add("  after: {hex: \"" + hex(chance, 170, 230) + "\"}");
            own.add("  left: " + Chance.tenths(chance.between(10, 17)) + " L");
        }
        if (chance.oneIn(5)) {
            own.add("window: [{after: " + chance.between(3, 12) + " weeks, lab: " + mean.towards(lot.colour(), chance.between(5, 40)) + "}]");
        }
    }

    private static void outcome(List<String> own, Chance chance) {
        String verdict = chance.oneOf("worked", "worked", "worked", "partly", "failed");
        own.add("outcome:");
        own.add("  verdict: " + verdict);
        own.add("  evenness: " + (verdict.equals("worked") ? chance.between(3, 5) : chance.between(1, 4)));
        own.add("  feel: " + chance.oneOf("supple", "supple", "supple", "stiff", "brittle"));
        if (!verdict.equals("worked")) {
            own.add("  faults: [" + chance.oneOf("pale", "uneven", "off-shade", "bled", "brittle", "sticky", "mould") + "]");
        }
        if (chance.oneIn(4)) {
            own.add("fastness: {rub-dry: " + chance.oneOf("4", "4-5", "5") + ", rub-wet: " + chance.oneOf("2", "2-3", "3", "4") + "}");
        }
    }

    private static List<String> common(Chance chance, LocalDate day) {
        List<String> lines = new ArrayList<>();
        if (chance.oneIn(2)) {
            lines.add("date: " + day);
        }
        if (chance.percent(90)) {
            lines.add("method: " + chance.pick(Method.ALL).id());
        }
        if (chance.oneIn(3)) {
            lines.add("presoak: {water: 6 L, with: [" + chance.pick(ACIDS).part(chance) + "], for: " + chance.between(1, 3) + " h}");
        }
        if (chance.oneIn(2)) {
            lines.add("heat:");
            lines.add("  - {to: " + chance.between(60, 75) + " °C, over: " + chance.between(2, 5) * 10 + " min}");
            lines.add("  - {to: " + chance.between(78, 95) + " °C, over: 30 min, hold: " + chance.oneOf("1 h", "45 min", "1 h 30 min", "2 h") + "}");
            if (chance.oneIn(2)) {
                lines.add("  - {to: " + chance.oneOf("below-simmer", "simmer", "steaming") + ", hold: 30 min}");
            }
        }
        if (chance.oneIn(2)) {
            lines.add("cool: " + chance.oneOf("overnight", "2 h", "1 day"));
            lines.add("dry: " + chance.oneOf("1 day", "2 days"));
        }
        if (chance.oneIn(2)) {
            lines.add("rinse: " + chance.oneOf("after-drying", "before-drying", "none"));
        }
        if (chance.oneIn(6)) {
            lines.add("finish: [{is: glycerin, amount: " + chance.between(4, 12) * 10 + " mL}]");
        }
        if (chance.oneIn(3)) {
            lines.add("share: " + chance.oneOf("students", "open"));
        }
        return List.copyOf(lines);
    }

    private static String hex(Chance chance, int low, int high) {
        return String.format(Locale.ROOT, "#%02x%02x%02x", chance.between(low, high), chance.between(low, high), chance.between(low, high));
    }
}
