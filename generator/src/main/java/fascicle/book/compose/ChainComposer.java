package fascicle.book.compose;

import fascicle.book.figures.Figures;
import fascicle.book.page.BathChain;
import fascicle.book.page.Fact;
import fascicle.book.words.Words;
import fascicle.workings.EntryWorking;
import fascicle.workings.PartFigures;
import fascicle.workings.chain.Chain;
import fascicle.workings.chain.Estimate;
import fascicle.workings.chain.Standing;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** One bath and the batches it served: what each took out of it, and what brings it back. */
final class ChainComposer {

    private final Materials materials;
    private final Ways ways;
    private final Words words;
    private final Figures figures;
    private final ColourComposer colours;
    private final GlassComposer glasses;

    ChainComposer(Materials materials, Ways ways) {
        this.materials = materials;
        this.ways = ways;
        this.words = materials.words();
        this.figures = materials.figures();
        this.colours = new ColourComposer(materials, ways);
        this.glasses = new GlassComposer(materials);
    }

    /** The chain that an entry belongs to; nothing where its bath served it alone. */
    Optional<BathChain> of(EntryWorking entry) {
        return materials.chains().chain(entry).map(chain -> new BathChain(
                words.say("chain.served", words.say("count.batches", chain.batches().size())),
                chain.batches().stream().map(batch -> rung(batch, entry)).toList(),
                materials.chains().standing(entry).map(this::facts).orElse(List.of()), next(chain, entry)));
    }

    /** The pot as it stands now is told where it stands: with the last batch. */
    private Optional<BathChain.Next> next(Chain chain, EntryWorking entry) {
        EntryWorking last = chain.batches().get(chain.batches().size() - 1).entry();
        return last.equals(entry) ? Optional.of(new BathChain.Next(nextFor(last), facts(chain.next())))
                : Optional.empty();
    }

    private String nextFor(EntryWorking last) {
        return figures.amount(last.needles().dryGrams(), "g", last.needles().about())
                .map(weight -> words.say("chain.next-for", weight))
                .orElseGet(() -> words.say("chain.next-for-unknown"));
    }

    private BathChain.Rung rung(Chain.Batch batch, EntryWorking page) {
        EntryWorking entry = batch.entry();
        List<String> lines = new ArrayList<>();
        List<String> added = entry.bath().dye().stream().map(this::added).toList();
        lines.add(added.isEmpty() ? words.say("chain.nothing-added")
                : words.say("chain.added", String.join(words.say("pieces"), added)));
        entry.uptake().filter(uptake -> uptake.low().isPresent()).map(glasses::amount)
                .ifPresent(taken -> lines.add(words.say("chain.taken-up", taken)));
        boolean known = batch.left().stream().anyMatch(left -> amount(left.grams(), left.ml()).isPresent());
        if (!known) {
            lines.add(words.say("chain.left-unknown"));
        } else {
            batch.left().forEach(left -> lines.add(words.say(batch.judged() ? "chain.left-judged" : "chain.left",
                    left.called(), amount(left.grams(), left.ml()).orElseGet(() -> words.say("table.unknown")))));
        }
        return new BathChain.Rung(colours.swatch(entry).small(), ways.entry(entry), entry.equals(page),
                List.copyOf(lines));
    }

    private String added(PartFigures dye) {
        return figures.amount(dye.owfPercent(), "percent", dye.isRough())
                .or(() -> figures.amount(dye.mass(), "g")).or(dye::asWritten)
                .map(amount -> words.say("ladder.at", dye.called(), amount)).orElse(dye.called());
    }

    /** What stands in a pot, thing by thing, and what it lacks. */
    private List<Fact> facts(Standing standing) {
        List<Fact> facts = new ArrayList<>();
        figures.amount(standing.liquorMl(), "ml")
                .ifPresent(volume -> facts.add(Fact.of(words.say("chain.liquor"), volume)));
        standing.dye().forEach(dye -> facts.add(fact(dye.called(), amount(dye.grams(), dye.ml()),
                lacking(most(dye.topUp()).isPresent() ? most(dye.topUp()) : most(dye.topUpMl()),
                        amount(dye.topUp(), dye.topUpMl())))));
        standing.assistants().forEach(salt -> {
            boolean poured = salt.ml().isPresent();
            String unit = poured ? "ml" : "g";
            OptionalDouble lacks = poured ? salt.topUpMl() : salt.topUpGrams();
            facts.add(fact(salt.called(), about(poured ? salt.ml() : salt.grams(), unit),
                    lacking(lacks, about(lacks, unit))));
        });
        standing.why().ifPresent(why -> facts.add(why(why)));
        return List.copyOf(facts);
    }

    private static OptionalDouble most(Estimate estimate) {
        return estimate.low().isEmpty() ? estimate.value() : estimate.high();
    }

    /** What is lacking, or that nothing is. */
    private Optional<String> lacking(OptionalDouble most, Optional<String> amount) {
        return most.isPresent() && most.getAsDouble() == 0 ? Optional.of(words.say("chain.nothing")) : amount;
    }

    private Fact fact(String called, Optional<String> left, Optional<String> topUp) {
        String unknown = words.say("table.unknown");
        return Fact.of(called, left.isEmpty() && topUp.isEmpty() ? unknown
                : words.say("chain.left-and-lacking", left.orElse(unknown), topUp.orElse(unknown)));
    }

    private Fact why(Standing.Why why) {
        String entry = ways.entry(why.entry()).text();
        // Where the entry has glasses, they say themselves what they lack.
        Optional<String> glass = materials.workings().entry(why.entry()).flatMap(EntryWorking::uptake)
                .flatMap(glasses::why);
        String key = "chain-why." + why.kind().name().toLowerCase(Locale.ROOT).replace('_', '-');
        return Fact.of(words.say("chain.to-know"), switch (why.kind()) {
            case SHARE, RANGE -> glass.map(lack -> words.say("chain-why.glasses", entry, lack))
                    .orElseGet(() -> words.say(key, entry));
            case EARLIER_MISSING, DYE_AMOUNT -> words.say(key, entry);
        });
    }

    /** By weight, or by volume where the weight is not known. */
    private Optional<String> amount(Estimate grams, Estimate ml) {
        return amount(grams, "g").or(() -> amount(ml, "ml"));
    }

    /** An estimate, or the range it lies in. */
    private Optional<String> amount(Estimate estimate, String unit) {
        if (estimate.value().isPresent()) {
            return about(estimate.value(), unit);
        }
        OptionalDouble high = estimate.high();
        if (estimate.low().isEmpty() || high.isEmpty()) {
            return Optional.empty();
        }
        return estimate.low().getAsDouble() == 0
                ? Optional.of(words.say("chain.at-most", figures.estimate(high.getAsDouble(), unit)))
                : Optional.of(words.say("chain.between", figures.estimate(estimate.low().getAsDouble(), unit),
                        figures.estimate(high.getAsDouble(), unit)));
    }

    private Optional<String> about(OptionalDouble amount, String unit) {
        return amount.stream().mapToObj(known -> words.say("about", figures.estimate(known, unit))).findFirst();
    }
}
