package fascicle.workings.chain;

import fascicle.bath.Magnitude;
import fascicle.workings.EntryWorking;
import fascicle.workings.Workings;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The baths of a notebook that served more than one batch. */
public final class Chains {

    private final Succession succession;
    private final Pots pots;
    private final List<Chain> all;
    private final Map<String, Chain> byEntry = new HashMap<>();

    private Chains(Workings workings) {
        succession = Succession.of(workings);
        pots = new Pots(workings, succession);
        all = workings.entries().stream().filter(entry -> succession.before(entry).isEmpty())
                .map(succession::served).filter(served -> served.size() > 1).map(this::chain).toList();
        all.forEach(chain -> chain.batches().forEach(batch -> byEntry.put(batch.entry().id(), chain)));
    }

    /**
     * Looks through a notebook.
     *
     * @param workings an edition's figures
     * @return its chains
     */
    public static Chains of(Workings workings) {
        return new Chains(workings);
    }

    /**
     * All chains.
     *
     * @return in the order of their first entries
     */
    public List<Chain> all() {
        return all;
    }

    /**
     * The chain that an entry belongs to.
     *
     * @param entry any entry
     * @return nothing where its bath served it alone
     */
    public Optional<Chain> chain(EntryWorking entry) {
        return Optional.ofNullable(byEntry.get(entry.id()));
    }

    /**
     * What stood in an entry's pot from the bath before.
     *
     * @param entry any entry
     * @return nothing for a fresh bath
     */
    public Optional<Standing> standing(EntryWorking entry) {
        if (succession.isOfUnknownBath(entry)) {
            return Optional.of(new Standing(Magnitude.UNKNOWN, List.of(), List.of(),
                    Optional.of(new Standing.Why(Standing.Kind.EARLIER_MISSING, entry.id()))));
        }
        return succession.before(entry)
                .map(before -> new StandingBath(pots, succession.path(before), Optional.of(entry),
                        entry.bath(), entry.needles().dryGrams()).figures(entry.bath().standingMl()));
    }

    /** All that one bath served; the next batch is taken to be like the last. */
    private Chain chain(List<EntryWorking> served) {
        EntryWorking last = served.get(served.size() - 1);
        StandingBath now = new StandingBath(pots, succession.path(last), Optional.empty(), last.bath(),
                last.needles().dryGrams());
        return new Chain(served.stream().map(one -> batch(one, served)).toList(),
                now.figures(InThePot.measured(last)));
    }

    /** What an entry left of each dye; as the next in the chain judges, where there is one. */
    private Chain.Batch batch(EntryWorking entry, List<EntryWorking> served) {
        Optional<EntryWorking> next = served.stream()
                .filter(one -> succession.before(one).filter(entry::equals).isPresent()).findFirst();
        Contents left = pots.held(succession.path(entry)).dye().times(Pot.share(entry, next));
        return new Chain.Batch(entry, left.things().values().stream()
                .map(thing -> new Chain.Left(thing.is(), thing.called(), thing.grams(), thing.ml())).toList(),
                Pot.judged(next).isPresent());
    }
}
