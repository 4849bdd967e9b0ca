package fascicle.book.data;

import fascicle.notebook.Noted;
import fascicle.workings.EntryWorking;
import fascicle.workings.chain.Chain;
import fascicle.workings.chain.Chains;
import fascicle.workings.chain.Estimate;
import fascicle.workings.chain.Standing;
import java.util.Locale;
import java.util.Optional;

/** Baths that were used again, in {@code data/book.json}. */
final class JsonBaths {

    private final Json json;
    private final Chains chains;

    JsonBaths(Json json, Chains chains) {
        this.json = json;
        this.chains = chains;
    }

    /** A word of the program's own as data spells it. */
    static String word(Enum<?> word) {
        return word.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** What stood in an entry's pot: {@code reuses} and {@code standing}. */
    void standing(EntryWorking entry) {
        json.text("reuses", entry.entry().recipe().bath().reuses().map(Noted::value));
        json.object("standing", chains.standing(entry), this::members);
    }

    /** All chains: {@code baths [{first, entries, batches, next}]}. */
    void chains() {
        json.items("baths", chains.all(), chain -> {
            json.text("first", chain.first().id());
            json.texts("entries", chain.batches().stream().map(Chain.Batch::entry).map(EntryWorking::id).toList());
            json.number("batches", chain.batches().size());
            json.object("next", Optional.of(chain.next()), this::members);
        });
    }

    private void members(Standing standing) {
        json.figure("liquor_ml", standing.liquorMl().value());
        json.yes("liquor_about", standing.liquorMl().about());
        json.items("dye", standing.dye(), dye -> {
            json.text("is", dye.is());
            estimate("", "g", dye.grams());
            estimate("", "ml", dye.ml());
            estimate("top_up_", "g", dye.topUp());
            estimate("top_up_", "ml", dye.topUpMl());
        });
        json.items("assistants", standing.assistants(), salt -> {
            json.text("is", salt.is());
            json.figure("g", salt.grams());
            json.figure("ml", salt.ml());
            json.figure("top_up_g", salt.topUpGrams());
            json.figure("top_up_ml", salt.topUpMl());
        });
        json.text("why", standing.why().map(why -> word(why.kind()) + ": " + why.entry()));
    }

    /** Such as {@code g}, {@code low_g} and {@code high_g}. */
    private void estimate(String of, String unit, Estimate amount) {
        json.figure(of + unit, amount.value());
        json.figure(of + "low_" + unit, amount.low());
        json.figure(of + "high_" + unit, amount.high());
    }
}
