package fascicle.book.data;

import fascicle.bath.Batch;
import fascicle.bath.Pot;
import fascicle.bath.StockToMake;
import fascicle.book.caution.CautionWords;
import fascicle.book.words.Words;
import fascicle.measure.Kitchen;
import fascicle.measure.Numbers;
import fascicle.measure.Scoops;
import fascicle.measure.Unit;
import fascicle.notebook.Noted;
import fascicle.notebook.Vessel;
import fascicle.workings.Workings;
import fascicle.workings.care.Strain;
import fascicle.workings.care.Uses;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/**
 * {@code data/batch.js}: what {@code scripts/batch.js} needs for every recipe of the book: the vessels and the balance,
 * the rules of the trade, the units of needles in billionths of a gram, the spoons of each kitchen, and the book's
 * words.
 */
public final class BatchScript {

    /** The address of the file. */
    public static final String ADDRESS = "data/batch.js";

    private static final List<String> WORDS = List.of("about", "unit.g", "unit.ml", "unit.cm", "unit.ratio",
            "fact.water", "batch.liquor", "step.finish", "scaling.in", "table.unknown", "batch.pot", "batch.pots",
            "batch.stock", "batch.or", "batch.in-it", "batch.scoops-more", "batch.scoops-less", "batch.make-stock",
            "batch.spoons-wander", "batch.standing", "batch.extract-plant", "batch.extract-water", "batch.drawn",
            "batch.shared-bin", "batch.no-soak-water", "batch.unsized", "batch.reused", "batch.reused-of",
            "batch.reused-short", "batch.many-pots", "batch.no-liquor", "batch.paler", "batch.too-long",
            "batch.no-room", "batch.too-shallow", "batch.unmeasured", "batch.too-weak", "batch.too-much-stock",
            "batch.wrong", "kitchen.us", "kitchen.metric", "kitchen.imperial");

    /** The units in which needles are weighed out. */
    private static final List<Unit> UNITS = List.of(Unit.GRAM, Unit.KILOGRAM, Unit.OUNCE, Unit.POUND);

    private static final int BILLION = 1_000_000_000;

    private final Json json = new Json();

    private BatchScript() {}

    /**
     * Writes the script's data.
     *
     * @param workings of the edition's notebook
     * @param words the book's words
     * @return a script in UTF-8
     */
    public static byte[] bytes(Workings workings, Words words) {
        String data = new BatchScript().text(workings, words);
        return ("self.fascicleBatch = " + data + ";\n").getBytes(StandardCharsets.UTF_8);
    }

    private String text(Workings workings, Words words) {
        json.object(() -> {
            json.text("kitchen", workings.measuring().kitchen().key());
            json.exact("balance", workings.measuring().balance());
            json.object("rules", this::rules);
            json.rows("units", UNITS, unit -> {
                json.cell(unit.symbol());
                json.cell(unit.size().multiply(BILLION).bigDecimalValue().toPlainString());
            });
            json.object("kitchens", () -> {
                for (Kitchen kitchen : Kitchen.values()) {
                    json.rows(kitchen.key(), Scoops.setOf(kitchen), scoop -> {
                        json.cell(Numbers.printFraction(scoop.number()));
                        json.cell(scoop.measure());
                        json.cell(scoop.millilitres());
                    });
                }
            });
            json.items("vessels", workings.notebook().vessels(), vessel -> vessel(vessel, words));
            json.object("words", () -> WORDS.forEach(key -> json.text(key, words.say(key))));
        });
        return json.finished().strip();
    }

    /** The constants of the trade by which a batch is worked out, from where they are kept. */
    private void rules() {
        rule("heaviest", Batch.MOST_NEEDLES);
        rule("pots", Batch.MOST_POTS);
        rule("full", Pot.FULL);
        rule("room", Pot.ROOM_OF_NEEDLES);
        rule("shallow", Pot.LEAST_DEPTH);
        rule("steps", StockToMake.STEPS);
        rule("usual", StockToMake.USUAL_PERCENT);
        rule("weak", StockToMake.WEAK_PERCENT);
        rule("least", StockToMake.LEAST_MILLILITRES);
        rule("scoops", Scoops.MOST_SCOOPS);
        rule("near", Scoops.NEAR_ENOUGH_PERCENT);
        rule("useless", Scoops.USELESS_PERCENT);
    }

    private void rule(String name, double constant) {
        json.exact(name, OptionalDouble.of(constant));
    }

    /**
     * A vessel; of one that does not suit every bath also what is said of it, and which of that in each strain's place.
     */
    private void vessel(Vessel vessel, Words words) {
        json.text("id", vessel.id());
        json.text("called", vessel.called());
        vessel.basin().ifPresent(basin -> {
            json.exact("area", OptionalDouble.of(basin.area()));
            json.exact("line", OptionalDouble.of(basin.longestLine()));
        });
        json.exact("height", vessel.height().map(Noted::value).map(height -> OptionalDouble.of(height.value()))
                .orElse(OptionalDouble.empty()));
        List<String> said = Strain.ALL.stream().map(strain -> new Uses.Pot(vessel, strain))
                .map(pot -> CautionWords.pot(pot, words).orElse("")).toList();
        List<String> care = said.stream().distinct().toList();
        if (!care.equals(List.of(""))) {
            json.texts("care", care);
            json.text("strains", said.stream().map(sentence -> String.valueOf(care.indexOf(sentence)))
                    .collect(Collectors.joining()));
        }
    }
}
